package ribmark.blocksheet;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.basics.Side;
import ribmark.competence.Mark;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;

/** One step a screen at the block: the step with its four marks, the reasons for a mark, and the questions to ask. */
public final class BlockPages {

    /** A reason to tap. */
    public record Reason(String id, String text, String critical) {}

    /** A question to ask, its answer, and what was known the last time. */
    public record Asked(String id, String ask, String answer, String known) {}

    /** So many reasons, besides the one in words, no longer stand in two columns on a tablet lying down. */
    private static final int STANDING = 6;

    private static final int STANDING_UNDER_A_CAUTION = 4;
    private static final Allow ALLOW = Allow.of(Role.ASSESSOR);

    private final BlockSheetStore sheets;
    private final Supplier<Curriculum> curriculum;

    /** The curriculum says what is to be seen at each step. */
    public BlockPages(BlockSheetStore sheets, Supplier<Curriculum> curriculum) {
        this.sheets = sheets;
        this.curriculum = curriculum;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/block-sheets/{id}/steps/{step}", this::show, ALLOW);
        routes.page("/block-sheets/{id}/steps/{step}/question", this::showQuestion, ALLOW);
        routes.after("/block-sheets/{id}/steps/{step}/reasons", this::showReasons, ALLOW);
    }

    private void show(Context ctx) {
        Walk walk = walk(ctx);
        renderStep(ctx, walk, place(ctx, walk), Form.blank());
    }

    private void showReasons(Context ctx) {
        Walk walk = walk(ctx);
        Mark mark = Mark.of(String.valueOf(ctx.queryParam("mark")))
                .filter(m -> m == Mark.NOT_YET || m == Mark.STOPPED)
                .orElseThrow(NotFound::new);
        walk.sheet().mayBeWrittenBy(Access.signedIn(ctx));
        renderReasons(ctx, walk, place(ctx, walk), mark, Form.blank());
    }

    private void showQuestion(Context ctx) {
        Walk walk = walk(ctx);
        renderQuestion(ctx, walk, Form.blank());
    }

    /** The sheet in the address, in the order worked. */
    Walk walk(Context ctx) {
        BlockSheet sheet = sheets.find(Ids.of(ctx.pathParam("id")), Access.signedIn(ctx));
        return Walk.of(sheet, curriculum.get());
    }

    private static Place place(Context ctx, Walk walk) {
        Step step = walk.step(ctx.pathParam("step"));
        String asked = ctx.queryParam("side");
        Side side = asked == null
                ? walk.side(step)
                : Side.of(asked)
                        .filter(walk.sheet().sidesOf(step.id())::contains)
                        .orElseThrow(NotFound::new);
        return new Place(step.id(), side);
    }

    void renderStep(Context ctx, Walk walk, Place place, Form form) {
        Acting acting = Access.signedIn(ctx);
        Map<String, Object> model = model(walk, form);
        model.put("page", StepView.of(walk, place, acting));
        ctx.render("blocksheet/step.html", model);
    }

    void renderReasons(Context ctx, Walk walk, Place place, Mark mark, Form form) {
        Step step = walk.step(place.stepId());
        Map<String, Object> model = model(walk, form);
        model.put("page", StepView.of(walk, place, Access.signedIn(ctx)));
        model.put("mark", mark.code());
        model.put("stopped", mark == Mark.STOPPED);
        model.put("title", mark == Mark.STOPPED ? "Stopped: what was seen?" : "Not yet: what was seen?");
        model.put(
                "what",
                step.title()
                        + (place.side() == Side.ONCE ? "." : ", " + place.side().word() + " side."));
        model.put(
                "at",
                step.number() + " of " + walk.breakdown().steps().size()
                        + (place.side() == Side.ONCE ? "" : ", " + place.side().word()));
        model.put("reasons", step.faults().stream().map(BlockPages::reason).toList());
        model.put("many", step.faults().size() >= (mark == Mark.STOPPED ? STANDING_UNDER_A_CAUTION : STANDING));
        model.put("runsElsewhere", !walk.breakdown().linesCutAt(step).isEmpty());
        model.put("back", StepView.address(walk.sheet(), place));
        ctx.render("blocksheet/reasons.html", model);
    }

    void renderQuestion(Context ctx, Walk walk, Form form) {
        Step step = walk.step(ctx.pathParam("step"));
        Place place = new Place(step.id(), walk.side(step));
        Map<String, Object> model = model(walk, form);
        model.put("page", StepView.of(walk, place, Access.signedIn(ctx)));
        model.put("title", "Ask " + walk.sheet().apprentice().name());
        model.put("known", List.of(Answer.Known.values()));
        model.put(
                "questions",
                step.questions().stream().map(q -> asked(walk.sheet(), q)).toList());
        ctx.render("blocksheet/question.html", model);
    }

    private static Reason reason(Step.Fault fault) {
        return new Reason(
                fault.id(),
                fault.text(),
                fault.critical().map(Step.Critical::word).orElse(null));
    }

    private static Asked asked(BlockSheet sheet, Step.Question question) {
        Optional<Answer> known = sheet.answer(question.id());
        return new Asked(
                question.id(),
                question.ask(),
                question.answer(),
                known.map(answer -> answer.answered().words()).orElse(""));
    }

    private static Map<String, Object> model(Walk walk, Form form) {
        Map<String, Object> model = new HashMap<>();
        model.put("pairs", TicketStrip.of(walk));
        model.put("apprentice", walk.sheet().apprentice().name());
        model.put("form", form);
        return model;
    }
}
