package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.scoring.Basis;
import ribmark.scoring.Ground;

/** The shipped model, typed again by hand: all of it is judgement but for the points of a rib and a vertebra, which are derived. */
class ModelFileTest {

    private static final Model MODEL = Weighings.MODEL;

    @Test
    void the_figures_are_those_the_worked_checks_rest_on() {
        assertThat(MODEL.loss().expectedPercent()).isEqualTo(0.55);
        assertThat(MODEL.loss().sdPercent()).isEqualTo(0.20);
        assertThat(MODEL.carcase().meanKg()).isEqualTo(20);
        assertThat(MODEL.carcase().sdKg()).isEqualTo(4);
        Model.SlipFigures slips = MODEL.slips();
        assertThat(new double[] {
                    slips.none(),
                    slips.trayLowestG(),
                    slips.trayHighestG(),
                    slips.offDivision(),
                    slips.suspectBelow(),
                    slips.listedFrom()
                })
                .containsExactly(0.90, 500, 2000, 0.001, 0.5, 0.05);
        Model.LineFigures lines = MODEL.departures();
        assertThat(new double[] {lines.none(), lines.listedFrom(), lines.fitsFrom(), lines.nothingFrom()})
                .containsExactly(0.6, 0.005, 0.60, 0.80);
    }

    /** The pound is 0.45359237 kg exactly (international yard and pound agreement of 1959, from memory). */
    @Test
    void a_kilogram_is_so_many_pounds() {
        assertThat(MODEL.slips().poundsAKilogram()).isCloseTo(1 / 0.45359237, within(5e-8));
    }

    @Test
    void every_move_keeps_the_whole_and_has_a_ground() {
        assertThat(MODEL.lines())
                .extracting(l -> l.named().id())
                .containsExactly("fores", "middle", "breasts", "chumps");
        for (Model.Line line : MODEL.lines()) {
            for (Model.Move move : line.moves()) {
                assertThat(move.points().values().stream().mapToDouble(p -> p).sum())
                        .isCloseTo(0, within(1e-12));
                assertThat(move.grounds()).isNotEmpty().allSatisfy(ModelFileTest::isHonest);
            }
        }
        for (Model.Split split : MODEL.splits()) {
            assertThat(split.share()).isEqualTo(0.03);
            assertThat(split.grounds()).isNotEmpty().allSatisfy(ModelFileTest::isHonest);
        }
        for (List<Ground> grounds : List.of(
                MODEL.loss().grounds(),
                MODEL.carcase().grounds(),
                MODEL.slips().grounds(),
                MODEL.departures().grounds())) {
            assertThat(grounds).isNotEmpty();
        }
        assertThat(MODEL.standing()).isEqualTo("provisional");
    }

    private static void isHonest(Ground ground) {
        assertThat(ground.basis()).isIn(Basis.JUDGEMENT, Basis.DERIVED);
    }
}
