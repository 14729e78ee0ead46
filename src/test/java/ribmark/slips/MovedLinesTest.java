package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.scoring.ReferenceTable;
import ribmark.testing.Tables;

/** Lines cut elsewhere. The worked weights were also reckoned in Python 3 with numpy 2.4.6: 0.78470, 0.19422, 0.00816, 0.00604. */
class MovedLinesTest {

    @Test
    void a_rib_too_far_to_the_head_is_the_best_fit() {
        Finding finding = Weighings.of(Tables.joints(), "20.000")
                .and("scrag", "0.760")
                .and("shoulders", "6.100")
                .and("best-ends", "2.270")
                .and("loins", "1.990")
                .and("breasts", "1.500")
                .and("chumps", "1.310")
                .and("legs-chump-off", "5.290")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.580")
                .find();
        assertThat(finding.suspects()).isEmpty();
        List<Explanation> all = finding.explanations().orElseThrow();
        assertThat(all)
                .extracting(e -> e.line()
                        .map(line -> line + " " + e.towards().orElseThrow() + " " + e.by())
                        .orElse("none"))
                .containsExactly("fores head 1", "none", "breasts belly 1", "fores head 2");
        double[] worked = {0.7847, 0.1942, 0.0082, 0.0060};
        for (int i = 0; i < worked.length; i++) {
            assertThat(all.get(i).probability()).isCloseTo(worked[i], within(5e-5));
        }
        assertThat(finding.saying()).contains(Say.FITS);
        Explanation fitting = finding.fitting().orElseThrow();
        assertThat(fitting.by()).isEqualTo(1);
        assertThat(fitting.probability()).isCloseTo(0.7847 + 0.0060, within(1e-4));
    }

    /** Square roots as weighing-model section on closure prints them, to its four places. */
    @Test
    void the_makings_of_a_closed_sum_keep_every_spread() {
        double[] primals = Spreads.unclosed(new double[] {1.5, 1.5, 1.2, 0.1, 0.75});
        double[] printed = {1.8991, 1.8991, 1.3285, 0.1001, 0.7746};
        double[] joints = Spreads.unclosed(new double[] {0.9, 1.3, 0.55, 1.0, 0.7, 1.0, 1.2, 0.1, 0.75});
        double[] also = {0.9503, 1.5124, 0.5601, 1.0730, 0.7218, 1.0730, 1.3479, 0.1001, 0.7773};
        for (int i = 0; i < printed.length; i++) {
            assertThat(Math.sqrt(primals[i])).isCloseTo(printed[i], within(5e-5));
        }
        for (int i = 0; i < also.length; i++) {
            assertThat(Math.sqrt(joints[i])).isCloseTo(also[i], within(5e-5));
        }
    }

    @Test
    void a_cut_may_make_up_more_than_half_of_the_spread_but_not_more_than_all_the_rest() {
        double[] sds = {1.5, 1.68, 1.2};
        double[] wholesale = Spreads.unclosed(sds);
        double total = wholesale[0] + wholesale[1] + wholesale[2];
        for (int i = 0; i < sds.length; i++) {
            assertThat(wholesale[i] - wholesale[i] * wholesale[i] / total).isCloseTo(sds[i] * sds[i], within(1e-9));
        }
        assertThat(Model.whyNotWhole(sds)).isEmpty();
        assertThat(Model.whyNotWhole(new double[] {3, 1, 1})).isPresent();
    }

    @Test
    void a_table_shows_what_its_cuts_can_show() {
        assertThat(ways(Tables.primals(), false)).hasSize(7);
        assertThat(ways(Tables.wholesale(), false)).hasSize(7);
        assertThat(ways(Tables.joints(), false)).hasSize(15);
        assertThat(ways(Tables.joints(), true)).hasSize(55);
        assertThat(ways(Tables.primals(), true)).hasSize(19);
        for (boolean sided : List.of(true, false)) {
            assertThat(ways(Tables.joints(), sided).stream()
                            .mapToDouble(Departure::prior)
                            .sum())
                    .isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void a_side_that_ran_off_is_named() {
        Weighings weighings = Weighings.of(Tables.joints(), "20.000")
                .and("scrag", "0.755")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.635");
        double[] halves = {3.230, 0.995, 0.995, 0.685, 0.655, 2.635};
        String[] cuts = {"shoulders", "best-ends", "loins", "breasts", "chumps", "legs-chump-off"};
        for (int i = 0; i < cuts.length; i++) {
            double moved = i == 0 ? -0.395 : i == 1 ? 0.275 : i == 3 ? 0.120 : 0;
            weighings.and(cuts[i], Side.LEFT, kilograms(halves[i] + moved));
            weighings.and(cuts[i], Side.RIGHT, kilograms(halves[i]));
        }
        Explanation first = weighings.find().fitting().orElseThrow();
        assertThat(first.line()).contains("fores");
        assertThat(first.towards()).contains("head");
        assertThat(first.by()).isEqualTo(2);
        assertThat(first.side()).contains(Side.LEFT);
    }

    private static String kilograms(double number) {
        return String.format(java.util.Locale.ROOT, "%.3f", number);
    }

    private static List<Departure> ways(ReferenceTable table, boolean sided) {
        Weighings weighings = Weighings.of(table, "20.000");
        table.rows().forEach(row -> {
            String half = kilograms(row.expected() / 10);
            if (sided && row.pair()) {
                weighings.and(row.cut(), Side.LEFT, half).and(row.cut(), Side.RIGHT, half);
            } else {
                weighings.and(row.cut(), kilograms(row.expected() / 5));
            }
        });
        return weighings.block().departures();
    }
}
