package ribmark.blocksheet;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import ribmark.basics.Ids;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where the keeper of a sheet taps, in the middle of the work, how many ribs and loin vertebrae this animal has. */
public final class CountPages {

    /** What may be tapped for one region: its field, its name, and the counts offered. */
    public record Region(String field, String name, List<Choice> choices) {}

    /** One count to tap; the hint says which is usual and which was kept. */
    public record Choice(int count, String words, String hint, boolean kept) {}

    /** A count so far from the usual one is offered where the content sets no limit: ours. */
    private static final int FAR = 2;

    private static final String RIBS = "thoracic";
    private static final String LOIN = "lumbar";
    private static final Allow ALLOW = Allow.of(Role.ASSESSOR);

    private final BlockSheetStore sheets;
    private final CarcaseStore carcases;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    /** A count belongs to the carcase, whoever works on it; days are said in the college's own zone. */
    public CountPages(BlockSheetStore sheets, CarcaseStore carcases, Supplier<Curriculum> curriculum, ZoneId zone) {
        this.sheets = sheets;
        this.carcases = carcases;
        this.curriculum = curriculum;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/block-sheets/{id}/count", this::show, ALLOW);
        routes.post("/block-sheets/{id}/count", this::keep, ALLOW);
    }

    private void show(Context ctx) {
        BlockSheet sheet = sheet(ctx);
        if (!sheet.isOpen() || !sheet.isKeptBy(Access.signedIn(ctx).id())) {
            Site.see(ctx, "/block-sheets/" + sheet.id());
            return;
        }
        render(ctx, sheet, Form.blank());
    }

    private void keep(Context ctx) {
        BlockSheet sheet = sheet(ctx);
        Acting acting = Access.signedIn(ctx);
        sheet.mayBeWrittenBy(acting);
        Form form = Form.typed(ctx);
        OptionalInt ribs = pressed(form, RIBS);
        OptionalInt loin = pressed(form, LOIN);
        if (ribs.isEmpty() && loin.isEmpty()) {
            form.add(RIBS, "Count: what was pressed is none of the counts offered. Press one of these.");
            render(ctx.status(422), sheet, form);
            return;
        }
        carcases.count(sheet.carcase(), ribs, loin, acting.person());
        Site.see(ctx, "/block-sheets/" + sheet.id() + "/count");
    }

    private OptionalInt pressed(Form form, String field) {
        return regions(Optional.empty()).stream()
                .filter(region -> region.field().equals(field))
                .flatMap(region -> region.choices().stream())
                .mapToInt(Choice::count)
                .filter(count -> form.value(field).equals(Integer.toString(count)))
                .findFirst();
    }

    private BlockSheet sheet(Context ctx) {
        return sheets.find(Ids.of(ctx.pathParam("id")), Access.signedIn(ctx));
    }

    /** Without a carcase nothing was kept yet. */
    private List<Region> regions(Optional<Carcase> carcase) {
        List<Integer> usual = curriculum.get().breakdown().formula().counts();
        OptionalInt ribs = carcase.map(Carcase::thoracic).orElse(OptionalInt.empty());
        OptionalInt loin = carcase.map(Carcase::lumbar).orElse(OptionalInt.empty());
        return List.of(
                new Region(RIBS, "Pairs of ribs", choices(usual.get(1), "pairs", ribs)),
                new Region(LOIN, "Loin vertebrae", choices(usual.get(2), "in the loin", loin)));
    }

    private List<Choice> choices(int usual, String what, OptionalInt kept) {
        int far = curriculum
                .get()
                .breakdown()
                .atIntake()
                .map(Breakdown.AtIntake::countsDifferBy)
                .orElse(FAR);
        return IntStream.rangeClosed(Math.max(1, usual - far), usual + far)
                .mapToObj(count -> choice(count, what, count == usual, kept.isPresent() && kept.getAsInt() == count))
                .toList();
    }

    private static Choice choice(int count, String what, boolean usual, boolean kept) {
        String hint = (usual ? "usual" : "") + (usual && kept ? ", " : "") + (kept ? "as counted" : "");
        return new Choice(count, count + " " + what, hint, kept);
    }

    private void render(Context ctx, BlockSheet sheet, Form form) {
        Walk walk = Walk.of(sheet, curriculum.get());
        Map<String, Object> model = new HashMap<>();
        model.put("form", form);
        model.put("pairs", TicketStrip.of(walk));
        model.put("title", "Count " + sheet.carcase().name());
        model.put("animal", AnimalView.of(walk, zone));
        model.put("regions", regions(Optional.of(sheet.carcase())));
        model.put("sheet", sheet.id());
        model.put(
                "next", walk.next().map(place -> StepView.address(sheet, place)).orElse(null));
        model.put(
                "nextWords",
                walk.next().map(place -> SheetPages.goOn(walk, place)).orElse(""));
        ctx.render("blocksheet/count.html", model);
    }
}
