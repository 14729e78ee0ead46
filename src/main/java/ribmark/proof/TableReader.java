package ribmark.proof;

import java.util.LinkedHashMap;
import java.util.Map;
import ribmark.contentfiles.Node;
import ribmark.scoring.CuttingRule;
import ribmark.scoring.OtherAnimal;
import ribmark.scoring.PairTolerances;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.Region;

/** Turns the file of a reference table, found sound, into the table that yields are judged by. */
final class TableReader {

    private TableReader() {}

    static ReferenceTable table(Node file) {
        Node hot = file.get("hot");
        Node gap = file.get("gap");
        return new ReferenceTable(
                file.get("id").text(),
                file.get("title").text(),
                file.get("standing").text(),
                file.get("text").text(),
                bounds(file.get("bounds")),
                kidneysOut(file.get("kidneys-out")),
                new ReferenceTable.Hot(
                        hot.get("multiply-by").number(),
                        hot.get("standard-uncertainty").number()),
                new ReferenceTable.GapLimits(
                        gap.get("balanced-to-percent").number(),
                        gap.get("query-to-percent").number()),
                losses(file.get("losses")),
                other(file.get("other-counts")),
                pairs(file.get("pairs")),
                cutting(file.get("cutting-tests")),
                file.all("rows[]").stream().map(TableReader::row).toList(),
                FigureReader.grounds(file));
    }

    private static ReferenceTable.Bounds bounds(Node node) {
        return new ReferenceTable.Bounds(
                node.get("lowest-kg").number(),
                node.get("highest-kg").number(),
                node.get("fat-classes").texts(),
                node.get("widen").number());
    }

    private static ReferenceTable.KidneysOut kidneysOut(Node node) {
        return new ReferenceTable.KidneysOut(
                node.get("divide-by").number(),
                node.get("leaves-out").texts(),
                node.get("possible").yes(),
                node.get("instead").text());
    }

    private static ReferenceTable.Losses losses(Node node) {
        return new ReferenceTable.Losses(
                node.get("of-carcase").get("expected-percent").number(),
                node.get("of-carcase").get("sd-percent").number(),
                node.get("of-cut").get("expected-percent").number(),
                node.get("of-cut").get("sd-percent").number());
    }

    private static PairTolerances pairs(Node node) {
        Map<String, Double> percents = new LinkedHashMap<>();
        node.all("tolerances[]")
                .forEach(one ->
                        percents.put(one.get("row").text(), one.get("percent").number()));
        return node.isThere()
                ? new PairTolerances(percents, node.get("whose").text(), FigureReader.grounds(node))
                : PairTolerances.NONE;
    }

    private static CuttingRule cutting(Node node) {
        if (!node.isThere()) {
            return CuttingRule.NONE;
        }
        return new CuttingRule(
                node.get("worth-carcases").number(),
                FigureReader.whole(node, "own-from-carcases"),
                node.all("classes[]").stream()
                        .map(one -> new CuttingRule.CarcaseClass(
                                one.get("id").text(),
                                one.get("name").text(),
                                one.get("fat-classes").texts()))
                        .toList(),
                FigureReader.grounds(node));
    }

    private static OtherAnimal other(Node node) {
        if (!node.isThere()) {
            return OtherAnimal.NOTHING_SAID;
        }
        return new OtherAnimal(
                node.get("widen").number(),
                FigureReader.whole(node, "at-most"),
                node.all("regions[]").stream().map(TableReader::grows).toList());
    }

    private static OtherAnimal.Grows grows(Node node) {
        Map<String, Double> points = new LinkedHashMap<>();
        node.all("points[]")
                .forEach(one ->
                        points.put(one.get("row").text(), one.get("points").number()));
        Region region = Region.of(node.get("region").text()).orElseThrow();
        return new OtherAnimal.Grows(region, points, FigureReader.grounds(node));
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
                FigureReader.grounds(row),
                row.get("part-of").texts());
    }
}
