package ribmark.slips;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.Scale;
import ribmark.testing.Tables;

/** A thousand slips and a thousand sound weigh-ups of each kind with {@code -Ddrills}, a few of them otherwise. */
class SlipDrillTest {

    private static final long SEED = 20_261_125;

    private static final List<Cause> CAUSES =
            Arrays.stream(Cause.values()).filter(c -> c != Cause.SOMETHING_ELSE).toList();

    static Lambs lambs(String table, boolean sided, double division) {
        ReferenceTable rows = Tables.lamb().table(table).orElseThrow();
        return new Lambs(SEED, rows, sided, new Scale("", "", division, 0.4 * division));
    }

    /** What became of some slips: how many were noticed, placed, and understood. */
    record Tally(int of, int noticed, int placed, int understood) {

        static Tally of(Lambs lambs, Model model, Cause cause, int slips) {
            int noticed = 0;
            int placed = 0;
            int understood = 0;
            for (int i = 0; i < slips; i++) {
                Slipped slipped = Slipped.material(lambs, cause);
                Finding finding = slipped.typed().find(model);
                noticed += slipped.isNoticed(finding) ? 1 : 0;
                placed += slipped.rightEntryFirst(finding) ? 1 : 0;
                understood += slipped.rightCauseAndValueFirst(finding) ? 1 : 0;
            }
            System.out.printf(
                    "drill: %s: %d slips, %d noticed, %d placed, %d understood%n",
                    cause.words(), slips, noticed, placed, understood);
            return new Tally(slips, noticed, placed, understood);
        }

        Tally plus(Tally other) {
            return new Tally(
                    of + other.of, noticed + other.noticed, placed + other.placed, understood + other.understood);
        }
    }

    @ParameterizedTest
    @CsvSource({"uk-primals, false, 5", "uk-joints, false, 10", "uk-joints, true, 5"})
    void slips_that_matter_are_noticed_placed_and_understood(String table, boolean sided, double division) {
        Lambs lambs = lambs(table, sided, division);
        Tally all = new Tally(0, 0, 0, 0);
        for (Cause cause : CAUSES) {
            Tally tally = Tally.of(lambs, Weighings.MODEL, cause, Drill.lambs(40, 1_000));
            if (cause == Cause.PIECES_EXCHANGED) {
                Drill.atLeast("exchanged pieces noticed", 82, tally.noticed(), tally.of());
            }
            all = all.plus(tally);
        }
        Drill.atLeast("slips noticed", 97, all.noticed(), all.of());
        Drill.atLeast("right entry first", 96, all.placed(), all.of());
        Drill.atLeast("right cause and weight first", 92, all.understood(), all.of());
    }

    @ParameterizedTest
    @CsvSource({"uk-primals, false, 5", "uk-joints, false, 10", "uk-joints, true, 20"})
    void sound_weigh_ups_are_left_alone_well_cut_or_not(String table, boolean sided, double division) {
        Lambs lambs = lambs(table, sided, division);
        int of = Drill.lambs(150, 1_000);
        Drill.atMost("suspects on a clean weigh-up", 0.5, suspected(lambs, Weighings.MODEL, false, of), of);
        Drill.atMost("suspects on a miscut one", 1, suspected(lambs, Weighings.MODEL, true, of), of);
    }

    static int suspected(Lambs lambs, Model model, boolean miscut, int of) {
        int suspected = 0;
        for (int i = 0; i < of; i++) {
            Lambs.Lamb lamb = miscut ? Miscut.any(lambs).lamb() : lambs.clean();
            suspected += lamb.find(model).suspects().isEmpty() ? 0 : 1;
        }
        return suspected;
    }
}
