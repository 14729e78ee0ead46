package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribmark.basics.Side;
import ribmark.slips.Lambs.Lamb;

/**
 * Which moved lines the weights can tell, often tell, and cannot tell; 800 lambs of each with {@code -Ddrills}, a few otherwise. The
 * three kinds were fixed beforehand by how many joint spreads a line lies from none moved: from 5.5, between, and below 2.5.
 */
class LineDrillTest {

    /** How often the truth came first, and how often a line was named, rightly or not. */
    record Tally(int of, int first, int right, int wrong) {

        Tally plus(Tally other) {
            return new Tally(of + other.of, first + other.first, right + other.right, wrong + other.wrong);
        }

        static Tally of(Finding finding, Group truth) {
            boolean first = Group.first(finding).filter(truth::equals).isPresent();
            Optional<Group> named = finding.fitting().map(Group::of);
            boolean right = named.filter(truth::equals).isPresent();
            return new Tally(1, first ? 1 : 0, right ? 1 : 0, named.isPresent() && !right ? 1 : 0);
        }
    }

    private static final Tally NOTHING = new Tally(0, 0, 0, 0);

    private static Tally tally(String table, boolean sided, String line, int by, Side side, Model model) {
        Lambs lambs = SlipDrillTest.lambs(table, sided, 5);
        Tally tally = NOTHING;
        for (int i = 0; i < Drill.lambs(30, 800); i++) {
            Miscut cut = Miscut.of(lambs, Miscut.way(lambs, line), by, side, i % 2 == 1);
            tally = tally.plus(Tally.of(cut.lamb().find(model), cut.group()));
        }
        System.out.printf("drill: %s %d %s: %s%n", line, by, side.word(), tally);
        return tally;
    }

    private static Tally tally(String table, boolean sided, String line, int by, Side side) {
        return tally(table, sided, line, by, side, Weighings.MODEL);
    }

    static Tally clear(Model model) {
        return tally("uk-joints", false, "fores", 2, Side.BOTH, model)
                .plus(tally("uk-joints", true, "fores", 2, Side.BOTH, model))
                .plus(tally("uk-joints", true, "fores", 2, Side.LEFT, model))
                .plus(tally("uk-joints", true, "chumps", 2, Side.RIGHT, model))
                .plus(tally("uk-joints", true, "fores-split", 2, Side.BOTH, model))
                .plus(tally("uk-joints", true, "middle-split", 2, Side.BOTH, model))
                .plus(tally("uk-joints", true, "legs-split", 2, Side.BOTH, model));
    }

    @Test
    void clear_ones_come_first() {
        Tally clear = clear(Weighings.MODEL);
        Drill.atLeast("clear lines first", 96, clear.first(), clear.of());
    }

    @Test
    void those_between_mostly_come_first() {
        Tally often = tally("uk-primals", false, "fores", 2, Side.BOTH)
                .plus(tally("uk-joints", false, "chumps", 2, Side.BOTH))
                .plus(tally("uk-joints", true, "middle", 1, Side.LEFT))
                .plus(tally("uk-joints", true, "breasts", 2, Side.RIGHT))
                .plus(tally("uk-joints", true, "middle-split", 1, Side.BOTH));
        Drill.atLeast("lines between first", 80, often.first(), often.of());
    }

    @Test
    void those_nobody_can_tell_are_seldom_named_wrongly() {
        Tally hidden = tally("uk-primals", false, "fores", 1, Side.BOTH)
                .plus(tally("uk-primals", false, "middle", 1, Side.BOTH))
                .plus(tally("uk-joints", false, "breasts", 1, Side.BOTH))
                .plus(tally("uk-joints", false, "chumps", 1, Side.BOTH));
        Drill.atMost("hidden lines named wrongly", 6, hidden.wrong(), hidden.of());
    }

    @ParameterizedTest
    @CsvSource({"uk-primals, false, 5", "uk-joints, false, 10", "uk-joints, true, 20"})
    void where_nothing_was_moved_nothing_stands_out(String table, boolean sided, double division) {
        Lambs lambs = SlipDrillTest.lambs(table, sided, division);
        Tally tally = NOTHING;
        for (int i = 0; i < Drill.lambs(100, 800); i++) {
            tally = tally.plus(Tally.of(lambs.clean().find(Weighings.MODEL), Group.NONE));
        }
        Drill.atLeast("nothing moved comes first", 90, tally.first(), tally.of());
        Drill.atMost("something named", 6, tally.wrong(), tally.of());
    }

    @ParameterizedTest
    @CsvSource({"uk-primals, false", "uk-joints, false", "uk-joints, true"})
    void a_probability_is_as_often_right_as_it_says(String table, boolean sided) {
        double miss = miscalibration(SlipDrillTest.lambs(table, sided, 5), Weighings.MODEL, Drill.lambs(200, 2_000));
        System.out.printf("drill: calibration off by %.1f points%n", miss);
        assertThat(miss).isLessThanOrEqualTo(Drill.FULL ? 5 : 12);
    }

    /** Over four ranges of the first group's probability, how far its mean lies from how often it was right, in points. */
    static double miscalibration(Lambs lambs, Model model, int of) {
        double[] said = new double[4];
        double[] right = new double[4];
        for (int i = 0; i < of; i++) {
            boolean moved = lambs.random().nextDouble() < 0.4;
            Miscut cut = Miscut.any(lambs);
            Lamb lamb = moved ? cut.lamb() : lambs.clean();
            Group truth = moved ? cut.group() : Group.NONE;
            Finding finding = lamb.find(model);
            Group.first(finding).ifPresent(first -> {
                double probability = Group.all(finding).get(first);
                int range = probability < 0.6 ? 0 : probability < 0.8 ? 1 : probability < 0.9 ? 2 : 3;
                said[range] += probability;
                right[range] += first.equals(truth) ? 1 : 0;
            });
        }
        double miss = 0;
        for (int range = 0; range < said.length; range++) {
            miss += Math.abs(said[range] - right[range]);
        }
        return 100 * miss / of;
    }

    @ParameterizedTest
    @CsvSource({"uk-primals, false, 20", "uk-joints, false, 5", "uk-joints, true, 10"})
    void a_second_slower_reckoning_says_the_same(String table, boolean sided, double division) {
        Lambs lambs = SlipDrillTest.lambs(table, sided, division);
        int same = 0;
        int of = 0;
        while (of < Drill.lambs(8, 300)) {
            Lamb lamb = of % 2 == 0 ? Miscut.any(lambs).lamb() : lambs.clean();
            Finding finding = lamb.find(Weighings.MODEL);
            if (finding.explanations().isPresent()) {
                of++;
                same += agree(Group.all(finding), SlowReckoning.of(lamb)) ? 1 : 0;
            }
        }
        Drill.atLeast("the second reckoning agrees to a hundredth", 98, same, of);
    }

    private static boolean agree(Map<Group, Double> ours, Map<Group, Double> slow) {
        return slow.entrySet().stream()
                .filter(group -> group.getValue() >= 0.05)
                .allMatch(group -> Math.abs(group.getValue() - ours.getOrDefault(group.getKey(), 0.0)) <= 0.01);
    }
}
