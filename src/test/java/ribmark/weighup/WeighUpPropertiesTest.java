package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.holds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.Scale;
import ribmark.scoring.Verdict;
import ribmark.testing.Tables;
import ribmark.weighupfile.ScoreJson;

/** What holds for every weigh-up, tried on random lambs. */
class WeighUpPropertiesTest {

    @Test
    void the_shares_of_a_scored_weigh_up_never_exceed_the_whole_by_more_than_the_scales_can_explain() {
        holds(random -> {
            WeighUpScore score = WeighUpScore.of(lamb(random, Tables.BLOCK));
            if (score.balance().verdict() == Balance.Verdict.NOT_SCORED) {
                return;
            }
            double sum = score.cuts().stream()
                    .mapToDouble(cut -> cut.yield().percent())
                    .sum();
            double doubt = 100
                    * score.balance().gapExpandedUncertaintyG()
                    / score.balance().wholeG().doubleValue();
            assertThat(sum).isLessThanOrEqualTo(100 + doubt + 1e-9);
        });
    }

    @Test
    void the_order_of_the_pieces_does_not_matter() {
        holds(random -> {
            WeighUp weighUp = lamb(random, Tables.BLOCK);
            List<Reading> shuffled = new ArrayList<>(weighUp.readings());
            Collections.shuffle(shuffled, random);
            WeighUp other = new WeighUp(weighUp.carcase(), weighUp.tables(), shuffled, List.of(), "");
            assertThat(ScoreJson.of(WeighUpScore.of(other)).toString())
                    .isEqualTo(ScoreJson.of(WeighUpScore.of(weighUp)).toString());
        });
    }

    @Test
    void grams_or_kilograms_give_the_same() {
        holds(random -> {
            WeighUp grams = lamb(random, Tables.BLOCK);
            List<Reading> typed = grams.readings().stream()
                    .map(r -> Reading.of(
                            r.cut(), r.side(), Weight.ofKilograms(r.weight().kilograms()), r.scale()))
                    .toList();
            WeighUp kilograms = new WeighUp(grams.carcase(), grams.tables(), typed, List.of(), "");
            assertThat(ScoreJson.of(WeighUpScore.of(kilograms))).isEqualTo(ScoreJson.of(WeighUpScore.of(grams)));
        });
    }

    @Test
    void a_coarser_scale_never_turns_a_doubt_into_a_verdict() {
        Scale coarser = new Scale("", "", 20, 8);
        holds(random -> {
            WeighUp fine = lamb(random, Tables.BLOCK);
            List<ScoredCut> before = WeighUpScore.of(fine).cuts();
            List<ScoredCut> after = WeighUpScore.of(on(coarser, fine)).cuts();
            for (int cut = 0; cut < before.size(); cut++) {
                if (before.get(cut).yield().verdict() == Verdict.TOO_CLOSE_TO_CALL) {
                    assertThat(after.get(cut).yield().verdict()).isEqualTo(Verdict.TOO_CLOSE_TO_CALL);
                }
            }
        });
    }

    @Test
    void scores_lie_between_nothing_and_a_hundred_and_the_gap_is_what_is_left() {
        holds(random -> {
            WeighUpScore score = WeighUpScore.of(lamb(random, Tables.RAIL));
            score.yieldScore().ifPresent(s -> assertThat(s).isBetween(0.0, 100.0));
            double parts = score.balance().partsG() + score.balance().gapG().doubleValue();
            assertThat(parts).isCloseTo(score.balance().wholeG().doubleValue(), within(1e-6));
        });
    }

    @Test
    void halves_weighed_apart_add_up_to_the_percent_of_the_pair() {
        holds(random -> {
            WeighUp whole = lamb(random, Tables.BLOCK);
            for (ReferenceTable.Row row : whole.rows()) {
                long grams = (long) Balances.sum(whole.of(row.cut())).grams();
                long left = 1 + random.nextLong(grams);
                double pair = percent(whole, on(row, Side.ONCE, grams));
                double halves = percent(whole, on(row, Side.LEFT, left), on(row, Side.RIGHT, grams + 1 - left));
                assertThat(halves).isCloseTo(pair + 100.0 / cold(whole), within(1e-9));
            }
        });
    }

    /** One gram more than the pair, so that neither half is ever nothing. */
    private static Reading on(ReferenceTable.Row row, Side side, long grams) {
        return Reading.of(row.cut(), side, new Weight(grams), Tables.BLOCK);
    }

    private static double cold(WeighUp weighUp) {
        return weighUp.carcase().coldG(weighUp.tables().get(0).hot()).doubleValue();
    }

    private static double percent(WeighUp weighUp, Reading... readings) {
        WeighUp alone = new WeighUp(weighUp.carcase(), weighUp.tables(), List.of(readings), List.of(), "");
        return WeighUpScore.of(alone).cuts().get(0).yield().percent();
    }

    private static WeighUp lamb(Random random, Scale scale) {
        ReferenceTable table = Tables.lamb().tables().get(random.nextInt(3));
        long carcaseG = 14_000 + 5L * random.nextInt(2_400);
        var carcase = new CarcaseReading(
                new Weight(carcaseG), random.nextInt(4) == 0, true, Optional.empty(), Optional.empty(), scale);
        double cold = carcase.hot() ? 0.97 : 1;
        List<Reading> readings = new ArrayList<>();
        for (ReferenceTable.Row row : table.rows()) {
            double percent = row.expected() * 0.99 + 2 * row.sd() * random.nextGaussian();
            long grams = Math.max(5, Math.round(percent * cold * carcaseG / 100));
            if (row.pair() && random.nextBoolean()) {
                readings.add(Reading.of(row.cut(), Side.LEFT, new Weight(grams / 2 + 1), scale));
                readings.add(Reading.of(row.cut(), Side.RIGHT, new Weight(grams / 2), scale));
            } else {
                readings.add(Reading.of(row.cut(), Side.ONCE, new Weight(grams), scale));
            }
        }
        return new WeighUp(carcase, List.of(table), readings, List.of(), "");
    }

    private static WeighUp on(Scale scale, WeighUp weighUp) {
        CarcaseReading c = weighUp.carcase();
        return new WeighUp(
                new CarcaseReading(c.weight(), c.hot(), c.kidneysIn(), c.fatClass(), c.vertebrae(), scale),
                weighUp.tables(),
                weighUp.readings().stream()
                        .map(r -> Reading.of(r.cut(), r.side(), r.weight(), scale))
                        .toList(),
                List.of(),
                "");
    }
}
