package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.between;
import static ribmark.testing.Property.holds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.ReferenceTable.Row;

/** What holds for every cut whatever it weighed and whatever its table expects of it. */
class YieldPropertiesTest {

    private static Row row(Random random) {
        return new Row(
                "cut",
                "Cut",
                true,
                between(random, 0, 0.1),
                "",
                between(random, 0.1, 60),
                between(random, 0.05, 4),
                List.of(),
                List.of());
    }

    /** Not near a limit of a class, so that the last binary digit cannot decide. */
    private static double off(Random random, Row row) {
        return row.sd() * 5 * random.nextDouble();
    }

    @Test
    void as_much_too_light_as_too_heavy_is_judged_alike() {
        holds(random -> {
            Row row = row(random);
            double off = off(random, row);
            double doubt = random.nextDouble();
            CutYield heavy = new CutYield(row, row.expected() + off, doubt);
            CutYield light = new CutYield(row, row.expected() - off, doubt);
            assertThat(light.zeta()).isCloseTo(-heavy.zeta(), within(1e-9));
            assertThat(light.score()).isCloseTo(heavy.score(), within(1e-7));
            assertThat(light.verdict()).isEqualTo(heavy.verdict());
        });
    }

    @Test
    void further_from_what_is_expected_never_scores_more() {
        holds(random -> {
            Row row = row(random);
            double doubt = random.nextDouble();
            double near = off(random, row);
            CutYield nearer = new CutYield(row, row.expected() + near, doubt);
            CutYield further = new CutYield(row, row.expected() + near + off(random, row), doubt);
            assertThat(further.score()).isLessThanOrEqualTo(nearer.score()).isBetween(0.0, 100.0);
            assertThat(further.zeta()).isGreaterThanOrEqualTo(nearer.zeta());
        });
    }

    /** From the formula: fifty points a spread, and nowhere steeper. */
    @Test
    void a_little_more_weight_changes_the_score_only_a_little() {
        holds(random -> {
            Row row = row(random);
            double percent = row.expected() + 2 * off(random, row) - 5 * row.sd();
            double step = row.sd() * 0.01 * random.nextDouble();
            double one = new CutYield(row, percent, 0).score();
            double other = new CutYield(row, percent + step, 0).score();
            assertThat(Math.abs(one - other)).isLessThanOrEqualTo(50 * step / row.sd() + 1e-7);
        });
    }

    @Test
    void more_doubt_never_turns_a_doubt_into_a_verdict_nor_a_small_zeta_into_a_large_one() {
        holds(random -> {
            Row row = row(random);
            double percent = row.expected() + off(random, row);
            double doubt = random.nextDouble();
            CutYield fine = new CutYield(row, percent, doubt);
            CutYield coarse = new CutYield(row, percent, doubt + random.nextDouble());
            assertThat(Math.abs(coarse.zeta())).isLessThanOrEqualTo(Math.abs(fine.zeta()));
            if (fine.verdict() == Verdict.TOO_CLOSE_TO_CALL) {
                assertThat(coarse.verdict()).isEqualTo(Verdict.TOO_CLOSE_TO_CALL);
            }
        });
    }

    @Test
    void the_unit_of_mass_does_not_matter() {
        holds(random -> {
            Row row = row(random);
            double carcase = between(random, 14_000, 26_000);
            double cut = carcase * (row.expected() + off(random, row)) / 100;
            double variance = between(random, 0, 400);
            double unit = between(random, 1e-3, 10);
            CutYield one = CutYield.of(row, new Mass(cut, variance), new Mass(carcase, 2 * variance));
            CutYield other = CutYield.of(
                    row,
                    new Mass(unit * cut, unit * unit * variance),
                    new Mass(unit * carcase, 2 * unit * unit * variance));
            assertThat(other.percent()).isCloseTo(one.percent(), within(1e-9));
            assertThat(other.standardUncertainty()).isCloseTo(one.standardUncertainty(), within(1e-9));
            assertThat(other.zeta()).isCloseTo(one.zeta(), within(1e-7));
        });
    }

    @Test
    void two_sides_expect_what_the_pair_expects_and_one_alone_is_never_surer() {
        holds(random -> {
            Row row = row(random);
            Row side = row.oneSide();
            assertThat(2 * side.expected()).isCloseTo(row.expected(), within(1e-12));
            assertThat(side.sd() / side.expected()).isGreaterThanOrEqualTo(row.sd() / row.expected() - 1e-12);
        });
    }

    @Test
    void the_yield_score_lies_among_the_scores_and_their_order_does_not_matter() {
        holds(random -> {
            List<CutYield> cuts = new ArrayList<>();
            for (int n = 1 + random.nextInt(9); n > 0; n--) {
                Row row = row(random);
                cuts.add(new CutYield(row, row.expected() + off(random, row), 0.1));
            }
            double mean = mean(cuts);
            double lowest = cuts.stream().mapToDouble(CutYield::score).min().orElseThrow();
            double highest = cuts.stream().mapToDouble(CutYield::score).max().orElseThrow();
            assertThat(mean).isBetween(lowest - 1e-9, highest + 1e-9);
            Collections.shuffle(cuts, random);
            assertThat(mean(cuts)).isCloseTo(mean, within(1e-12));
        });
    }

    private static double mean(List<CutYield> cuts) {
        YieldScore score = new YieldScore();
        cuts.forEach(score::add);
        return score.mean().orElseThrow();
    }

    @Test
    void the_class_of_a_zeta_knows_no_sign_and_never_softens_further_out() {
        holds(random -> {
            double zeta = 5 * random.nextDouble();
            Verdict here = Verdict.ofZeta(zeta);
            assertThat(Verdict.ofZeta(-zeta)).isEqualTo(here).isNotEqualTo(Verdict.TOO_CLOSE_TO_CALL);
            assertThat(Verdict.ofZeta(zeta + random.nextDouble())).isGreaterThanOrEqualTo(here);
        });
    }
}
