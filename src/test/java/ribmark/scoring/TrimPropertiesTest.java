package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.between;
import static ribmark.testing.Property.holds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.scoring.CutYield.Mass;
import ribmark.testing.Tables;

/** What holds for everything measured against limits: trim, and left against right. */
class TrimPropertiesTest {

    private static TrimMeasure measure(String unit, OptionalDouble lowest, OptionalDouble highest, double doubt) {
        return new TrimMeasure(
                "m", "s", "M", unit, 1, lowest, highest, 1, "ours", "", doubt, Optional.of(Region.THORACIC), List.of());
    }

    private static TrimMeasure atMost(double highest) {
        return measure("mm", OptionalDouble.empty(), OptionalDouble.of(highest), 0);
    }

    private static TrimMeasure fromTo(double lowest, double highest) {
        return measure("mm", OptionalDouble.of(lowest), OptionalDouble.of(highest), 0);
    }

    private static double probability(TrimMeasure measure, double value, double division) {
        return new TrimConformity(measure, value, division).probability();
    }

    @Test
    void the_more_there_is_the_less_likely_it_keeps_an_upper_limit() {
        holds(random -> {
            TrimMeasure measure = atMost(between(random, 1, 20));
            double value = between(random, 0, 25);
            double division = between(random, 0.1, 5);
            double here = probability(measure, value, division);
            assertThat(here).isBetween(0.0, 1.0);
            assertThat(probability(measure, value + random.nextDouble(), division))
                    .isLessThanOrEqualTo(here + 1e-12);
        });
    }

    @Test
    void as_far_from_the_middle_on_either_side_is_as_likely_within() {
        holds(random -> {
            double middle = between(random, 5, 20);
            double half = between(random, 0, 5);
            double off = between(random, 0, 10);
            TrimMeasure measure = fromTo(middle - half, middle + half);
            double division = between(random, 0.1, 5);
            assertThat(probability(measure, middle - off, division))
                    .isCloseTo(probability(measure, middle + off, division), within(1e-9));
        });
    }

    @Test
    void a_finer_rule_never_makes_what_lies_within_less_certain() {
        holds(random -> {
            double lowest = between(random, 0, 10);
            double width = between(random, 0, 10);
            double value = lowest + width * random.nextDouble();
            double coarse = between(random, 0.1, 5);
            TrimMeasure measure = fromTo(lowest, lowest + width);
            assertThat(probability(measure, value, coarse * random.nextDouble()))
                    .isGreaterThanOrEqualTo(probability(measure, value, coarse) - 1e-12);
        });
    }

    @Test
    void a_coarser_rule_never_turns_too_close_to_call_into_a_verdict() {
        holds(random -> {
            TrimMeasure measure = atMost(between(random, 1, 20));
            double value = measure.highest().getAsDouble() + random.nextGaussian();
            double division = between(random, 0.1, 5);
            if (new TrimConformity(measure, value, division).verdict() == Verdict.TOO_CLOSE_TO_CALL) {
                assertThat(new TrimConformity(measure, value, division + 3 * random.nextDouble()).verdict())
                        .isEqualTo(Verdict.TOO_CLOSE_TO_CALL);
            }
        });
    }

    @Test
    void a_count_is_certainly_within_or_certainly_not() {
        holds(random -> {
            int lowest = random.nextInt(12);
            int highest = lowest + random.nextInt(4);
            int value = random.nextInt(16);
            TrimMeasure ribs = measure("count", OptionalDouble.of(lowest), OptionalDouble.of(highest), 0);
            TrimConformity counted = new TrimConformity(ribs, value, 1);
            boolean kept = lowest <= value && value <= highest;
            assertThat(counted.probability()).isEqualTo(kept ? 1 : 0);
            assertThat(counted.verdict()).isEqualTo(kept ? Verdict.WITHIN : Verdict.OUTSIDE);
        });
    }

    @Test
    void what_lies_beyond_its_limit_is_the_less_likely_within_it() {
        holds(random -> {
            TrimConformity read =
                    new TrimConformity(atMost(between(random, 1, 20)), between(random, 0, 25), between(random, 0.1, 5));
            assertThat(read.beyond() > 1e-9).isEqualTo(read.probability() < 0.5 - 1e-10);
        });
    }

    @Test
    void the_unit_of_length_does_not_matter() {
        holds(random -> {
            double lowest = between(random, 0, 10);
            double highest = lowest + between(random, 0, 10);
            double value = between(random, 0, 25);
            double division = between(random, 0.1, 5);
            double unit = between(random, 0.01, 30);
            assertThat(probability(fromTo(unit * lowest, unit * highest), unit * value, unit * division))
                    .isCloseTo(probability(fromTo(lowest, highest), value, division), within(1e-9));
        });
    }

    @Test
    void one_rib_more_counted_where_one_more_is_expected_is_judged_as_before() {
        holds(random -> {
            int more = random.nextInt(5) - 2;
            int ribs = 5 + random.nextInt(4);
            int usual = 5 + random.nextInt(4);
            TrimMeasure measure = measure("count", OptionalDouble.of(usual), OptionalDouble.of(usual), 0);
            TrimMeasure moved = measure.on(new Vertebrae(Map.of(Region.THORACIC, more)));
            assertThat(probability(moved, ribs + more, 1)).isEqualTo(probability(measure, ribs, 1));
        });
    }

    @Test
    void the_trim_score_lies_among_its_scores_and_their_order_does_not_matter() {
        holds(random -> {
            List<TrimConformity> read = new ArrayList<>();
            for (int n = 1 + random.nextInt(9); n > 0; n--) {
                read.add(new TrimConformity(atMost(5), between(random, 0, 10), 1));
            }
            double score = new TrimScore(read).score().orElseThrow();
            assertThat(score)
                    .isBetween(
                            read.stream()
                                            .mapToDouble(TrimConformity::score)
                                            .min()
                                            .orElseThrow()
                                    - 1e-9,
                            read.stream()
                                            .mapToDouble(TrimConformity::score)
                                            .max()
                                            .orElseThrow()
                                    + 1e-9);
            Collections.shuffle(read, random);
            assertThat(new TrimScore(read).score().orElseThrow()).isCloseTo(score, within(1e-9));
        });
    }

    private static Mass mass(Random random) {
        return new Mass(between(random, 500, 4_000), between(random, 1, 400));
    }

    @Test
    void left_and_right_exchanged_are_as_far_apart() {
        holds(random -> {
            Mass left = mass(random);
            Mass right = mass(random);
            PairDifference one = new PairDifference(left, right, 5);
            PairDifference other = new PairDifference(right, left, 5);
            assertThat(other.grams()).isEqualTo(-one.grams());
            assertThat(other.probability()).isCloseTo(one.probability(), within(1e-9));
            assertThat(one.percent()).isBetween(-100.0, 100.0);
        });
    }

    @Test
    void a_wider_tolerance_never_makes_a_pair_less_likely_alike() {
        holds(random -> {
            Mass left = mass(random);
            Mass right = new Mass(left.grams() * between(random, 0.9, 1.1), left.varianceG2());
            double tolerance = between(random, 0, 10);
            assertThat(new PairDifference(left, right, tolerance + random.nextDouble()).probability())
                    .isGreaterThanOrEqualTo(new PairDifference(left, right, tolerance).probability() - 1e-12);
        });
    }

    @Test
    void under_a_heavier_load_a_scale_may_never_be_less_wrong_and_the_unit_does_not_matter() {
        holds(random -> {
            double division = between(random, 0.1, 50);
            double load = division * 9_000 * random.nextDouble();
            double here = Tables.CLASS_III.inUse(load, division).orElseThrow();
            assertThat(Tables.CLASS_III
                            .inUse(load + division * 1_000 * random.nextDouble(), division)
                            .orElseThrow())
                    .isGreaterThanOrEqualTo(here);
            assertThat(1000
                            * Tables.CLASS_III
                                    .inUse(load / 1000, division / 1000)
                                    .orElseThrow())
                    .isCloseTo(here, within(1e-9));
        });
    }
}
