package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.testing.Tables;

/**
 * Slips in single sets of weights. The two worked ones were also reckoned in Python 3 with numpy 2.4.6, by solving each normal
 * density anew and summing over trays and carcase weights in small steps: 0.9181 and 0.0625, 0.9914 and 0.0085.
 */
class SlipsTest {

    private static Weighings primals(String fores, String middle, String legs, String kidneys, String fat) {
        return Weighings.of(Tables.primals(), "20.120")
                .and("fores", fores)
                .and("middle", middle)
                .and("legs-chump-on", legs)
                .and("kidneys", kidneys)
                .and("kidney-fat", fat);
    }

    @Test
    void swapped_digits_in_the_middle_are_told_from_everything_else() {
        Finding finding = primals("7.310", "4.520", "6.640", "0.100", "0.610").find();
        assertThat(finding.suspects()).hasSize(2);
        Suspect first = finding.suspects().get(0);
        assertThat(first.cut()).isEqualTo("middle");
        assertThat(first.side()).isEmpty();
        assertThat(first.likely()).contains(new Weight(5420));
        assertThat(first.because().words()).isEqualTo("digits swapped");
        assertThat(first.probability()).isCloseTo(0.918, within(5e-4));
        Suspect second = finding.suspects().get(1);
        assertThat(second.cut()).isEqualTo("middle");
        assertThat(second.because().words()).isEqualTo("something else");
        assertThat(second.probability()).isCloseTo(0.063, within(5.1e-4));
        assertThat(finding.explanations()).isEmpty();
        assertThat(finding.saying()).isEmpty();
    }

    @Test
    void exchanged_pieces_are_seen_by_the_spreads_alone() {
        Weighings weighings = primals("5.420", "7.310", "6.640", "0.100", "0.610");
        Finding finding = weighings.find();
        assertThat(finding.suspects()).extracting(Suspect::cut).containsExactly("fores", "middle");
        assertThat(finding.suspects())
                .extracting(Suspect::likely)
                .containsExactly(Optional.of(new Weight(7310)), Optional.of(new Weight(5420)));
        assertThat(finding.suspects()).allSatisfy(suspect -> {
            assertThat(suspect.because()).isEqualTo(Cause.PIECES_EXCHANGED);
            assertThat(suspect.probability()).isCloseTo(0.991, within(5e-4));
        });
        assertThat(weighings.suspicion().noSlip()).isCloseTo(0.009, within(5e-4));
    }

    @Test
    void a_piece_heavier_than_its_carcase_has_its_point_moved() {
        Finding finding = primals("73.10", "5.420", "6.640", "0.100", "0.610").find();
        assertThat(finding.suspects().get(0).because()).isEqualTo(Cause.DECIMAL_POINT_MOVED);
        assertThat(finding.suspects().get(0).likely()).contains(new Weight(7310));
    }

    @Test
    void the_carcase_may_be_mistyped_too() {
        Finding finding = Weighings.of(Tables.primals(), "21.020")
                .and("fores", "7.310")
                .and("middle", "5.420")
                .and("legs-chump-on", "6.580")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.640")
                .find();
        assertThat(finding.suspects().get(0).cut()).isEqualTo("carcase");
        assertThat(finding.suspects().get(0).likely()).contains(new Weight(20120));
        assertThat(finding.suspects().get(0).because()).isEqualTo(Cause.DIGITS_SWAPPED);
    }

    @Test
    void pounds_are_turned_into_kilograms_the_scale_can_show() {
        Finding finding = primals("7.310", "5.420", "14.507", "0.100", "0.640").find();
        assertThat(finding.suspects().get(0).because()).isEqualTo(Cause.POUNDS_FOR_KILOGRAMS);
        assertThat(finding.suspects().get(0).likely()).contains(new Weight(6580));
    }

    @Test
    void a_tray_that_stands_beside_another_entry_is_tried_first() {
        Finding finding = Weighings.of(Tables.primals(), "20.120")
                .onTray("fores", "8.160", 850)
                .and("middle", "6.270")
                .and("legs-chump-on", "6.580")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.640")
                .find();
        assertThat(finding.suspects().get(0))
                .isEqualTo(new Suspect(
                        "middle",
                        Optional.empty(),
                        Optional.of(new Weight(5420)),
                        Cause.TARE_FORGOTTEN,
                        finding.suspects().get(0).probability()));
    }

    @Test
    void an_unknown_tray_is_found_by_what_the_others_leave() {
        Suspect first = primals("7.310", "6.270", "6.580", "0.100", "0.640")
                .find()
                .suspects()
                .get(0);
        assertThat(first.cut()).isEqualTo("middle");
        assertThat(first.because()).isEqualTo(Cause.TARE_FORGOTTEN);
        assertThat(first.likely().orElseThrow().grams()).isBetween(5300L, 5540L);
    }

    @Test
    void a_weight_on_a_tray_is_told_with_its_tray() {
        Suspect first = Weighings.of(Tables.primals(), "20.120")
                .onTray("fores", "1.860", 850)
                .and("middle", "5.420")
                .and("legs-chump-on", "6.580")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.640")
                .find()
                .suspects()
                .get(0);
        assertThat(first.because()).isEqualTo(Cause.DIGITS_SWAPPED);
        assertThat(first.likely()).contains(new Weight(8160));
    }

    @Test
    void a_piece_entered_twice_is_struck_once() {
        Finding finding = primals("7.310", "5.420", "6.580", "0.100", "0.640")
                .and("middle", "5.425")
                .find();
        assertThat(finding.suspects()).hasSize(1);
        assertThat(finding.suspects().get(0).cut()).isEqualTo("middle");
        assertThat(finding.suspects().get(0).because()).isEqualTo(Cause.WEIGHED_TWICE);
        assertThat(finding.suspects().get(0).likely()).isEmpty();
    }

    @Test
    void what_is_believed_instead_weighs_more_than_nothing() {
        Finding finding = Weighings.of(Tables.wholesale(), "23.780")
                .onTray("fores", "9.280", 500)
                .onTray("fores", "9.280", 500)
                .and("middle-kidneys-in", "7.900")
                .and("legs-chump-on", "7.260")
                .find();
        assertThat(finding.suspects().get(0).because()).isEqualTo(Cause.WEIGHED_TWICE);
        assertThat(finding.suspects().stream().flatMap(suspect -> suspect.likely().stream()))
                .noneMatch(likely -> likely.compareTo(new Weight(500)) <= 0);
    }

    @Test
    void two_pieces_of_one_cut_both_count_when_they_make_up_the_cut() {
        Finding finding = Weighings.of(Tables.primals(), "20.120")
                .and("fores", "3.680")
                .and("fores", "3.630")
                .and("middle", "5.420")
                .and("legs-chump-on", "6.580")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.640")
                .find();
        assertThat(finding.suspects()).isEmpty();
        assertThat(finding.explanations()).as("entered twice: not worked out").isEmpty();
    }

    @Test
    void what_has_no_weight_yet_is_missing_with_what_it_should_weigh() {
        Finding finding = Weighings.of(Tables.primals(), "20.120")
                .and("fores", "7.310")
                .and("legs-chump-on", "6.580")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.640")
                .find();
        Suspect only = finding.suspects().get(0);
        assertThat(finding.suspects()).hasSize(1);
        assertThat(only.cut()).isEqualTo("middle");
        assertThat(only.because()).isEqualTo(Cause.PIECE_MISSING);
        assertThat(only.likely().orElseThrow().grams()).isBetween(5300L, 5480L);
        assertThat(finding.amongWeighed()).isEmpty();
        assertThat(finding.explanations()).isEmpty();
    }

    @Test
    void one_side_of_a_pair_is_missing_by_its_side() {
        Finding finding = Weighings.of(Tables.primals(), "20.120")
                .and("fores", Side.LEFT, "3.680")
                .and("fores", Side.RIGHT, "3.630")
                .and("middle", Side.LEFT, "2.720")
                .and("middle", Side.RIGHT, "2.700")
                .and("legs-chump-on", Side.RIGHT, "3.300")
                .and("kidneys", "0.100")
                .and("kidney-fat", "0.640")
                .find();
        assertThat(finding.suspects()).hasSize(1);
        assertThat(finding.suspects().get(0).side()).contains(Side.LEFT);
        assertThat(finding.suspects().get(0).likely().orElseThrow().grams()).isBetween(3200L, 3360L);
    }

    @Test
    void a_slip_is_seen_while_pieces_are_still_to_come() {
        Finding finding = Weighings.of(Tables.primals(), "20.120")
                .and("fores", "1.310")
                .and("middle", "5.420")
                .find();
        assertThat(finding.amongWeighed())
                .isNotEmpty()
                .allSatisfy(s -> assertThat(s.cut()).isEqualTo("fores"));
    }

    @Test
    void a_weight_the_scale_cannot_show_is_doubted() {
        double shown =
                primals("7.310", "5.420", "6.580", "0.100", "0.640").suspicion().noSlip();
        double notShown =
                primals("7.310", "5.402", "6.580", "0.100", "0.640").suspicion().noSlip();
        assertThat(shown).isGreaterThan(0.99);
        assertThat(notShown).isBetween(0.3, 0.7);
    }

    @Test
    void nothing_is_said_of_a_sound_set() {
        Finding finding = primals("7.310", "5.420", "6.580", "0.100", "0.640").find();
        assertThat(finding.suspects()).isEmpty();
        assertThat(finding.saying()).contains(Say.NOTHING_STANDS_OUT);
        assertThat(finding.explanations().orElseThrow().get(0).line()).isEmpty();
    }

    @Test
    void digits_change_places_and_the_point_stays() {
        assertThat(Retyped.swapped("4,520")).extracting(Object::toString).isEqualTo(List.of("5.420", "4.250", "4.502"));
        assertThat(Retyped.swapped("5.500")).extracting(Object::toString).isEqualTo(List.of("5.050"));
    }
}
