package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.between;
import static ribmark.testing.Property.holds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.testing.Tables;

/** What holds in the reckoning of slips and moved lines, whatever was weighed. */
class ReckoningPropertiesTest {

    private static ReferenceTable table(Random random) {
        return List.of(Tables.wholesale(), Tables.primals(), Tables.joints()).get(random.nextInt(3));
    }

    /** Some cuts of a lamb, each as it might weigh, some out by far; pairs apart or not. */
    private static Block block(Random random) {
        ReferenceTable table = table(random);
        long carcase = 16_000 + random.nextInt(8_000);
        boolean sided = random.nextBoolean();
        List<Typed> entries = new ArrayList<>();
        for (Row row : table.rows()) {
            long grams = Math.max(10, Math.round(carcase * row.expected() / 100 * between(random, 0.9, 1.1)));
            long shown = random.nextInt(12) == 0 ? 10 * grams : grams;
            if (sided && row.pair()) {
                entries.add(typed(row, Side.LEFT, shown / 2));
                entries.add(typed(row, Side.RIGHT, grams / 2));
            } else if (random.nextInt(20) > 0) {
                entries.add(typed(row, Side.ONCE, shown));
            }
        }
        Collections.shuffle(entries, random);
        Whole whole = Whole.cold("carcase", new Weight(carcase), Tables.BLOCK);
        return new Block(Weighings.MODEL, table.rows(), whole, entries);
    }

    private static Typed typed(Row row, Side side, long grams) {
        return Typed.of(row.cut(), side, new Weight(grams), Optional.empty(), Tables.BLOCK);
    }

    private static double[] logs(Random random) {
        return random.doubles(1 + random.nextInt(30), -2_000, 50).toArray();
    }

    @Test
    void shares_add_up_to_one_however_small_what_is_shared() {
        holds(random -> {
            double[] shares = Logs.shares(logs(random));
            assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-9));
            assertThat(Arrays.stream(shares)).allMatch(share -> share >= 0 && share <= 1 + 1e-12);
        });
    }

    @Test
    void everything_a_thousand_times_less_likely_leaves_the_shares_and_the_likelier_keeps_the_larger() {
        holds(random -> {
            double[] logs = logs(random);
            double by = between(random, -900, 900);
            double[] shares = Logs.shares(logs);
            double[] other = Logs.shares(Arrays.stream(logs).map(l -> l + by).toArray());
            int one = random.nextInt(logs.length);
            int two = random.nextInt(logs.length);
            assertThat(other[one]).isCloseTo(shares[one], within(1e-9));
            if (logs[one] > logs[two]) {
                assertThat(shares[one]).isGreaterThanOrEqualTo(shares[two]);
            }
        });
    }

    @Test
    void before_anything_is_weighed_the_ways_a_line_may_have_gone_add_up_to_one() {
        holds(random -> assertThat(block(random).departures().stream()
                        .mapToDouble(Departure::prior)
                        .sum())
                .isCloseTo(1, within(1e-9)));
    }

    @Test
    void no_way_a_line_may_have_gone_makes_or_loses_meat() {
        holds(random -> block(random)
                .departures()
                .forEach(way -> assertThat(Arrays.stream(way.moved()).sum())
                        .as("%s %s %d", way.line(), way.towards(), way.by())
                        .isCloseTo(0, within(1e-9))));
    }

    @Test
    void each_way_has_another_that_undoes_it_and_is_as_likely() {
        holds(random -> {
            List<Departure> ways = block(random).departures();
            for (int n = 1; n < ways.size(); n += 2) {
                double[] back = ways.get(n + 1).moved();
                double[] there = ways.get(n).moved();
                for (int place = 0; place < there.length; place++) {
                    assertThat(back[place]).isEqualTo(-there[place]);
                }
                assertThat(ways.get(n + 1).prior()).isEqualTo(ways.get(n).prior());
            }
        });
    }

    @Test
    void after_everything_is_weighed_they_still_add_up_to_one() {
        holds(random -> {
            Block block = block(random);
            double[] shares = Logs.shares(block.logs(block.asTyped()));
            assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-9));
        });
    }

    /** An exchange stands twice with one probability. */
    @Test
    void all_suspicions_and_that_nothing_slipped_are_never_more_than_certain() {
        holds(random -> {
            Suspicion suspicion = new Suspicion(block(random));
            double sum = suspicion.noSlip();
            for (Suspect suspect : suspicion.suspects()) {
                double each =
                        suspect.because() == Cause.PIECES_EXCHANGED ? suspect.probability() / 2 : suspect.probability();
                sum += suspect.because() == Cause.PIECE_MISSING && suspect.probability() == 1 ? 0 : each;
            }
            assertThat(sum).isBetween(0.0, 1 + 1e-9);
        });
    }

    /** From the meaning of the makings t among a total S: t − t²/S is the square of the spread. */
    @Test
    void makings_vary_once_they_are_held_together_as_the_table_says() {
        holds(random -> {
            double[] sds = random.doubles(2 + random.nextInt(8), 0.1, 3).toArray();
            if (Spreads.whyNot(sds).isPresent()) {
                double widest = Arrays.stream(sds).max().orElseThrow();
                double others = Arrays.stream(sds).map(s -> s * s).sum() - widest * widest;
                assertThat(widest * widest).isGreaterThanOrEqualTo(others);
                return;
            }
            double[] makings = Spreads.unclosed(sds);
            double total = Arrays.stream(makings).sum();
            for (int cut = 0; cut < sds.length; cut++) {
                assertThat(makings[cut] - makings[cut] * makings[cut] / total)
                        .isCloseTo(sds[cut] * sds[cut], within(1e-6 * total));
            }
        });
    }

    @Test
    void shares_that_always_add_up_leave_only_the_loss_to_vary() {
        double loss = Weighings.MODEL.loss().sdPercent() / 100;
        holds(random -> {
            Lamb lamb = block(random).lamb();
            int places = lamb.places().size();
            double variance = 0;
            double expected = 0;
            for (int i = 0; i < places; i++) {
                expected += lamb.expected(i);
                for (int j = 0; j < places; j++) {
                    variance += lamb.covariance(i, j);
                    assertThat(lamb.covariance(i, j)).isCloseTo(lamb.covariance(j, i), within(1e-12));
                }
            }
            assertThat(expected).isCloseTo(100, within(1e-9));
            assertThat(variance).isCloseTo(loss * loss * expected * expected, within(1e-6));
        });
    }

    @Test
    void what_a_scale_shows_is_a_whole_number_of_its_steps_and_the_nearest_one() {
        holds(random -> {
            Block block = block(random);
            int entry = random.nextInt(block.entries().size() + 1);
            double grams = between(random, 0, 30_000);
            Weight shown = block.shown(entry, grams);
            assertThat(block.isUnshown(entry, shown.grams())).isFalse();
            assertThat((double) shown.grams()).isPositive().isCloseTo(grams, within(Math.max(2.5, 5 - grams)));
        });
    }
}
