package ribmark.curriculum;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.NotFound;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** A stage as a whole: what it is for, its cautions, what it comes to on the bones, its steps, and the words it uses. */
public final class StagePages {

    /** A step in short. */
    public record Row(
            int number, String id, String title, String sides, boolean optional, String landmark, String tools) {}

    /** A fault that cannot be outweighed, and the step it belongs to. */
    public record Stop(int number, String text, String critical, String mend) {}

    private final Curriculum curriculum;
    private final StepPicture.Book pictures;
    private final TradeWords words;

    /** The pages show this curriculum, with these pictures of the bones. */
    public StagePages(Curriculum curriculum, StepPicture.Book pictures) {
        this.curriculum = curriculum;
        this.pictures = pictures;
        this.words = new TradeWords(curriculum);
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/stages/{stage}", this::one, Allow.of(Role.ASSESSOR, Role.TUTOR, Role.APPRENTICE));
    }

    private void one(Context ctx) {
        List<Stage> stages = curriculum.breakdown().stages();
        Stage stage = curriculum.breakdown().stage(ctx.pathParam("stage")).orElseThrow(NotFound::new);
        int at = stages.indexOf(stage);
        Map<String, Object> page = new HashMap<>();
        page.put("stage", stage);
        page.put("rows", stage.steps().stream().map(this::row).toList());
        page.put("stops", stage.steps().stream().flatMap(StagePages::stops).toList());
        page.put("after", after(stage));
        page.put("words", words.in(stage.steps()));
        page.put("before", at > 0 ? stages.get(at - 1) : null);
        page.put("next", at + 1 < stages.size() ? stages.get(at + 1) : null);
        ctx.render("curriculum/stage.html", page);
    }

    private Row row(Step step) {
        List<String> tools = step.tools().stream()
                .flatMap(id -> curriculum.breakdown().tool(id).stream())
                .map(tool -> tool.name())
                .toList();
        return new Row(
                step.number(),
                step.id(),
                step.title(),
                StepPage.sides(step),
                step.optional(),
                step.landmark().heading(),
                String.join(", ", tools));
    }

    private static Stream<Stop> stops(Step step) {
        return step.faults().stream()
                .filter(fault -> fault.critical().isPresent())
                .map(fault -> new Stop(
                        step.number(), fault.text(), fault.critical().get().word(), fault.mend()));
    }

    /** The pieces after the last step of the stage that frees any. */
    private Optional<StepPicture> after(Stage stage) {
        List<Step> backwards = new ArrayList<>(stage.steps());
        Collections.reverse(backwards);
        return backwards.stream()
                .filter(step -> !step.frees().isEmpty() || !step.leaves().isEmpty())
                .map(step -> pictures.of(curriculum, step))
                .filter(shown -> !shown.isEmpty())
                .map(shown -> shown.get(shown.size() - 1))
                .findFirst();
    }
}
