package ribmark.progress;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Stage;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.Apprentices;
import ribmark.people.Group;
import ribmark.people.GroupStore;
import ribmark.people.Person;
import ribmark.signing.Standings;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where everybody stands: all apprentices for the assessor, a group for its tutor, one person for those who may look. */
public final class ProgressPages {

    private final Standings standings;
    private final Apprentices apprentices;
    private final GroupStore groups;
    private final BonesPages bones;

    /** Everything shown is derived from standings at the moment it is asked for. */
    public ProgressPages(Standings standings, Apprentices apprentices, GroupStore groups, BonesPages bones) {
        this.standings = standings;
        this.apprentices = apprentices;
        this.groups = groups;
        this.bones = bones;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/apprentices", this::everybody, Allow.of(Role.ASSESSOR));
        routes.page(
                "/apprentices/{id}",
                this::person,
                Allow.of(Role.ASSESSOR, Role.TUTOR).own(Role.APPRENTICE));
        routes.page("/group", this::group, Allow.of(Role.TUTOR));
    }

    private void everybody(Context ctx) {
        List<Person> all = apprentices.all(Access.signedIn(ctx));
        ctx.render("progress/apprentices.html", Map.of("page", GroupProgress.of(standings.records(all), standings)));
    }

    private void person(Context ctx) {
        Acting reader = Access.signedIn(ctx);
        Person apprentice = apprentices.find(Ids.of(ctx.pathParam("id")), reader);
        Progress progress = Progress.of(standings.record(apprentice), standings);
        ctx.render(
                "progress/apprentice.html",
                Map.of("page", PersonView.of(progress, breakdown(), reader), "bones", bones.shown(progress)));
    }

    private void group(Context ctx) {
        UUID tutor = Access.signedIn(ctx).id();
        List<Group> theirs = groups.allOf(tutor);
        if (theirs.isEmpty()) {
            ctx.render("progress/no-group.html", Map.of());
            return;
        }
        String asked = ctx.queryParam("group");
        Group group = asked == null ? theirs.get(0) : groups.find(Ids.of(asked), tutor);
        GroupProgress progress = GroupProgress.of(standings.records(groups.apprentices(group.id())), standings);
        ctx.render("progress/group.html", Map.of("page", GroupView.of(group, theirs, progress, stage(ctx))));
    }

    private Stage stage(Context ctx) {
        String asked = ctx.queryParam("stage");
        return asked == null
                ? breakdown().stages().get(0)
                : breakdown().stage(asked).orElseThrow(NotFound::new);
    }

    private Breakdown breakdown() {
        return standings.curriculum().breakdown();
    }
}
