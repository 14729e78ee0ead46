package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.between;
import static ribmark.testing.Property.holds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.testing.Tables;

/** What holds for reference tables under every carcase, for what cutting tests teach them, and for what a breakdown cost. */
class TablePropertiesTest {

    private static ReferenceTable table(Random random) {
        return List.of(Tables.wholesale(), Tables.primals(), Tables.joints()).get(random.nextInt(3));
    }

    private static Conditions conditions(Random random, boolean kidneysIn) {
        Optional<String> fat =
                Optional.of(List.of("1", "2", "3", "3L", "3H", "4L", "5").get(random.nextInt(7)));
        Vertebrae vertebrae =
                new Vertebrae(Map.of(Region.THORACIC, random.nextInt(7) - 3, Region.LUMBAR, random.nextInt(5) - 2));
        return new Conditions(between(random, 8, 40), kidneysIn, fat.filter(f -> random.nextBoolean()), vertebrae);
    }

    private static double sum(ReferenceTable table) {
        return table.rows().stream().mapToDouble(Row::expected).sum();
    }

    @Test
    void whatever_ribs_were_counted_the_table_still_adds_up_and_expects_something_of_every_cut() {
        holds(random -> {
            ReferenceTable table = table(random);
            ReferenceTable moved = table.under(conditions(random, true));
            assertThat(sum(moved)).isCloseTo(sum(table), within(1e-9));
            assertThat(moved.rows()).allMatch(row -> row.expected() > 0);
        });
    }

    /** The tables divide by 0.963, which is the same to one in two thousand as leaving out 0.5 and 3.2 of a hundred. */
    @Test
    void without_kidneys_what_is_left_adds_up_again_to_the_whole() {
        holds(random -> {
            ReferenceTable table = random.nextBoolean() ? Tables.primals() : Tables.joints();
            ReferenceTable out = table.under(conditions(random, false));
            assertThat(out.row("kidneys")).isEmpty();
            assertThat(sum(out)).isCloseTo(100, within(0.05));
        });
    }

    @Test
    void no_carcase_makes_a_spread_narrower_than_the_file_says() {
        holds(random -> {
            ReferenceTable table = table(random);
            ReferenceTable under = table.under(conditions(random, true));
            for (Row row : under.rows()) {
                assertThat(row.sd())
                        .isGreaterThanOrEqualTo(
                                table.row(row.cut()).orElseThrow().sd());
            }
        });
    }

    @Test
    void tables_made_ready_once_say_what_a_table_made_for_the_carcase_says() {
        Yardstick ready = Yardstick.of(List.of(Tables.primals(), Tables.joints()));
        holds(random -> {
            Conditions conditions = conditions(random, random.nextBoolean());
            Yardstick under = ready.under(conditions);
            Tables.primals()
                    .under(conditions)
                    .rows()
                    .forEach(row -> assertThat(under.row(row.cut())).contains(row));
        });
    }

    private static List<Double> shares(Random random) {
        List<Double> shares = new ArrayList<>();
        for (int n = 1 + random.nextInt(30); n > 0; n--) {
            shares.add(between(random, 20, 50));
        }
        return shares;
    }

    private static Learned learned(double expected, double sd, double worth, List<Double> shares) {
        Learned learned = Learned.borrowed(expected, sd, worth);
        for (double share : shares) {
            learned = learned.with(share);
        }
        return learned;
    }

    /** The closed form for all tests at once (Gelman and others, Bayesian Data Analysis, section 3.3; from memory). */
    @Test
    void one_test_after_the_other_teaches_what_all_at_once_would() {
        holds(random -> {
            double expected = between(random, 25, 45);
            double sd = between(random, 0.2, 3);
            double worth = between(random, 0.5, 20);
            List<Double> shares = shares(random);
            int n = shares.size();
            double mean = shares.stream().mapToDouble(s -> s).average().orElseThrow();
            double squares =
                    shares.stream().mapToDouble(s -> (s - mean) * (s - mean)).sum();
            double off = mean - expected;
            Learned learned = learned(expected, sd, worth, shares);
            assertThat(learned.mean()).isCloseTo((worth * expected + n * mean) / (worth + n), within(1e-9));
            assertThat(learned.shape()).isCloseTo((worth + n) / 2, within(1e-9));
            assertThat(learned.scale())
                    .isCloseTo(
                            worth * sd * sd / 2 + squares / 2 + worth * n * off * off / (2 * (worth + n)),
                            within(1e-6));
        });
    }

    @Test
    void the_order_of_cutting_tests_does_not_matter() {
        holds(random -> {
            List<Double> shares = shares(random);
            Learned one = learned(36, 1.5, 5, shares);
            Collections.shuffle(shares, random);
            Learned other = learned(36, 1.5, 5, shares);
            assertThat(other.mean()).isCloseTo(one.mean(), within(1e-9));
            assertThat(other.spread()).isCloseTo(one.spread(), within(1e-9));
        });
    }

    @Test
    void what_was_learnt_lies_between_the_table_and_the_tests() {
        holds(random -> {
            List<Double> shares = shares(random);
            double mean = shares.stream().mapToDouble(s -> s).average().orElseThrow();
            double learned = learned(36, 1.5, between(random, 0.5, 20), shares).mean();
            assertThat(learned).isBetween(Math.min(36, mean) - 1e-9, Math.max(36, mean) + 1e-9);
        });
    }

    @Test
    void tests_that_come_out_just_as_expected_leave_the_mean_and_make_the_spread_smaller() {
        holds(random -> {
            double expected = between(random, 1, 45);
            List<Double> same = Collections.nCopies(1 + random.nextInt(30), expected);
            Learned learned = learned(expected, 1.5, 5, same);
            assertThat(learned.mean()).isCloseTo(expected, within(1e-9));
            assertThat(learned.spread()).isLessThan(1.5);
            assertThat(Tables.primals().cutting().borrowedPercent(same.size())).isBetween(0.0, 100.0);
        });
    }

    @Test
    void a_table_that_learnt_from_whole_carcases_still_adds_up_to_a_hundred() {
        holds(random -> {
            ReferenceTable table = random.nextBoolean() ? Tables.primals() : Tables.joints();
            Conditions lamb = new Conditions(20, true, Optional.of("3L"));
            List<Map<String, Double>> tests = new ArrayList<>();
            for (int n = 1 + random.nextInt(8); n > 0; n--) {
                Map<String, Double> percents = new HashMap<>();
                table.rows().forEach(row -> percents.put(row.cut(), row.expected() * between(random, 0.8, 1.2)));
                tests.add(OwnTable.shares(table, lamb, percents));
            }
            assertThat(sum(new OwnTable(table, Tables.MEDIUM, tests).table())).isCloseTo(100, within(1e-9));
        });
    }

    private static BigDecimal decimal(Random random, int most, int places) {
        return BigDecimal.valueOf(random.nextInt(most), places);
    }

    private static Cost cost(Random random) {
        List<Cost.Part> parts = new ArrayList<>();
        for (int n = 1 + random.nextInt(15); n > 0; n--) {
            parts.add(new Cost.Part(
                    "c", "C", decimal(random, 9_000, 0), decimal(random, 9_000_000, 3), decimal(random, 5_000, 2)));
        }
        return new Cost("x", parts);
    }

    @Test
    void what_the_cuts_were_worth_adds_up_exactly_rounded_or_not() {
        holds(random -> {
            Cost cost = cost(random);
            int places = random.nextInt(4);
            List<BigDecimal> rounded = cost.rounded(places);
            assertThat(rounded.stream().reduce(BigDecimal.ZERO, BigDecimal::add))
                    .isEqualByComparingTo(cost.total(places));
            for (int at = 0; at < rounded.size(); at++) {
                BigDecimal off = rounded.get(at).subtract(cost.parts().get(at).value());
                assertThat(off.abs()).isLessThan(BigDecimal.ONE.movePointLeft(places));
            }
        });
    }

    @Test
    void the_order_of_the_cuts_does_not_change_what_they_were_worth_and_double_prices_double_it() {
        holds(random -> {
            Cost cost = cost(random);
            List<Cost.Part> parts = new ArrayList<>(cost.parts());
            Collections.shuffle(parts, random);
            assertThat(new Cost("x", parts).total()).isEqualByComparingTo(cost.total());
            List<Cost.Part> dear = parts.stream()
                    .map(p -> new Cost.Part(
                            p.cut(),
                            p.name(),
                            p.grams(),
                            p.expectedG(),
                            p.perKg().add(p.perKg())))
                    .toList();
            assertThat(new Cost("x", dear).total())
                    .isEqualByComparingTo(cost.total().add(cost.total()));
        });
    }

    @Test
    void a_breakdown_just_as_expected_cost_nothing() {
        holds(random -> {
            List<Cost.Part> same = cost(random).parts().stream()
                    .map(p -> new Cost.Part(p.cut(), p.name(), p.expectedG(), p.expectedG(), p.perKg()))
                    .toList();
            assertThat(new Cost("x", same).total()).isEqualByComparingTo(BigDecimal.ZERO);
            assertThat(new Cost("x", same).rounded(2)).allMatch(each -> each.signum() == 0);
        });
    }
}
