package ribmark.blocksheet;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** A whole block sheet on one page: every step with its marks, in the order worked. */
public final class SheetPages {

    private final BlockSheetStore sheets;
    private final RanLines lines;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    /** Days are said in the college's own zone. */
    public SheetPages(BlockSheetStore sheets, RanLines lines, Supplier<Curriculum> curriculum, ZoneId zone) {
        this.sheets = sheets;
        this.lines = lines;
        this.curriculum = curriculum;
        this.zone = zone;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page(
                "/block-sheets/{id}",
                this::show,
                Allow.of(Role.ASSESSOR, Role.TUTOR).own(Role.APPRENTICE));
    }

    private void show(Context ctx) {
        Acting acting = Access.signedIn(ctx);
        BlockSheet sheet = sheets.find(Ids.of(ctx.pathParam("id")), acting);
        Walk walk = Walk.of(sheet, curriculum.get());
        boolean keeper = sheet.isOpen() && acting.as(Role.ASSESSOR) && sheet.isKeptBy(acting.id());
        Map<String, Object> model = new HashMap<>();
        model.put("title", sheet.apprentice().name() + " on " + sheet.carcase().name());
        model.put("pairs", TicketStrip.of(sheet, Words.day(sheet.openedAt(), zone)));
        model.put("view", SheetView.all(walk, leadsTo(walk, acting)));
        model.put(
                "worded",
                sheet.isOpen()
                        ? ""
                        : WordedUnder.say(sheet.marks(), curriculum.get().version()));
        model.put("sheet", sheet);
        model.put("animal", AnimalView.of(walk, zone));
        model.put("ran", lines.of(sheet));
        model.put("runsElsewhere", keeper ? runsElsewhere(walk) : List.of());
        model.put("staff", acting.as(Role.ASSESSOR) || acting.as(Role.TUTOR));
        model.put("keeper", keeper);
        model.put("marked", !sheet.marks().isEmpty());
        model.put("standing", standing(sheet, keeper));
        model.put(
                "next", walk.next().map(place -> StepView.address(sheet, place)).orElse(null));
        model.put("nextWords", walk.next().map(place -> goOn(walk, place)).orElse(""));
        ctx.render("blocksheet/sheet.html", model);
    }

    /** The steps that cut a line and hold a mark with help or worse: there it may have run elsewhere. */
    private static List<StepView.Link> runsElsewhere(Walk walk) {
        return walk.breakdown().steps().stream()
                .filter(step -> !walk.breakdown().linesCutAt(step).isEmpty())
                .filter(step -> walk.sheet().marksOf(step.id()).stream()
                        .anyMatch(mark -> mark.mark() != ribmark.competence.Mark.UNAIDED))
                .map(step -> new StepView.Link(
                        "Where the line of step\u00a0" + step.number() + " ran",
                        StepView.address(walk.sheet(), step.id()) + "/ran"))
                .toList();
    }

    private static Function<Step, String> leadsTo(Walk walk, Acting acting) {
        return acting.as(Role.ASSESSOR)
                ? step -> StepView.address(walk.sheet(), step.id())
                : step -> "/steps/" + step.id() + walk.animal().query();
    }

    private String standing(BlockSheet sheet, boolean keeper) {
        return sheet.closing()
                .map(closing -> "Closed on " + Words.day(closing.closedAt(), zone) + ".")
                .orElse(
                        keeper
                                ? "Open since " + Words.day(sheet.openedAt(), zone) + "."
                                : "Open. " + sheet.assessor().name() + " keeps it and marks it.");
    }

    static String goOn(Walk walk, Place place) {
        Step step = walk.step(place.stepId());
        String side = place.side() == Side.ONCE ? "" : ", " + place.side().word();
        return (walk.sheet().marks().isEmpty() ? "Begin with step\u00a0" : "Go on with step\u00a0")
                + step.number()
                + side;
    }
}
