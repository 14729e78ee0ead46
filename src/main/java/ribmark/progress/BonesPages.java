package ribmark.progress;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.bonemap.StandingPictures;
import ribmark.competence.Standing;
import ribmark.people.Access;
import ribmark.people.Apprentices;
import ribmark.people.Person;
import ribmark.signing.Standings;
import ribmark.signing.StepRecord;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** The pictures of where one apprentice stands: for themselves, their tutors and the assessors, and kept by no browser. */
public final class BonesPages {

    private final Standings standings;
    private final Apprentices apprentices;
    private final StandingPictures pictures;

    /** Standings are derived each time a picture is asked for. */
    public BonesPages(Standings standings, Apprentices apprentices, StandingPictures pictures) {
        this.standings = standings;
        this.apprentices = apprentices;
        this.pictures = pictures;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.file(
                "/apprentices/{id}/bones/{part}.svg",
                this::file,
                Allow.of(Role.ASSESSOR, Role.TUTOR).own(Role.APPRENTICE));
    }

    /** What a page about this apprentice shows. */
    StandingPictures.Shown shown(Progress progress) {
        return pictures.shown(progress.name(), held(progress), "/apprentices/" + progress.id() + "/bones/");
    }

    private void file(Context ctx) {
        Person apprentice = apprentices.find(Ids.of(ctx.pathParam("id")), Access.signedIn(ctx));
        Progress progress = Progress.of(standings.record(apprentice), standings);
        String svg = pictures.file(held(progress), ctx.pathParam("part")).orElseThrow(NotFound::new);
        ctx.contentType("image/svg+xml").result(svg);
    }

    private static Map<String, Standing> held(Progress progress) {
        Map<String, Standing> held = new LinkedHashMap<>();
        for (StepRecord step : progress.record().steps()) {
            held.put(step.step().id(), step.standing());
        }
        return held;
    }
}
