package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ribmark.basics.Words;
import ribmark.carcase.Carcase;
import ribmark.slips.Explanation;
import ribmark.slips.Finding;
import ribmark.slips.Model;
import ribmark.slips.Suspect;
import ribmark.weighing.PageLine.Fact;
import ribmark.weighing.PageLine.Kind;
import ribmark.weighup.Balances;
import ribmark.weighup.Count;
import ribmark.weighup.FindingText;

/** What the weights would fit, in lines to read and never as a finding; what was counted speaks before them. */
final class FindingLines {

    private static final String COUNTED = "Counted";
    private static final String OPENER = "What these numbers are worth";

    private final Model model;
    private final FindingText text;

    FindingLines(Model model) {
        this.model = model;
        this.text = new FindingText(model);
    }

    /** The lines of a carcase; none while an entry is in doubt or has no weight yet. */
    static List<PageLine> of(Reckoning reckoning, Carcase carcase, Optional<Model> model, Optional<Finding> finding) {
        return model.flatMap(m -> finding.map(f -> new FindingLines(m).lines(reckoning, carcase, f)))
                .orElse(List.of());
    }

    private List<PageLine> lines(Reckoning reckoning, Carcase carcase, Finding finding) {
        List<PageLine> lines = new ArrayList<>();
        finding.suspects().stream()
                .filter(suspect -> suspect.cut().equals(Balances.CARCASE))
                .findFirst()
                .ifPresent(suspect -> lines.add(carcaseInDoubt(carcase, suspect)));
        finding.saying().ifPresent(say -> {
            lines.addAll(counted(reckoning, carcase));
            lines.add(saying(finding));
        });
        return lines;
    }

    private PageLine carcaseInDoubt(Carcase carcase, Suspect suspect) {
        String likely = suspect.likely().map(kg -> "Perhaps " + kg + ": ").orElse("Perhaps ");
        return new PageLine(
                Kind.YIELD,
                "",
                "Look again",
                carcase.title() + " whole",
                carcase.ownWeight().toString(),
                likely + suspect.because().words() + ". The pieces would fit it better.",
                OPENER,
                List.of(new Fact("Probability", SlipWords.inAHundred(suspect.probability()))),
                List.of(model.text()));
    }

    private static List<PageLine> counted(Reckoning reckoning, Carcase carcase) {
        List<PageLine> lines = new ArrayList<>();
        region(lines, "Thoracic vertebrae of " + carcase.name(), carcase.thoracic());
        region(lines, "Lumbar vertebrae of " + carcase.name(), carcase.lumbar());
        Count.ribs(reckoning.weighUp()).forEach(ribs -> lines.add(count(ribs.what(), ribs.number())));
        return lines;
    }

    private static void region(List<PageLine> lines, String what, OptionalInt number) {
        number.ifPresent(n -> lines.add(count(what, Integer.toString(n))));
    }

    private static PageLine count(String what, String number) {
        return new PageLine(
                Kind.YIELD,
                "",
                COUNTED,
                what,
                number,
                "A count speaks before the weights.",
                "Why it comes first",
                List.of(),
                List.of(Count.BEFORE));
    }

    private PageLine saying(Finding finding) {
        return switch (finding.saying().orElseThrow()) {
            case FITS ->
                line(
                        finding,
                        "The weights would fit",
                        finding.fitting().orElseThrow(),
                        "It is no finding. Look at the cut before you believe it.");
            case NOTHING_STANDS_OUT ->
                line(finding, "Nothing stands out", nothing(finding), "The weights fit lines cut as meant.");
            case CANNOT_TELL ->
                line(
                        finding,
                        "The weights cannot tell",
                        nothing(finding),
                        "No line stands out enough to be named, and none is ruled out.");
        };
    }

    private static Explanation nothing(Finding finding) {
        return finding.explanations().orElseThrow().stream()
                .filter(explanation -> explanation.line().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private PageLine line(Finding finding, String word, Explanation named, String rest) {
        List<Fact> facts = new ArrayList<>();
        finding.explanations().orElseThrow().forEach(e -> facts.add(fact(e)));
        return new PageLine(
                Kind.YIELD,
                "",
                word,
                Words.capital(text.way(named)),
                SlipWords.inAHundred(named.probability()),
                rest,
                OPENER,
                facts,
                List.of(
                        "At most one line is taken to have moved. How probable each is follows from the provisional table: the numbers are"
                                + " right as often as that table is right, not as often as it happens to lambs.",
                        model.text()));
    }

    private Fact fact(Explanation explanation) {
        return new Fact(Words.capital(text.way(explanation)), SlipWords.inAHundred(explanation.probability()));
    }
}
