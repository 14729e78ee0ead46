package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.between;
import static ribmark.testing.Property.holds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable.GapLimits;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Scale;
import ribmark.testing.Tables;

/** What holds for every balance, and for every weigh-up to which something is done that should not matter. */
class BalancePropertiesTest {

    private static final GapLimits LIMITS = new GapLimits(1, 2);

    private static Balance balance(long whole, long parts, double variance) {
        return new Balance("carcase", BigDecimal.valueOf(whole), variance, parts, variance, List.of(), LIMITS);
    }

    private static long whole(Random random) {
        return 14_000 + random.nextInt(12_000);
    }

    private static long parts(Random random, long whole) {
        return Math.round(whole * between(random, 0.96, 1.02));
    }

    @Test
    void a_balance_in_grams_is_the_same_in_milligrams() {
        holds(random -> {
            long whole = whole(random);
            long parts = parts(random, whole);
            double variance = between(random, 0, 4_000);
            Balance grams = balance(whole, parts, variance);
            Balance milligrams = balance(1000 * whole, 1000 * parts, 1e6 * variance);
            assertThat(milligrams.verdict()).isEqualTo(grams.verdict());
            assertThat(milligrams.gapPercent()).isCloseTo(grams.gapPercent(), within(1e-9));
        });
    }

    @Test
    void a_wider_gap_is_never_called_better() {
        holds(random -> {
            long whole = whole(random);
            long parts = Math.min(whole, parts(random, whole));
            Balance here = balance(whole, parts, 4);
            Balance wider = balance(whole, parts - random.nextInt(400), 4);
            assertThat(wider.verdict()).isGreaterThanOrEqualTo(here.verdict());
        });
    }

    @Test
    void a_coarser_scale_never_finds_that_more_came_off_than_went_on() {
        holds(random -> {
            long whole = whole(random);
            long parts = parts(random, whole);
            double variance = between(random, 0, 4_000);
            boolean coarse =
                    balance(whole, parts, variance + between(random, 0, 4_000)).moreCameOff();
            assertThat(coarse && !balance(whole, parts, variance).moreCameOff()).isFalse();
        });
    }

    @Test
    void while_something_is_missing_nothing_else_is_said() {
        holds(random -> {
            Balance balance = new Balance(
                    "carcase",
                    BigDecimal.valueOf(whole(random)),
                    4,
                    random.nextInt(40_000),
                    4,
                    List.of("loins"),
                    LIMITS);
            assertThat(balance.verdict()).isEqualTo(Balance.Verdict.INCOMPLETE);
            assertThat(balance.sentence()).contains("loins");
        });
    }

    private static List<Reading> readings(Random random, long carcaseG, int times, Scale scale) {
        List<Reading> readings = new ArrayList<>();
        for (Row row : Tables.joints().rows()) {
            long grams = Math.max(1, Math.round(carcaseG * row.expected() / 100 * between(random, 0.8, 1.1)));
            Side side = row.pair() && random.nextInt(4) == 0 ? Side.LEFT : Side.ONCE;
            readings.add(Reading.of(row.cut(), side, new Weight(times * grams), scale));
        }
        return readings;
    }

    private static WeighUpScore score(long carcaseG, Scale scale, List<Reading> readings) {
        var carcase = new CarcaseReading(new Weight(carcaseG), false, true, Optional.empty(), Optional.empty(), scale);
        return WeighUpScore.of(new WeighUp(carcase, List.of(Tables.joints()), readings, List.of(), ""));
    }

    /** Both are heavier than the table was made for, so that its spreads are widened for both. */
    @Test
    void an_animal_twice_as_heavy_on_a_scale_twice_as_coarse_is_judged_alike() {
        holds(random -> {
            long carcase = 25_000 + random.nextInt(5_000);
            long seed = random.nextLong();
            Scale twice = new Scale("", "", 10, 4);
            WeighUpScore one = score(carcase, Tables.BLOCK, readings(new Random(seed), carcase, 1, Tables.BLOCK));
            WeighUpScore other = score(2 * carcase, twice, readings(new Random(seed), carcase, 2, twice));
            assertThat(other.balance().verdict()).isEqualTo(one.balance().verdict());
            for (int cut = 0; cut < one.cuts().size(); cut++) {
                assertThat(other.cuts().get(cut).yield().zeta())
                        .isCloseTo(one.cuts().get(cut).yield().zeta(), within(1e-9));
            }
        });
    }

    @Test
    void a_tray_taken_off_leaves_the_share_and_adds_its_own_doubt() {
        holds(random -> {
            long carcase = whole(random);
            List<Reading> plain = readings(random, carcase, 1, Tables.BLOCK);
            Weight tray = new Weight(random.nextInt(2_000));
            List<Reading> onTray = plain.stream()
                    .map(r -> Reading.of(r.cut(), r.side(), r.weight().plus(tray), r.scale())
                            .withTare(tray))
                    .toList();
            WeighUpScore one = score(carcase, Tables.BLOCK, plain);
            WeighUpScore other = score(carcase, Tables.BLOCK, onTray);
            for (int cut = 0; cut < one.cuts().size(); cut++) {
                var bare = one.cuts().get(cut).yield();
                var trayed = other.cuts().get(cut).yield();
                assertThat(trayed.percent()).isEqualTo(bare.percent());
                assertThat(trayed.standardUncertainty()).isGreaterThan(bare.standardUncertainty());
            }
            assertThat(other.balance().gapG())
                    .isEqualByComparingTo(one.balance().gapG());
        });
    }

    @Test
    void a_reading_of_nothing_moves_no_share_and_no_gap() {
        holds(random -> {
            long carcase = whole(random);
            List<Reading> some = readings(random, carcase, 1, Tables.BLOCK);
            List<Reading> more = new ArrayList<>(some);
            Reading again = some.get(random.nextInt(some.size()));
            more.add(Reading.of(again.cut(), again.side(), Weight.NONE, Tables.BLOCK));
            WeighUpScore one = score(carcase, Tables.BLOCK, some);
            WeighUpScore other = score(carcase, Tables.BLOCK, more);
            assertThat(other.cuts().stream().map(c -> c.yield().percent()))
                    .isEqualTo(one.cuts().stream().map(c -> c.yield().percent()).toList());
            assertThat(other.balance().gapG())
                    .isEqualByComparingTo(one.balance().gapG());
        });
    }

    @Test
    void a_heavier_piece_has_a_larger_share_and_leaves_a_smaller_gap() {
        holds(random -> {
            long carcase = whole(random);
            List<Reading> some = readings(random, carcase, 1, Tables.BLOCK);
            int at = random.nextInt(some.size());
            Reading piece = some.get(at);
            List<Reading> more = new ArrayList<>(some);
            long by = 1 + random.nextInt(500);
            more.set(at, Reading.of(piece.cut(), piece.side(), piece.weight().plus(new Weight(by)), Tables.BLOCK));
            WeighUpScore one = score(carcase, Tables.BLOCK, some);
            WeighUpScore other = score(carcase, Tables.BLOCK, more);
            assertThat(other.cuts().get(at).yield().zeta())
                    .isGreaterThan(one.cuts().get(at).yield().zeta());
            assertThat(one.balance().gapG().subtract(other.balance().gapG()))
                    .isEqualByComparingTo(BigDecimal.valueOf(by));
        });
    }

    @Test
    void a_hot_carcase_weighs_less_once_cold_and_is_less_sure() {
        holds(random -> {
            Weight weight = new Weight(whole(random));
            var hot = new CarcaseReading(weight, true, true, Optional.empty(), Optional.empty(), Tables.RAIL);
            var cold = new CarcaseReading(weight, false, true, Optional.empty(), Optional.empty(), Tables.RAIL);
            var factor = Tables.primals().hot();
            assertThat(hot.coldG(factor)).isLessThan(cold.coldG(factor));
            assertThat(hot.cold(factor).varianceG2())
                    .isGreaterThan(cold.cold(factor).varianceG2());
            assertThat(hot.cold(factor).grams()).isEqualTo(hot.coldG(factor).doubleValue());
        });
    }

    @Test
    void readings_of_one_cut_add_up_in_any_order_and_grouping() {
        holds(random -> {
            List<Reading> all = readings(random, whole(random), 1, Tables.BLOCK);
            int half = random.nextInt(all.size());
            var sum = Balances.sum(all);
            var grouped = Balances.sum(all.subList(0, half)).plus(Balances.sum(all.subList(half, all.size())));
            Collections.shuffle(all, random);
            assertThat(grouped.grams())
                    .isEqualTo(sum.grams())
                    .isEqualTo(Balances.net(all).grams());
            assertThat(Balances.sum(all).varianceG2()).isCloseTo(sum.varianceG2(), within(1e-9));
        });
    }
}
