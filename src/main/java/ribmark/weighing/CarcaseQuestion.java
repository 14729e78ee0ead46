package ribmark.weighing;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import ribmark.basics.Weight;
import ribmark.carcase.Carcase;
import ribmark.carcase.Reweighed;
import ribmark.slips.Cause;
import ribmark.slips.Finding;
import ribmark.slips.Suspect;
import ribmark.weighup.Balances;

/** Whether the weight of the whole carcase is right: how it may have come about, how probably, and what would fit its pieces. */
record CarcaseQuestion(Carcase carcase, Cause because, double probability, Weight likely) {

    /** The question to put now, if there is one; what was kept is not asked again until the carcase was weighed again. */
    static Optional<CarcaseQuestion> open(Carcase carcase, Finding finding, Collection<SlipAnswer> answers) {
        return isKept(carcase, answers)
                ? Optional.empty()
                : suspects(finding).stream()
                        .filter(suspect -> suspect.likely().isPresent())
                        .findFirst()
                        .map(suspect -> new CarcaseQuestion(
                                carcase,
                                suspect.because(),
                                suspect.probability(),
                                suspect.likely().orElseThrow()));
    }

    /** Whether somebody said that the carcase's weight, as it now stands, is right. */
    static boolean isKept(Carcase carcase, Collection<SlipAnswer> answers) {
        long since = carcase.lastWeighed().map(Reweighed::record).orElse(0L);
        return answers.stream().anyMatch(answer -> answer.isAboutCarcase() && answer.kept() && answer.record() > since);
    }

    /** What is said against the weight of the carcase, the most probable first. */
    static List<Suspect> suspects(Finding finding) {
        return finding.suspects().stream()
                .filter(suspect -> suspect.cut().equals(Balances.CARCASE))
                .toList();
    }

    /** Whether the likely weight was only reckoned from the pieces and stood on no scale. */
    boolean isReckoned() {
        return because == Cause.SOMETHING_ELSE;
    }

    /** The same as a form sends it back, so that an answer cannot fall on another question. */
    String token() {
        return Balances.CARCASE + " " + because.words() + " "
                + carcase.ownWeight().grams() + " " + likely.grams();
    }
}
