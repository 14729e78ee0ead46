package ribmark.blocksheet;

import io.javalin.http.Context;
import java.time.Clock;
import java.util.Optional;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.competence.Mark;
import ribmark.curriculum.Step;
import ribmark.people.Access;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** What happens when a mark is pressed, a reason tapped, a mark taken back or an answer judged. */
public final class MarkPages {

    private static final Allow ALLOW = Allow.of(Role.ASSESSOR);

    /** The last of the reasons: none of the step's faults. */
    private static final String IN_WORDS = "words";

    private final BlockPages pages;
    private final BlockSheetStore sheets;
    private final Clock clock;

    /** The clock says when a mark was given. */
    public MarkPages(BlockPages pages, BlockSheetStore sheets, Clock clock) {
        this.pages = pages;
        this.sheets = sheets;
        this.clock = clock;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.post("/block-sheets/{id}/steps/{step}/mark", this::mark, ALLOW);
        routes.post("/block-sheets/{id}/steps/{step}/undo", this::undo, ALLOW);
        routes.post("/block-sheets/{id}/steps/{step}/answer", this::answer, ALLOW);
    }

    private void mark(Context ctx) {
        Form form = Form.typed(ctx);
        Walk walk = writable(ctx);
        Place place = place(ctx, walk, form);
        Optional<Mark> pressed = Mark.of(form.value("mark"));
        if (pressed.isEmpty()) {
            form.add("mark", "Mark: none of the four was pressed. Press one.");
            pages.renderStep(ctx.status(422), walk, place, form);
            return;
        }
        refuseAfterStop(walk, place, pressed.get());
        boolean needsReason = pressed.get() == Mark.NOT_YET || pressed.get() == Mark.STOPPED;
        if (needsReason && form.value("fault").isEmpty()) {
            askWhy(ctx, walk, place, pressed.get());
        } else if (needsReason && !isReason(walk, place, form.value("fault"))) {
            form.add("fault", "Reason: what was tapped does not belong to this step. Tap one of these.");
            pages.renderReasons(ctx.status(422), walk, place, pressed.get(), form);
        } else {
            keep(ctx, walk, place, pressed.get(), needsReason ? form.value("fault") : IN_WORDS);
        }
    }

    /** A stop is kept at once; the reason comes after. */
    private void askWhy(Context ctx, Walk walk, Place place, Mark mark) {
        if (mark == Mark.STOPPED && !isStopped(walk, place)) {
            sheets.mark(walk.sheet().id(), place, mark, Optional.empty(), "", clock.instant());
        }
        Site.see(
                ctx,
                StepView.address(walk.sheet(), place.stepId()) + "/reasons?mark=" + mark.code() + "&side="
                        + place.side().word());
    }

    private void keep(Context ctx, Walk walk, Place place, Mark mark, String reason) {
        Optional<String> fault = Optional.of(reason).filter(r -> !r.equals(IN_WORDS));
        Optional<ribmark.blocksheet.Mark> held = walk.sheet().mark(place).filter(before -> before.mark() == mark);
        if (held.isEmpty() || !held.get().faultId().equals(fault)) {
            sheets.mark(
                    walk.sheet().id(),
                    place,
                    mark,
                    fault,
                    held.map(ribmark.blocksheet.Mark::words).orElse(""),
                    held.map(ribmark.blocksheet.Mark::observedAt).orElseGet(clock::instant));
        }
        String review = "/block-sheets/" + walk.sheet().id() + "/closing";
        Site.see(
                ctx,
                walk.after(place, mark)
                        .map(next -> StepView.address(walk.sheet(), next))
                        .orElse(review));
    }

    private void undo(Context ctx) {
        Form form = Form.typed(ctx);
        Walk walk = writable(ctx);
        Place place = place(ctx, walk, form);
        if (walk.sheet().mark(place).isPresent()) {
            sheets.undo(walk.sheet().id(), place);
        }
        Site.see(ctx, StepView.address(walk.sheet(), place));
    }

    private void answer(Context ctx) {
        Form form = Form.typed(ctx);
        Walk walk = writable(ctx);
        Step step = onSheet(ctx, walk);
        String question = form.value("question");
        if (step.questions().stream().noneMatch(q -> q.id().equals(question))) {
            throw new NotFound();
        }
        Optional<Answer.Known> known = Answer.Known.of(form.value("answered"));
        if (known.isEmpty()) {
            form.add(question, "Answer: nothing was pressed. Press one of the three.");
            pages.renderQuestion(ctx.status(422), walk, form);
            return;
        }
        sheets.answer(walk.sheet().id(), step.id(), question, known.get());
        Site.see(ctx, StepView.address(walk.sheet(), step.id()));
    }

    private Walk writable(Context ctx) {
        Walk walk = pages.walk(ctx);
        walk.sheet().mayBeWrittenBy(Access.signedIn(ctx));
        return walk;
    }

    private static Step onSheet(Context ctx, Walk walk) {
        Step step = walk.step(ctx.pathParam("step"));
        if (walk.sheet().sidesOf(step.id()).isEmpty()) {
            throw new Refused("Step " + step.number() + ", " + step.title() + ", is not on this sheet.");
        }
        return step;
    }

    private static Place place(Context ctx, Walk walk, Form form) {
        Step step = onSheet(ctx, walk);
        String typed = form.value("side").isEmpty() ? Side.ONCE.word() : form.value("side");
        return Side.of(typed)
                .filter(side -> walk.sheet().sidesOf(step.id()).contains(side))
                .map(side -> new Place(step.id(), side))
                .orElseThrow(() -> new Refused(wrongSide(walk.sheet(), step)));
    }

    private static String wrongSide(BlockSheet sheet, Step step) {
        boolean once = sheet.sidesOf(step.id()).contains(Side.ONCE);
        return "Step " + step.number() + " is marked "
                + (once
                        ? "once on this sheet, not for a side."
                        : "for " + String.join(" or ", words(sheet, step)) + " on this sheet.");
    }

    private static java.util.List<String> words(BlockSheet sheet, Step step) {
        return sheet.sidesOf(step.id()).stream()
                .map(side -> "the " + side.word() + " side")
                .toList();
    }

    private static boolean isStopped(Walk walk, Place place) {
        return walk.sheet().mark(place).filter(m -> m.mark() == Mark.STOPPED).isPresent();
    }

    private static void refuseAfterStop(Walk walk, Place place, Mark pressed) {
        if (isStopped(walk, place) && pressed != Mark.STOPPED) {
            throw new Refused("Step " + walk.step(place.stepId()).number()
                    + " was stopped, and a stop ends the step. If it was another mark, undo the stop first.");
        }
    }

    private static boolean isReason(Walk walk, Place place, String fault) {
        return fault.equals(IN_WORDS) || walk.step(place.stepId()).fault(fault).isPresent();
    }
}
