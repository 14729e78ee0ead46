package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Scale;
import ribmark.slips.Lambs.Lamb;
import ribmark.slips.Lambs.Piece;
import ribmark.testing.Tables;

/** What holds for any weights at all; the seed is printed by the lambs. */
class SlipsPropertiesTest {

    private static final int TRIES = Drill.lambs(150, 10_000);

    private final Random random = new Random(20_261_127);

    /** Any weight from a gram to ten tonnes, with a tray or not, on any side, missing or several times. */
    private List<Typed> anything(ReferenceTable table) {
        List<Typed> entries = new ArrayList<>();
        for (Row row : table.rows()) {
            for (int times = random.nextInt(4); times > 0; times--) {
                long grams = Math.round(Math.pow(10, 7 * random.nextDouble()));
                Side side =
                        row.pair() ? List.of(Side.ONCE, Side.LEFT, Side.RIGHT).get(random.nextInt(3)) : Side.ONCE;
                Optional<Weight> tare =
                        Optional.of(new Weight(random.nextInt((int) grams))).filter(t -> random.nextInt(4) == 0);
                entries.add(Typed.of(row.cut(), side, new Weight(grams), tare, scale()));
            }
        }
        return entries;
    }

    private Scale scale() {
        return new Scale("", "", List.of(0.1, 1.0, 5.0, 20.0, 500.0).get(random.nextInt(5)), random.nextInt(3));
    }

    private ReferenceTable table() {
        return Stream.of(Tables.primals(), Tables.joints(), Tables.wholesale())
                .skip(random.nextInt(3))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatever_is_typed_the_answer_is_probabilities() {
        for (int i = 0; i < TRIES; i++) {
            ReferenceTable table = table();
            Whole whole = Whole.cold("carcase", new Weight(Math.round(Math.pow(10, 7 * random.nextDouble()))), scale());
            Finding finding = Slips.of(Weighings.MODEL, table.rows(), whole, anything(table));
            assertThat(finding.suspects()).allSatisfy(suspect -> {
                assertThat(suspect.probability()).isBetween(0.05, 1 + 1e-9);
                assertThat(suspect.likely().map(Weight::grams).orElse(1L)).isPositive();
            });
            finding.explanations().ifPresent(all -> {
                double sum = all.stream().mapToDouble(Explanation::probability).sum();
                assertThat(sum).isBetween(0.5, 1 + 1e-9);
                assertThat(finding.suspects()).isEmpty();
            });
        }
    }

    @Test
    void the_order_of_the_entries_does_not_matter() {
        Lambs lambs = SlipDrillTest.lambs("uk-joints", true, 5);
        for (int i = 0; i < TRIES / 5; i++) {
            Lamb lamb = i % 2 == 0
                    ? lambs.clean()
                    : Slipped.material(lambs, Cause.DIGITS_SWAPPED).typed();
            List<Piece> shuffled = new ArrayList<>(lamb.pieces());
            Collections.shuffle(shuffled, random);
            Lamb other = new Lamb(lamb.table(), lamb.scale(), lamb.carcaseG(), shuffled);
            same(lamb.find(Weighings.MODEL), other.find(Weighings.MODEL));
        }
    }

    private static void same(Finding one, Finding other) {
        assertThat(other.saying()).isEqualTo(one.saying());
        assertThat(other.suspects()).hasSameSizeAs(one.suspects());
        Optional<Suspect> first = one.suspects().stream().findFirst();
        first.ifPresent(suspect ->
                assertThat(other.suspects().get(0).probability()).isCloseTo(suspect.probability(), within(1e-9)));
        assertThat(Group.all(other).keySet()).isEqualTo(Group.all(one).keySet());
    }

    /** What left and right exchange throughout can only exchange left and right in what is said. */
    @Test
    void left_and_right_are_treated_alike() {
        Lambs lambs = SlipDrillTest.lambs("uk-joints", true, 5);
        for (int i = 0; i < TRIES / 5; i++) {
            Lamb lamb = Miscut.any(lambs).lamb();
            List<Piece> mirrored = lamb.pieces().stream()
                    .map(p -> new Piece(p.cut(), mirrored(p.side()), p.grams()))
                    .toList();
            Lamb other = new Lamb(lamb.table(), lamb.scale(), lamb.carcaseG(), mirrored);
            Finding one = lamb.find(Weighings.MODEL);
            Finding two = other.find(Weighings.MODEL);
            assertThat(two.saying()).isEqualTo(one.saying());
            one.explanations()
                    .ifPresent(all -> assertThat(
                                    two.explanations().orElseThrow().get(0).probability())
                            .isCloseTo(all.get(0).probability(), within(1e-9)));
        }
    }

    private static Side mirrored(Side side) {
        return side == Side.LEFT ? Side.RIGHT : side == Side.RIGHT ? Side.LEFT : side;
    }

    /** Whoever takes the weight suggested is not asked again, but for the few sound weigh-ups that are suspected anyway. */
    @Test
    void a_weight_put_right_is_not_suspected_again() {
        Lambs lambs = SlipDrillTest.lambs("uk-primals", false, 5);
        int again = 0;
        for (int i = 0; i < TRIES; i++) {
            Slipped slipped = Slipped.material(lambs, Cause.DECIMAL_POINT_MOVED);
            boolean right = slipped.rightCauseAndValueFirst(slipped.typed().find(Weighings.MODEL));
            again += right && !slipped.truth().find(Weighings.MODEL).suspects().isEmpty() ? 1 : 0;
        }
        Drill.atMost("put right and suspected again", 0.5, again, TRIES);
    }
}
