package ribmark.moved;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import ribmark.anatomy.Formula;
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
    private static final String FORMULA = "formula";

    private final Curriculum curriculum;
    private final BiFunction<Curriculum, Way, List<StepPicture>> pictures;

    /** The answers are those of this curriculum, with these pictures of the bones. */
    public MovedPages(Curriculum curriculum, BiFunction<Curriculum, Way, List<StepPicture>> pictures) {
        this.curriculum = curriculum;
        this.pictures = pictures;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/steps/{step}/moved", this::moved, READERS);
    }

    private void moved(Context ctx) {
        Curriculum animal = Optional.ofNullable(ctx.queryParam(FORMULA))
                .map(Formula::parse)
                .map(curriculum::on)
                .orElse(curriculum);
        Step step = animal.breakdown().step(ctx.pathParam("step")).orElseThrow(NotFound::new);
        List<Way> ways = Way.at(animal.breakdown(), step);
        if (ways.isEmpty()) {
            throw new NotFound();
        }
        MovedForm asked = new MovedForm(Form.asked(ctx), ways);
        Optional<Way> way = asked.isBlank() ? Optional.empty() : asked.read();
        show(asked.form().wrong() ? ctx.status(422) : ctx, animal, step, asked, way);
    }

    private void show(Context ctx, Curriculum animal, Step step, MovedForm asked, Optional<Way> way) {
        Map<String, Object> model = new HashMap<>(Map.of(
                "step", step,
                "asked", asked,
                "form", asked.form(),
                "lines", asked.ways().stream().map(Way::line).distinct().toList(),
                "animal", animal.skeleton().formula(),
                "usual", animal.isUsual(),
                "title", way.map(Way::says).orElse("Where did the line really run?")));
        way.ifPresent(each -> model.put("answer", answer(animal, each)));
        ctx.render("moved/moved.html", model);
    }

    private Answer answer(Curriculum animal, Way way) {
        return new Answer(
                Outcome.of(animal, way),
                pictures.apply(animal, way),
                Known.of(animal, Stream.concat(way.line().restsOn().stream(), way.run().restsOn().stream())));
    }
}
