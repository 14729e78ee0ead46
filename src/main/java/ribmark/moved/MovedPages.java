package ribmark.moved;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import ribmark.basics.NotFound;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Known;
import ribmark.curriculum.Step;
import ribmark.curriculum.StepPicture;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where somebody asks what a line did that ran elsewhere, and reads where every bone ended up. */
public final class MovedPages {

    /** An answer as shown: what was asked, what it did, how it is drawn and what it rests on. */
    public record Answer(Outcome outcome, List<StepPicture> pictures, List<Known> known) {}

    private static final Allow READERS = Allow.of(Role.ASSESSOR, Role.TUTOR, Role.APPRENTICE);

    private final Curriculum curriculum;
    private final Function<Way, List<StepPicture>> pictures;
    private final Map<Way, Answer> answers = new ConcurrentHashMap<>();

    /** The answers are those of this curriculum, with these pictures of the bones. */
    public MovedPages(Curriculum curriculum, Function<Way, List<StepPicture>> pictures) {
        this.curriculum = curriculum;
        this.pictures = pictures;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/steps/{step}/moved", this::moved, READERS);
    }

    private void moved(Context ctx) {
        Step step = curriculum.breakdown().step(ctx.pathParam("step")).orElseThrow(NotFound::new);
        List<Way> ways = Way.at(curriculum.breakdown(), step);
        if (ways.isEmpty()) {
            throw new NotFound();
        }
        MovedForm asked = new MovedForm(Form.asked(ctx), ways);
        if (asked.isBlank()) {
            show(ctx, step, asked, Optional.empty());
            return;
        }
        Optional<Way> way = asked.read();
        show(asked.form().wrong() ? ctx.status(422) : ctx, step, asked, way);
    }

    private void show(Context ctx, Step step, MovedForm asked, Optional<Way> way) {
        Map<String, Object> model = new HashMap<>(Map.of(
                "step", step,
                "asked", asked,
                "form", asked.form(),
                "lines", asked.ways().stream().map(Way::line).distinct().toList(),
                "title", way.map(Way::says).orElse("Where did the line really run?")));
        way.ifPresent(each -> model.put("answer", answers.computeIfAbsent(each, this::answer)));
        ctx.render("moved/moved.html", model);
    }

    private Answer answer(Way way) {
        return new Answer(
                Outcome.of(curriculum, way),
                pictures.apply(way),
                Known.of(curriculum, Stream.concat(way.line().restsOn().stream(), way.run().restsOn().stream())));
    }
}
