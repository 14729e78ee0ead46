package ribmark.blocksheet;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import ribmark.basics.Words;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** The assessor's first place: the sheets that are open, and the carcases a sheet can be opened on. */
public final class TodayPages {

    /** An open sheet as listed. */
    public record Open(
            String words, String href, String go, String goHref, String keeper, String marks, String since) {}

    /** A carcase that may be worked on. */
    public record OnTheRail(
            String name, String title, String weight, String who, String open, String weighUp, String page) {}

    /** More than these are found under Carcases. */
    private static final int NEWEST = 8;

    private final BlockSheetStore sheets;
    private final CarcaseStore carcases;
    private final Supplier<Curriculum> curriculum;
    private final Clock clock;
    private final ZoneId zone;

    /** Today is today in the college's own zone. */
    public TodayPages(
            BlockSheetStore sheets, CarcaseStore carcases, Supplier<Curriculum> curriculum, Clock clock, ZoneId zone) {
        this.sheets = sheets;
        this.carcases = carcases;
        this.curriculum = curriculum;
        this.clock = clock;
        this.zone = zone;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/today", this::show, Allow.of(Role.ASSESSOR));
    }

    private void show(Context ctx) {
        Acting acting = Access.signedIn(ctx);
        List<BlockSheet> open = sheets.allOpen();
        List<Carcase> accepted = carcases.accepted();
        Map<String, Object> model = new HashMap<>();
        model.put("lead", lead(acting, open));
        model.put(
                "mine",
                open.stream()
                        .filter(sheet -> sheet.isKeptBy(acting.id()))
                        .map(this::row)
                        .toList());
        model.put(
                "others",
                open.stream()
                        .filter(sheet -> !sheet.isKeptBy(acting.id()))
                        .map(this::row)
                        .toList());
        model.put(
                "carcases",
                accepted.stream()
                        .limit(NEWEST)
                        .map(carcase -> onTheRail(carcase, open))
                        .toList());
        model.put("more", accepted.size() > NEWEST);
        ctx.render("blocksheet/today.html", model);
    }

    private String lead(Acting acting, List<BlockSheet> open) {
        int mine =
                (int) open.stream().filter(sheet -> sheet.isKeptBy(acting.id())).count();
        String day = Words.day(clock.instant(), zone);
        return switch (mine) {
            case 0 -> "It is " + day + ". You have no sheet open.";
            case 1 -> "It is " + day + ". One sheet of yours is open.";
            default -> "It is " + day + ". " + Words.capital(Words.count(mine)) + " sheets of yours are open.";
        };
    }

    private Open row(BlockSheet sheet) {
        Walk walk = Walk.of(sheet, curriculum.get());
        String address = "/block-sheets/" + sheet.id();
        return new Open(
                sheet.apprentice().name() + " on " + sheet.carcase().name(),
                address,
                walk.next().map(place -> SheetPages.goOn(walk, place)).orElse("Read it through, then close"),
                walk.next().map(place -> StepView.address(sheet, place)).orElse(address + "/closing"),
                sheet.assessor().name(),
                sheet.marks().size() + "\u00a0of\u00a0" + sheet.scope().size(),
                Words.day(sheet.openedAt(), zone));
    }

    private static OnTheRail onTheRail(Carcase carcase, List<BlockSheet> open) {
        List<String> who = open.stream()
                .filter(sheet -> sheet.carcase().id().equals(carcase.id()))
                .map(sheet -> sheet.apprentice().name())
                .distinct()
                .toList();
        return new OnTheRail(
                carcase.name(),
                carcase.title(),
                carcase.weightInWords(),
                Words.list(who),
                "/block-sheets/new?carcase=" + carcase.id(),
                "/weigh-ups/" + carcase.id(),
                "/carcases/" + carcase.id());
    }
}
