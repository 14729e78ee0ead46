package ribmark.curriculum;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.anatomy.Formula;
import ribmark.basics.NotFound;
import ribmark.basics.Words;
import ribmark.scoring.Basis;
import ribmark.scoring.Ground;
import ribmark.scoring.Limits;
import ribmark.scoring.ReferenceTable;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where the steps are read: all of them in the order worked, each for itself, and the sources behind every figure. */
public final class StepPages {

    /** A stage as listed. */
    public record StageRows(String id, String title, String whatFor, List<Row> rows) {}

    /** A step as listed. */
    public record Row(int number, String id, String title, String sides, boolean optional, String caution) {}

    /** A source as listed, with how it was seen in words. */
    public record SourceRow(Source source, String publisher, String seen, String note) {}

    /** A figure of a reference table, with what it rests on. */
    public record Expected(
            String name, String moment, String expected, String spread, String basis, List<Known> known) {}

    private static final Allow READERS = Allow.of(Role.ASSESSOR, Role.TUTOR, Role.APPRENTICE);

    private static final Map<String, String> SEEN = Map.of(
            "text", "read itself",
            "second-hand", "second-hand",
            "abstract", "abstract only",
            "from memory", "from memory",
            "derived", "worked out here",
            "none", "nothing to read");

    private final Curriculum curriculum;
    private final StepPicture.Book pictures;
    private final TradeWords words;

    /** The pages show this curriculum, with these pictures of the bones. */
    public StepPages(Curriculum curriculum, StepPicture.Book pictures) {
        this.curriculum = curriculum;
        this.pictures = pictures;
        this.words = new TradeWords(curriculum);
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/steps", this::all, READERS);
        routes.page("/steps/{step}", this::one, READERS);
        routes.page("/sources", this::sources, Allow.signedIn());
        routes.page("/sources/{table}", this::table, Allow.signedIn());
    }

    private void all(Context ctx) {
        Breakdown breakdown = curriculum.breakdown();
        int steps = breakdown.steps().size();
        List<StageRows> stages =
                breakdown.stages().stream().map(StepPages::stage).toList();
        String title = Words.capital(Words.count(stages.size(), "stage", "stages")) + ", "
                + Words.count(steps, "step", "steps");
        ctx.render("curriculum/steps.html", Map.of("title", title, "breakdown", breakdown, "stages", stages));
    }

    private static StageRows stage(Stage stage) {
        return new StageRows(
                stage.id(),
                stage.title(),
                stage.whatFor(),
                stage.steps().stream().map(StepPages::row).toList());
    }

    private static Row row(Step step) {
        return new Row(
                step.number(),
                step.id(),
                step.title(),
                StepPage.sides(step),
                step.optional(),
                step.caution().heading());
    }

    private void one(Context ctx) {
        Curriculum animal = Optional.ofNullable(ctx.queryParam("formula"))
                .map(Formula::parse)
                .map(curriculum::on)
                .orElse(curriculum);
        Step step = animal.breakdown().step(ctx.pathParam("step")).orElseThrow(NotFound::new);
        ctx.render(
                "curriculum/step.html",
                Map.of(
                        "page",
                        StepPage.of(animal, step),
                        "pictures",
                        pictures.of(animal, step),
                        "words",
                        words.in(List.of(step))));
    }

    private void sources(Context ctx) {
        ctx.render(
                "curriculum/sources.html",
                Map.of(
                        "sources",
                        curriculum.sources().stream().map(StepPages::source).toList(),
                        "tables",
                        curriculum.tables()));
    }

    private void table(Context ctx) {
        ReferenceTable table = curriculum.table(ctx.pathParam("table")).orElseThrow(NotFound::new);
        List<Expected> rows = table.rows().stream().map(this::expected).toList();
        ctx.render(
                "curriculum/table.html",
                Map.of("table", table, "rows", rows, "known", Known.ofLimits(curriculum, table.grounds())));
    }

    private Expected expected(ReferenceTable.Row row) {
        return new Expected(
                row.name(),
                row.moment(),
                Limits.figure(row.expected()),
                Limits.figure(row.sd()),
                Basis.weakest(row.grounds().stream().map(Ground::basis).toList())
                        .word(),
                Known.ofLimits(curriculum, row.grounds()));
    }

    private static SourceRow source(Source source) {
        String publisher = source.publisher()
                .filter(name -> !name.isEmpty())
                .map(name -> name + source.year().map(year -> ", " + year).orElse(""))
                .orElse("");
        return new SourceRow(
                source,
                publisher,
                SEEN.getOrDefault(source.seen(), source.seen()),
                source.note().orElse(""));
    }
}
