package ribmark.proof;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ribmark.competence.EvidenceRule;
import ribmark.contentfiles.Node;
import ribmark.scoring.Basis;
import ribmark.scoring.Ground;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.Prices;
import ribmark.scoring.Region;
import ribmark.scoring.Scale;
import ribmark.scoring.TrimMeasure;

/** Turns the files that hold figures, found sound, into the measures, scales and rules that scores are worked out with. */
final class FigureReader {

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
                Region.of(node.get("follows").text()),
                grounds(node));
    }

    /** The scales of a file, each with what its class lets it be wrong by. */
    static List<Scale> scales(Node file) {
        return file.all("scales[]").stream()
                .map(node -> new Scale(
                        node.get("id").text(),
                        node.get("name").text(),
                        node.get("division-g").number(),
                        node.get("repeatability-g").number(),
                        permissible(file.get("permissible"), node.get("class").text())))
                .toList();
    }

    /** What a scale of this class may be wrong by; without a class, the one the file takes for granted. */
    static Optional<PermissibleErrors> permissible(Node node, String ofClass) {
        String named = ofClass.isEmpty() ? node.get("assumed").text() : ofClass;
        return node.all("classes[]").stream()
                .filter(one -> one.get("class").text().equals(named))
                .findFirst()
                .map(one -> new PermissibleErrors(
                        named,
                        one.all("steps[]").stream()
                                .map(step -> new PermissibleErrors.Step(
                                        step.get("up-to-divisions").number(),
                                        step.get("error-divisions").number()))
                                .toList(),
                        node.get("in-use").number(),
                        node.get("coarse-from-percent").number(),
                        grounds(node)));
    }

    /** What a kilogram of each cut is worth, as written. */
    static Prices prices(Node file) {
        Map<String, BigDecimal> perKg = new LinkedHashMap<>();
        file.all("prices[]")
                .forEach(one -> perKg.put(
                        one.get("row").text(), new BigDecimal(one.get("per-kg").text())));
        return new Prices(
                file.get("currency").text(),
                file.get("since").text(),
                file.get("text").text(),
                perKg,
                grounds(file));
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

    static int whole(Node node, String name) {
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
