package ribmark.weighupfile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ribmark.basics.FileProblem;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.TrimConformity;
import ribmark.slips.Explanation;
import ribmark.slips.Finding;
import ribmark.slips.Say;
import ribmark.slips.Suspect;
import ribmark.weighup.Balance;
import ribmark.weighup.Costing;
import ribmark.weighup.Reconciliation;
import ribmark.weighup.ScoredCut;
import ribmark.weighup.WeighUpScore;

/** A reckoned weigh-up, or what was wrong with its file, as other programs read it; numbers are not rounded. */
public final class ScoreJson {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private ScoreJson() {}

    /** The whole result without what was not worked out, which is null: which entry looks like a slip, and which line may have moved. */
    public static ObjectNode of(WeighUpScore score) {
        return of(score, Optional.empty());
    }

    /** The whole result, with what the weights say of slips and moved lines where that was worked out. */
    public static ObjectNode of(WeighUpScore score, Optional<Finding> finding) {
        ObjectNode json = JSON.objectNode();
        json.set("balance", balance(score.balance(), "carcase"));
        json.set("cuts", array(score.cuts().stream().map(ScoreJson::cut).toList()));
        json.set(
                "trim",
                array(score.trim().measured().stream().map(ScoreJson::trim).toList()));
        json.set("yieldScore", number(score.yieldScore()));
        json.set("trimScore", number(score.trimScore()));
        ArrayNode notes = json.putArray("notes");
        score.notes().forEach(notes::add);
        json.set("suspects", suspects(finding));
        json.put("saying", finding.flatMap(Finding::saying).map(Say::words).orElse(null));
        json.set("explanations", explanations(finding));
        score.reconciliation().ifPresent(r -> json.set("tree", tree(score.innerBalances(), r)));
        return json;
    }

    /** The same, and what it cost where the college has prices. */
    public static ObjectNode of(WeighUpScore score, Optional<Finding> finding, Optional<Costing> costing) {
        ObjectNode json = of(score, finding);
        costing.ifPresent(worth -> json.set("cost", cost(worth)));
        return json;
    }

    private static ObjectNode cost(Costing costing) {
        ObjectNode json = JSON.objectNode();
        json.put("currency", costing.cost().currency());
        json.put("total", costing.cost().total());
        json.set(
                "parts",
                array(costing.cost().parts().stream()
                        .map(part -> JSON.objectNode()
                                .put("cut", part.cut())
                                .put("moreG", part.moreG())
                                .put("perKg", part.perKg())
                                .put("value", part.value()))
                        .toList()));
        ArrayNode unpriced = json.putArray("unpriced");
        costing.unpriced().forEach(unpriced::add);
        return json;
    }

    /** What was wrong, every problem in order. */
    public static ObjectNode of(List<FileProblem> problems) {
        ObjectNode json = JSON.objectNode();
        json.set("problems", array(problems.stream().map(ScoreJson::problem).toList()));
        return json;
    }

    /** The same for one line of many. */
    public static ObjectNode of(int line, List<FileProblem> problems) {
        ObjectNode json = JSON.objectNode();
        json.put("line", line);
        json.setAll(of(problems));
        return json;
    }

    private static ObjectNode problem(FileProblem problem) {
        return JSON.objectNode()
                .put("at", problem.at())
                .put("headline", problem.headline())
                .put("help", problem.help());
    }

    private static ObjectNode balance(Balance balance, String whole) {
        ObjectNode json = JSON.objectNode();
        json.set(whole + "G", grams(balance.wholeG()));
        json.put("piecesG", balance.partsG());
        json.set("gapG", grams(balance.gapG()));
        json.put("gapPercent", balance.gapPercent());
        json.put("gapExpandedUncertaintyG", balance.gapExpandedUncertaintyG());
        json.put("verdict", balance.verdict().word());
        ArrayNode missing = json.putArray("missing");
        balance.missing().forEach(missing::add);
        return json;
    }

    private static ObjectNode cut(ScoredCut cut) {
        ObjectNode json = JSON.objectNode();
        json.put("cut", cut.cut());
        json.put("percent", cut.yield().percent());
        json.put("standardUncertainty", cut.yield().standardUncertainty());
        json.put("expected", cut.yield().expected());
        json.put("sd", cut.yield().sd());
        json.put("basis", cut.yield().row().basis().word());
        json.put("zeta", cut.yield().zeta());
        json.put("verdict", cut.verdict().map(v -> v.word()).orElse(null));
        json.set("score", number(cut.score()));
        return json;
    }

    private static ObjectNode trim(TrimConformity trim) {
        ObjectNode json = JSON.objectNode();
        json.put("measure", trim.measure().id());
        json.put("value", trim.value());
        json.put("unit", trim.measure().unit());
        json.set("lowest", number(trim.measure().lowest()));
        json.set("highest", number(trim.measure().highest()));
        json.put("conformity", trim.probability());
        json.put("verdict", trim.verdict().word());
        json.put("score", trim.score());
        return json;
    }

    private static JsonNode suspects(Optional<Finding> finding) {
        return finding.<JsonNode>map(found ->
                        array(found.suspects().stream().map(ScoreJson::suspect).toList()))
                .orElse(JSON.nullNode());
    }

    private static ObjectNode suspect(Suspect suspect) {
        ObjectNode json = JSON.objectNode();
        json.put("cut", suspect.cut());
        json.put("side", suspect.side().map(Side::word).orElse(null));
        json.put("likelyKg", suspect.likely().map(Weight::kilograms).orElse(null));
        json.put("because", suspect.because().words());
        json.put("probability", suspect.probability());
        return json;
    }

    private static JsonNode explanations(Optional<Finding> finding) {
        return finding.flatMap(Finding::explanations)
                .<JsonNode>map(
                        all -> array(all.stream().map(ScoreJson::explanation).toList()))
                .orElse(JSON.nullNode());
    }

    private static ObjectNode explanation(Explanation explanation) {
        ObjectNode json = JSON.objectNode();
        json.put("line", explanation.line().orElse(null));
        json.put("towards", explanation.towards().orElse(null));
        json.put("by", explanation.by());
        json.put("side", explanation.side().map(Side::word).orElse(null));
        json.put("probability", explanation.probability());
        return json;
    }

    private static ObjectNode tree(List<Balance> balances, Reconciliation reconciliation) {
        ObjectNode json = JSON.objectNode();
        json.set(
                "balances",
                array(balances.stream()
                        .map(b -> {
                            ObjectNode one = JSON.objectNode().put("of", b.of());
                            one.setAll(balance(b, "whole"));
                            return one;
                        })
                        .toList()));
        json.set("globalTest", number(reconciliation.globalTest()));
        json.set("limit", number(reconciliation.limit()));
        json.put("adjusted", reconciliation.adjusted());
        json.set(
                "entries",
                array(reconciliation.entries().stream().map(ScoreJson::entry).toList()));
        return json;
    }

    private static ObjectNode entry(Reconciliation.Entry entry) {
        ObjectNode json = JSON.objectNode();
        json.put("cut", entry.cut());
        json.put("side", entry.side().orElse(null));
        json.put("reconciledG", entry.reconciledG());
        json.put("z", entry.z());
        return json;
    }

    private static JsonNode grams(BigDecimal grams) {
        BigDecimal plain = grams.stripTrailingZeros();
        return plain.scale() <= 0 ? JSON.numberNode(plain.longValueExact()) : JSON.numberNode(plain);
    }

    private static JsonNode number(OptionalDouble number) {
        return number.isPresent() ? JSON.numberNode(number.getAsDouble()) : JSON.nullNode();
    }

    private static ArrayNode array(List<ObjectNode> nodes) {
        ArrayNode array = JSON.arrayNode();
        nodes.forEach(array::add);
        return array;
    }
}
