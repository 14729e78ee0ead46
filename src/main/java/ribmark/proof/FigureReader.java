package ribmark.proof;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import ribmark.competence.EvidenceRule;
import ribmark.scoring.Basis;
import ribmark.scoring.Ground;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.Scale;
import ribmark.scoring.TrimMeasure;

/** Turns the files that hold figures, found sound, into the tables and measures that scores are worked out with. */
final class FigureReader {

    ReferenceTable table(Node file) {
        Node bounds = file.get("bounds");
        Node out = file.get("kidneys-out");
        Node hot = file.get("hot");
        Node gap = file.get("gap");
        return new ReferenceTable(
                file.get("id").text(),
                file.get("title").text(),
                file.get("standing").text(),
                file.get("text").text(),
                new ReferenceTable.Bounds(
                        bounds.get("lowest-kg").number(),
                        bounds.get("highest-kg").number(),
                        bounds.get("fat-classes").texts(),
                        bounds.get("widen").number()),
                new ReferenceTable.KidneysOut(
                        out.get("divide-by").number(),
                        out.get("leaves-out").texts(),
                        out.get("possible").yes(),
                        out.get("instead").text()),
                new ReferenceTable.Hot(
                        hot.get("multiply-by").number(),
                        hot.get("standard-uncertainty").number()),
                new ReferenceTable.GapLimits(
                        gap.get("balanced-to-percent").number(),
                        gap.get("query-to-percent").number()),
                losses(file.get("losses")),
                file.all("rows[]").stream().map(FigureReader::row).toList(),
                grounds(file));
    }

    private static ReferenceTable.Losses losses(Node node) {
        return new ReferenceTable.Losses(
                node.get("of-carcase").get("expected-percent").number(),
                node.get("of-carcase").get("sd-percent").number(),
                node.get("of-cut").get("expected-percent").number(),
                node.get("of-cut").get("sd-percent").number());
    }

    private static ReferenceTable.Row row(Node row) {
        return new ReferenceTable.Row(
                row.get("cut").text(),
                row.get("name").text(),
                row.get("pair").yes(),
                row.get("pair-spread").number(),
                row.get("moment").text(),
                row.get("expected").number(),
                row.get("sd").number(),
                grounds(row),
                row.get("part-of").texts());
    }

    TrimMeasure measure(Node node) {
        return new TrimMeasure(
                node.get("id").text(),
                node.get("step").text(),
                node.get("name").text(),
                node.get("unit").text(),
                node.get("division").number(),
                maybe(node.get("lowest")),
                maybe(node.get("highest")),
                node.get("weight").number(),
                node.get("whose").text(),
                node.get("text").text(),
                node.get("standard-uncertainty").number(),
                grounds(node));
    }

    Scale scale(Node node) {
        return new Scale(
                node.get("id").text(),
                node.get("name").text(),
                node.get("division-g").number(),
                node.get("repeatability-g").number());
    }

    EvidenceRule rule(Node node) {
        return new EvidenceRule(
                whole(node, "sheets"),
                whole(node, "carcases"),
                whole(node, "assessors"),
                whole(node, "within-days"),
                node.get("whose").text(),
                LocalDate.parse(node.get("since").text()));
    }

    private static int whole(Node node, String name) {
        return (int) node.get(name).number();
    }

    private static OptionalDouble maybe(Node node) {
        return node.isThere() ? OptionalDouble.of(node.number()) : OptionalDouble.empty();
    }

    /** What a value says it rests on. */
    static List<Ground> grounds(Node node) {
        return node.get("rests-on").items().stream()
                .map(fact -> new Ground(
                        fact.get("fact").text(),
                        fact.get("source").text(),
                        Basis.of(fact.get("basis").text()).orElse(Basis.FROM_MEMORY)))
                .toList();
    }
}
