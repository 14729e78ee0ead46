package ribmark.weighing;

import java.time.ZoneId;
import java.util.List;
import ribmark.basics.Words;
import ribmark.carcase.Carcase;
import ribmark.cuttingtests.CuttingTest;
import ribmark.cuttingtests.OwnTables.Judging;
import ribmark.weighup.Numbers;

/** A kept score ready to be read. */
public record KeptScoreView(String when, String by, String yield, String balance, String tables, List<String> cuts) {

    static KeptScoreView of(KeptScore score, ZoneId zone) {
        return new KeptScoreView(
                Words.moment(score.at(), zone),
                score.by().name(),
                score.yieldHundredths().isPresent()
                        ? Numbers.places(score.yieldHundredths().getAsLong() / 100.0, 1)
                        : "not scored",
                score.balance(),
                score.tables() + ", version " + score.version(),
                score.cuts());
    }

    /** By which tables the weigh-up page judges, and whether those of today are others. */
    static String stands(WeighedCarcases weighed, Carcase carcase) {
        Judging then = weighed.judging(carcase, false);
        Judging now = weighed.judging(carcase, true);
        String own = Words.count(then.tests(), "cutting test", "cutting tests");
        String stands = "The weigh-up is judged by the tables as they stood when its last piece was weighed: version "
                + then.version() + ", with " + (then.tests() == 0 ? "no cutting test" : own)
                + " of the college in them.";
        return then.version().equals(now.version())
                ? stands + " They are the tables of today."
                : stands + " The tables of today are version " + now.version()
                        + ". Scoring again keeps a new score beside the old; the old one stays.";
    }

    /** What is told of its cutting test. */
    static String said(CuttingTest test, ZoneId zone) {
        String when = Words.moment(test.at(), zone) + " by " + test.by().name();
        return test.counts()
                ? "Counts as a cutting test, cut by " + test.words() + "; entered " + when + "."
                : "Was a cutting test and counts no more, taken back " + when + ": “" + test.words() + "”";
    }
}
