package ribmark.cuttingtests;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import ribmark.basics.NotFound;
import ribmark.basics.Words;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.CuttingRule.CarcaseClass;
import ribmark.scoring.Ground;
import ribmark.scoring.Learned;
import ribmark.scoring.OwnTable;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** How much of a reference table is still borrowed, and how much is the college's own. */
public final class TablePages {

    /** One class of carcases with its rows and the tests it has learnt from. */
    public record OfClass(String name, String tests, List<Line> lines, List<Told> told) {}

    /** One row: what was borrowed, what the college found, and what holds now. */
    public record Line(String name, String borrowed, String tests, String now, String share) {}

    /** One test: which carcase, when, who cut it, who entered it. */
    public record Told(String carcase, String day, String who, String by) {}

    private final OwnTables tables;
    private final CarcaseStore carcases;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    /** Carcases give the tests their names; the zone is the college's. */
    public TablePages(OwnTables tables, CarcaseStore carcases, Supplier<Curriculum> curriculum, ZoneId zone) {
        this.tables = tables;
        this.carcases = carcases;
        this.curriculum = curriculum;
        this.zone = zone;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/tables/{table}", this::show, Allow.of(Role.ASSESSOR, Role.TUTOR, Role.ADMINISTRATOR));
    }

    private void show(Context ctx) {
        ReferenceTable table = curriculum.get().table(ctx.pathParam("table")).orElseThrow(NotFound::new);
        Map<String, Object> model = new HashMap<>();
        model.put("table", table);
        model.put("title", "Whose figures? " + table.title());
        model.put("worth", worth(table));
        model.put(
                "classes",
                table.cutting().classes().stream()
                        .map(one -> ofClass(table, one))
                        .toList());
        model.put("rule", table.cutting().grounds().stream().map(Ground::fact).toList());
        ctx.render("cuttingtests/table.html", model);
    }

    private static String worth(ReferenceTable table) {
        double worth = table.cutting().worth();
        String carcases =
                worth == Math.rint(worth) ? Words.count((int) worth, "carcase", "carcases") : worth + " carcases";
        return "The table as it came counts like " + carcases
                + "; each cutting test of the college counts as one more.";
    }

    private OfClass ofClass(ReferenceTable table, CarcaseClass ofClass) {
        OwnTable own = tables.now(table, ofClass);
        List<CuttingTest> told = tables.teaching(table, ofClass);
        return new OfClass(
                Words.capital(ofClass.name()),
                told.isEmpty()
                        ? "No cutting test yet: all of it is borrowed."
                        : Words.capital(Words.count(told.size(), "cutting test", "cutting tests")) + " so far.",
                table.rows().stream().map(row -> line(own, row)).toList(),
                told.stream().map(this::told).toList());
    }

    private static Line line(OwnTable own, Row row) {
        int tests = own.testsOf(row);
        Learned learned = own.learned(row);
        double borrowed = own.from().cutting().borrowedPercent(tests);
        return new Line(
                row.name(),
                figures(row.expected(), row.sd()),
                Integer.toString(tests),
                figures(learned.mean(), learned.spread()),
                String.format(Locale.ROOT, "%.0f\u00a0%% borrowed, %.0f\u00a0%% own", borrowed, 100 - borrowed));
    }

    private static String figures(double mean, double spread) {
        return String.format(Locale.ROOT, "%.2f ± %.2f", mean, spread);
    }

    private Told told(CuttingTest test) {
        return new Told(
                carcases.find(test.carcase()).title(),
                Words.day(test.at(), zone),
                test.words(),
                test.by().name());
    }
}
