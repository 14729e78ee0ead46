package ribmark.signing;

import java.util.List;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.RestsOn;
import ribmark.curriculum.Source;

/** The evidence rule in words, whose it is, and what it rests on. */
public record RuleView(String words, List<Ground> grounds, String counts) {

    /** One claim with the way it is known and where from. */
    public record Ground(String fact, String basis, String source) {}

    private static final String COUNTS = "A sheet counts when it is closed and every side marked on it is unaided."
            + " On a step done on both sides, the sheets that count must show both. Prompted neither counts nor starts afresh;"
            + " not yet and stopped start afresh. Order comes from the evidence log.";

    static RuleView of(Curriculum curriculum) {
        return new RuleView(
                curriculum.rule().sentence(),
                curriculum.ruleRestsOn().stream()
                        .map(rests -> ground(curriculum, rests))
                        .toList(),
                COUNTS);
    }

    private static Ground ground(Curriculum curriculum, RestsOn rests) {
        String source = curriculum.source(rests.source()).map(RuleView::name).orElse(rests.source());
        return new Ground(rests.fact(), rests.basis(), source);
    }

    private static String name(Source source) {
        String publisher =
                source.publisher().filter(p -> !p.isEmpty()).map(p -> ", " + p).orElse("");
        String year = source.year()
                .filter(y -> !y.isEmpty() && !y.equals("undated"))
                .map(y -> ", " + y)
                .orElse("");
        return source.title() + publisher + year;
    }
}
