package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.slips.LineDrillTest.Tally;

/** Models broken on purpose: each must fail a bar the real one meets, or the bars would prove nothing. */
class BrokenModelTest {

    private static final Model REAL = Weighings.MODEL;

    /** Holds it nearly impossible that a line was moved. */
    private static final Model STRAIGHT_LINES =
            with(REAL.loss(), new Model.LineFigures(1 - 1e-9, 0.005, 0.6, 0.8, List.of()));

    /** Hardly knows that the pieces make up the carcase, so that the cuts are nearly independent. */
    private static final Model OPEN_SUMS = with(new Model.Loss(0.55, 6, List.of()), REAL.departures());

    private static Model with(Model.Loss loss, Model.LineFigures departures) {
        return new Model(
                REAL.standing(),
                REAL.text(),
                loss,
                REAL.carcase(),
                REAL.slips(),
                departures,
                REAL.lines(),
                REAL.splits());
    }

    @Test
    void a_model_that_knows_no_miscuts_accuses_the_scale() {
        int of = Drill.lambs(100, 1_000);
        Lambs lambs = SlipDrillTest.lambs("uk-joints", true, 5);
        int suspected = 0;
        for (int i = 0; i < of; i++) {
            Miscut cut = Miscut.of(lambs, Miscut.way(lambs, "fores"), 2, Side.LEFT, i % 2 == 1);
            suspected += cut.lamb().find(STRAIGHT_LINES).suspects().isEmpty() ? 0 : 1;
        }
        int accused = suspected;
        assertThatThrownBy(() -> Drill.atMost("no miscuts known: suspects on a miscut one", 1, accused, of))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void a_model_that_knows_no_sum_places_too_few_slips() {
        Lambs lambs = SlipDrillTest.lambs("uk-joints", false, 5);
        SlipDrillTest.Tally tally =
                SlipDrillTest.Tally.of(lambs, OPEN_SUMS, Cause.DIGITS_SWAPPED, Drill.lambs(60, 1_000));
        assertThatThrownBy(() -> Drill.atLeast("no sum known: right entry first", 96, tally.placed(), tally.of()))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void a_model_that_knows_no_miscuts_does_not_find_them() {
        Tally clear = LineDrillTest.clear(STRAIGHT_LINES);
        assertThatThrownBy(() -> Drill.atLeast("no miscuts known: clear lines first", 96, clear.first(), clear.of()))
                .isInstanceOf(AssertionError.class);
    }
}
