package ribmark.weighup;

import java.util.ArrayList;
import java.util.List;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.basics.Words;
import ribmark.slips.Cause;
import ribmark.slips.Explanation;
import ribmark.slips.Finding;
import ribmark.slips.Model;
import ribmark.slips.Suspect;

/** What the weights say of themselves, in lines to read: which entry to look at again, and which line they would fit, never more. */
public final class FindingText {

    private final Model model;

    /** Takes the names of the lines from this model. */
    public FindingText(Model model) {
        this.model = model;
    }

    /** One line a suspect, then what may be said of the lines. */
    public List<String> lines(Finding finding) {
        List<String> lines = new ArrayList<>();
        finding.suspects().forEach(suspect -> lines.add(line(suspect)));
        finding.saying().ifPresent(say -> lines.add(saying(finding)));
        return lines;
    }

    /** {@code Look again at middle: perhaps 5.420 kg, digits swapped (92 in 100).} */
    public String line(Suspect suspect) {
        String entry =
                suspect.cut() + suspect.side().map(side -> " " + side.word()).orElse("");
        if (suspect.because() == Cause.PIECE_MISSING) {
            return "Not weighed yet: " + entry
                    + suspect.likely()
                            .map(kg -> ". The others leave about " + kg)
                            .orElse("") + ".";
        }
        return "Look again at " + entry + ": "
                + suspect.likely()
                        .map(Weight::toString)
                        .map(kg -> "perhaps " + kg + ", ")
                        .orElse("perhaps ")
                + suspect.because().words() + " (" + inAHundred(suspect.probability()) + ").";
    }

    /** {@code The weights would fit: the fore line, one rib towards the head (78 in 100).} */
    public String saying(Finding finding) {
        return switch (finding.saying().orElseThrow()) {
            case NOTHING_STANDS_OUT -> "Nothing stands out: the weights fit lines cut as meant.";
            case CANNOT_TELL -> "The weights cannot tell whether a line was cut elsewhere.";
            case FITS -> "The weights would fit: " + said(finding.fitting().orElseThrow()) + ".";
        };
    }

    /** Every explanation with its probability, and what the probabilities are worth. */
    public List<String> reasons(Finding finding) {
        List<String> lines = new ArrayList<>();
        finding.explanations().ifPresent(all -> all.forEach(e -> lines.add(Words.capital(said(e)))));
        lines.add(model.text());
        return lines;
    }

    private String said(Explanation explanation) {
        return way(explanation) + " (" + inAHundred(explanation.probability()) + ")";
    }

    /** Which way a line may have gone: {@code the fore line, one rib towards the head}. */
    public String way(Explanation explanation) {
        if (explanation.line().isEmpty()) {
            return "nothing moved";
        }
        Model.Named line = model.named(explanation.line().get()).orElseThrow();
        return Words.inside(line.name()) + ", "
                + line.distances().get(explanation.by() - 1).words() + " towards the "
                + explanation.towards().orElseThrow()
                + explanation.side().map(FindingText::on).orElse("");
    }

    private static String on(Side side) {
        return " on the " + side.word();
    }

    private static String inAHundred(double probability) {
        return Numbers.places(100 * probability, 0) + " in 100";
    }
}
