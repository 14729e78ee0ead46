package ribmark.feedback;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.RanLines;
import ribmark.blocksheet.Worded;
import ribmark.blocksheet.WordedUnder;
import ribmark.carcase.ThisAnimal;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.curriculum.StepPicture;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Choice;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.weighing.PageLine;
import ribmark.weighing.WeighedCarcases;

/** Where an apprentice reads what was seen and answers it, and whoever watched or teaches reads the answer. */
public final class FeedbackPages {

    /** One sheet as listed. */
    public record Row(UUID id, String title, String day, String assessor, String well, String change) {}

    private static final Allow READERS = Allow.of(Role.ASSESSOR, Role.TUTOR).own(Role.APPRENTICE);
    private static final Allow OWN = Allow.of().own(Role.APPRENTICE);
    private static final List<Choice> AGREES =
            Reply.Agrees.words().stream().map(Choice::of).toList();

    private final BlockSheetStore sheets;
    private final RanLines lines;
    private final ReplyStore replies;
    private final WeighedCarcases weighed;
    private final Supplier<Curriculum> curriculum;
    private final StepPicture.Book pictures;
    private final ZoneId zone;

    /** The pictures show where on the bones something was seen; the zone is the one days are shown in. */
    public FeedbackPages(
            BlockSheetStore sheets,
            RanLines lines,
            ReplyStore replies,
            WeighedCarcases weighed,
            Supplier<Curriculum> curriculum,
            StepPicture.Book pictures,
            ZoneId zone) {
        this.sheets = sheets;
        this.lines = lines;
        this.replies = replies;
        this.weighed = weighed;
        this.curriculum = curriculum;
        this.pictures = pictures;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/feedback", this::list, OWN);
        routes.page("/feedback/{sheet}", this::show, READERS);
        routes.page("/feedback/{sheet}/steps/{step}", this::showStep, READERS);
        routes.post("/feedback/{sheet}/reply", this::reply, OWN);
    }

    private void list(Context ctx) {
        UUID apprentice = Access.signedIn(ctx).id();
        Set<UUID> answered = replies.answeredBy(apprentice);
        List<Row> all = sheets.closedOf(apprentice).stream().map(this::row).toList();
        List<Row> newestFirst = new java.util.ArrayList<>(all);
        java.util.Collections.reverse(newestFirst);
        ctx.render(
                "feedback/list.html",
                Map.of(
                        "fresh",
                        newestFirst.stream()
                                .filter(row -> !answered.contains(row.id()))
                                .toList(),
                        "answered",
                        newestFirst.stream()
                                .filter(row -> answered.contains(row.id()))
                                .toList()));
    }

    private Row row(BlockSheet sheet) {
        var said = sheet.closing().orElseThrow();
        return new Row(
                sheet.id(),
                sheet.carcase().name(),
                Words.day(said.closedAt(), zone),
                sheet.assessor().name(),
                said.well(),
                said.change());
    }

    private void show(Context ctx) {
        render(ctx, find(ctx), Form.blank());
    }

    private void showStep(Context ctx) {
        BlockSheet sheet = find(ctx);
        ThisAnimal animal = ThisAnimal.of(sheet.carcase(), curriculum.get());
        Breakdown breakdown = animal.curriculum().breakdown();
        Step step = breakdown.step(ctx.pathParam("step")).orElseThrow(NotFound::new);
        if (sheet.marksOf(step.id()).isEmpty()) {
            throw new NotFound();
        }
        List<PageLine> lines = weighed.forSheet(sheet).stream()
                .filter(line -> line.stepId().equals(step.id()))
                .toList();
        SheetFeedback feedback = SheetFeedback.of(sheet, breakdown, lines, replies.allOf(sheet.id()), zone);
        Map<String, Object> model = model(ctx, feedback, Form.blank());
        model.put("step", step);
        model.put("showMe", "/steps/" + step.id() + animal.query());
        model.put(
                "bones",
                pictures.of(animal.curriculum(), step).stream().findFirst().orElse(null));
        String version = animal.curriculum().version();
        model.put("title", sheet.title(step));
        model.put("worded", WordedUnder.say(sheet.marksOf(step.id()), version));
        model.put("judged", judged(sheet, step, version));
        model.put("marks", feedback.marksInWords(step));
        model.put("seen", feedback.seenAt(step));
        model.put("stage", sheet.closing().orElseThrow().stage(step.stageId()));
        ctx.render("feedback/step.html", model);
    }

    /** How the step was worded when it was marked, where that differs in version from now; newest first. */
    private static List<Worded> judged(BlockSheet sheet, Step step, String version) {
        return sheet.marksOf(step.id()).stream()
                .flatMap(mark -> mark.worded().stream())
                .filter(worded -> !worded.version().equals(version))
                .distinct()
                .toList();
    }

    private void reply(Context ctx) {
        BlockSheet sheet = find(ctx);
        Form form = Form.typed(ctx);
        String agrees = form.oneOf("agrees", "Is this how you saw it?", Reply.Agrees.words());
        if (agrees.equals(Reply.Agrees.YES.word()) || form.wrong()) {
            form.fitting("words", "In your own words");
        } else {
            form.words("words", "In your own words", "Say what you saw otherwise.");
        }
        if (form.wrong()) {
            render(ctx.status(422), sheet, form);
            return;
        }
        replies.add(sheet, Reply.Agrees.of(agrees).orElseThrow(), form.value("words"));
        Site.see(ctx, "/feedback/" + sheet.id());
    }

    private BlockSheet find(Context ctx) {
        BlockSheet sheet = sheets.find(Ids.of(ctx.pathParam("sheet")), Access.signedIn(ctx));
        if (sheet.isOpen()) {
            throw new NotFound();
        }
        return sheet;
    }

    private void render(Context ctx, BlockSheet sheet, Form form) {
        SheetFeedback feedback = SheetFeedback.of(
                sheet, curriculum.get().breakdown(), weighed.forSheet(sheet), replies.allOf(sheet.id()), zone);
        Map<String, Object> model = model(ctx, feedback, form);
        model.put("worded", WordedUnder.say(sheet.marks(), curriculum.get().version()));
        model.put("ran", lines.of(sheet));
        ctx.render("feedback/sheet.html", model);
    }

    private static Map<String, Object> model(Context ctx, SheetFeedback feedback, Form form) {
        Acting acting = Access.signedIn(ctx);
        boolean own = acting.as(Role.APPRENTICE);
        BlockSheet sheet = feedback.sheet();
        Map<String, Object> model = new HashMap<>();
        model.put(
                "title",
                own
                        ? "Feedback on " + sheet.carcase().name()
                        : sheet.apprentice().name() + "’s feedback on "
                                + sheet.carcase().name());
        model.put("page", feedback);
        model.put("pairs", feedback.pairs(own));
        model.put("own", own);
        model.put("form", form);
        model.put("agrees", AGREES);
        return model;
    }
}
