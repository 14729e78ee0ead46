package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Source;
import ribmark.curriculum.Step;
import ribmark.scoring.CutYield;
import ribmark.scoring.Ground;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.weighing.PageLine.Fact;
import ribmark.weighing.PageLine.Kind;
import ribmark.weighup.Balances;
import ribmark.weighup.CarcaseReading;
import ribmark.weighup.Numbers;
import ribmark.weighup.PairChecked;
import ribmark.weighup.Reading;
import ribmark.weighup.Reasons;
import ribmark.weighup.ScoredCut;
import ribmark.weighup.TrimReading;
import ribmark.weighup.WeighUp;

/** Says what was reckoned in lines to read: cuts and measures by their names, figures by their sources. Nothing is reckoned here. */
final class Saying {

    private static final String NOT_SCORED = "Not scored";

    private final Curriculum curriculum;

    Saying(Curriculum curriculum) {
        this.curriculum = curriculum;
    }

    /** A cut against its table. */
    PageLine cut(ScoredCut cut, WeighUp weighUp) {
        CutYield yield = cut.yield();
        String score = cut.judged() ? " Score\u00a0" + Numbers.places(yield.score(), 0) + "." : "";
        List<Fact> facts = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        sort(Reasons.of(cut), facts, sentences);
        facts.add(1, new Fact("Carcase", carcase(weighUp)));
        yield.row().grounds().forEach(ground -> sentences.add(ground(ground)));
        sentences.add(Reasons.standing(weighUp));
        return new PageLine(
                Kind.YIELD,
                step(yield.row().cut()),
                cut.verdict().map(v -> Words.capital(v.word())).orElse(NOT_SCORED),
                name(yield.row(), cut.side()),
                Balances.net(cut.readings()).toString(),
                Numbers.places(yield.percent(), 1) + "\u00a0% of the carcase. Expected "
                        + Numbers.places(yield.expected(), 1) + "\u00a0%." + score,
                "How we know",
                facts,
                sentences);
    }

    /** A piece that is balanced and not scored, and why. */
    PageLine balancedOnly(Reading reading, WeighUp weighUp, Optional<Piece> piece, String name) {
        double percent = weighUp.percentOf(reading);
        Optional<Row> row = weighUp.row(reading.cut());
        String why = whyOnlyBalanced(reading, row);
        List<Fact> facts = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        sort(List.of(Reasons.read(reading)), facts, sentences);
        facts.add(new Fact("Carcase", carcase(weighUp)));
        facts.add(new Fact("Share", Numbers.places(percent, 3) + "\u00a0% of the carcase"));
        sentences.add("It counts in the balance of what it came out of.");
        return new PageLine(
                Kind.YIELD,
                piece.map(p -> step(p.cut().id())).orElse(""),
                NOT_SCORED,
                name,
                reading.net().toString(),
                Numbers.places(percent, 1) + "\u00a0% of the carcase. " + why + ". Balanced only.",
                "How we know",
                facts,
                sentences);
    }

    private static String whyOnlyBalanced(Reading reading, Optional<Row> row) {
        if (row.isEmpty()) {
            return "No table chosen here judges it";
        }
        return reading.moment().isEmpty()
                ? "Another weight of this cut was taken at another moment"
                : "Weighed " + reading.moment() + "; the table expects it "
                        + row.get().moment();
    }

    /** Left against right of a pair. */
    PageLine pair(PairChecked pair) {
        List<Fact> facts = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        sort(Reasons.of(pair), facts, sentences);
        pair.tolerances().grounds().forEach(ground -> sentences.add(ground(ground)));
        return new PageLine(
                Kind.YIELD,
                step(pair.row().cut()),
                Words.capital(pair.difference().verdict().word()),
                pair.row().name() + ", left against right",
                Words.capital(pair.apart()),
                "Tolerance: " + pair.limit() + ".",
                "How we know",
                facts,
                sentences);
    }

    /** A trim measure against its limits. */
    PageLine trim(TrimReading trim) {
        var conformity = trim.conformity();
        var measure = trim.measure();
        String word = Words.capital(conformity.verdict().word());
        List<Fact> facts = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        sort(Reasons.of(conformity), facts, sentences);
        if (!measure.text().isEmpty()) {
            sentences.add(0, measure.text());
        }
        measure.grounds().forEach(ground -> sentences.add(ground(ground)));
        return new PageLine(
                Kind.TRIM,
                measure.step(),
                word,
                measure.name() + sided(trim.side()),
                trim.value().toPlainString() + (measure.unit().equals("mm") ? "\u00a0mm" : ""),
                "Limit: " + Reasons.limits(measure) + ". Score\u00a0" + Numbers.places(conformity.score(), 0) + ". "
                        + Words.capital(Reasons.byHowMuch(conformity)) + "; whose limit: " + measure.whose() + ".",
                conformity.verdict() == ribmark.scoring.Verdict.TOO_CLOSE_TO_CALL ? "Why too close" : "How we know",
                facts,
                sentences);
    }

    /** What is read off the reasons as a pair, and what is a sentence; grounds are said with their sources instead. */
    static void sort(List<String> reasons, List<Fact> facts, List<String> sentences) {
        for (String reason : reasons) {
            int colon = reason.indexOf(": ");
            if (reason.startsWith("Rule") || reason.startsWith("Basis")) {
                sentences.add(reason.endsWith(".") ? reason : reason + ".");
            } else if (!reason.startsWith("–") && colon > 0) {
                facts.add(new Fact(reason.substring(0, colon), reason.substring(colon + 2)));
            }
        }
    }

    private String ground(Ground ground) {
        String source = curriculum.source(ground.source()).map(Source::title).orElse(ground.source());
        return ground.fact() + " (" + ground.basis().word() + ": " + source + ").";
    }

    private static String carcase(WeighUp weighUp) {
        CarcaseReading carcase = weighUp.carcase();
        return carcase.weight().kilograms() + " ± "
                + Numbers.kilograms(2 * Math.sqrt(carcase.scale().varianceG2())) + "\u00a0kg "
                + (carcase.hot() ? "hot" : "cold") + ", kidneys " + (carcase.kidneysIn() ? "in" : "out");
    }

    private String name(Row row, Side side) {
        return side == Side.BOTH ? row.name() : row.name() + sided(side);
    }

    /** The name of what a balance misses, as ids: {@code chumps left}. */
    String missing(String ids, WeighUp weighUp) {
        int space = ids.lastIndexOf(' ');
        String id = space > 0 ? ids.substring(0, space) : ids;
        String side = space > 0 ? ", " + ids.substring(space + 1) : "";
        return Words.inside(name(id, weighUp) + side);
    }

    /** A row or a cut by its name. */
    String name(String id, WeighUp weighUp) {
        return weighUp.row(id)
                .map(Row::name)
                .or(() -> curriculum.cut(id).map(Cut::name))
                .orElse(id);
    }

    /** A side after a name; nothing for what has none. */
    static String sided(Side side) {
        return side == Side.ONCE || side == Side.BOTH ? "" : ", " + side.word();
    }

    /** The step that frees the cuts of a row, or a cut. */
    private String step(String id) {
        return curriculum.cuts().stream()
                .filter(cut -> cut.id().equals(id) || cut.rows().contains(id))
                .findFirst()
                .flatMap(cut -> curriculum.stepThatFrees(cut.id()))
                .map(Step::id)
                .orElse("");
    }
}
