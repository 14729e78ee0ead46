package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import ribmark.basics.Weight;
import ribmark.scoring.CutYield.Mass;
import ribmark.testing.Tables;

/** Percentages and piece weights that others have printed, reckoned again with ours; the sources stand in the rows and comments. */
class PublishedYieldsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/worked-examples/carcase-percentages.csv", numLinesToSkip = 1)
    void a_printed_percentage_comes_out_again(
            String check, String part, String whole, double printed, double tolerance, String source) {
        assertThat(percent(part, whole)).as(check + ", " + source).isCloseTo(printed, within(tolerance));
    }

    /** AU-PRIMAL: leg 32.6 % is one of a pair, neck 3.2 % one per carcase; the leaflet prints 2.9, 3.3, 3.9, 4.6 and 0.7, 0.8 kg. */
    @ParameterizedTest
    @CsvSource({
        "32.6, 2, 18, 2.93, 2.9, 0.05",
        "32.6, 2, 20, 3.26, 3.3, 0.05",
        "32.6, 2, 24, 3.91, 3.9, 0.05",
        "32.6, 2, 28, 4.56, 4.6, 0.05",
        "3.2, 1, 20, 0.64, 0.7, 0.1",
        "3.2, 1, 24, 0.77, 0.8, 0.1"
    })
    void a_piece_is_its_share_of_the_carcase_halved_where_there_are_two(
            double share, int pieces, double carcaseKg, double kg, double printed, double tolerance) {
        var row = new ReferenceTable.Row("x", "x", pieces == 2, 0, "", share, 1, List.of(), List.of());
        double expected = (pieces == 2 ? row.oneSide() : row).expected() * carcaseKg / 100;
        assertThat(expected).isCloseTo(kg, within(0.005));
        assertThat(expected).isCloseTo(printed, within(tolerance));
    }

    /**
     * IN-ECOURSE (Indian agricultural e-course, Fabrication of lamb carcasses): fore 53, hind 47. US-B300 (USDA Department Bulletin 300,
     * second hand): 50 and 50. US-NLSMB (National Live Stock and Meat Board, Handbook on cutting lamb, p. 6): 100.
     */
    @ParameterizedTest
    @CsvSource({"10 25 4 6 8, 53", "32 10 3 2, 47", "12 23.5 14.5, 50", "33 17, 50", "32 13 11 23 21, 100"})
    void printed_tables_close(String parts, double whole) {
        Mass sum = new Mass(0, 0);
        for (String part : parts.split(" ")) {
            sum = sum.plus(new Mass(Double.parseDouble(part), 0));
        }
        assertThat(sum.grams()).isEqualTo(whole);
    }

    @Test
    void our_tables_add_to_a_hundred() {
        for (ReferenceTable table : Tables.lamb().tables()) {
            assertThat(table.rows().stream()
                            .mapToDouble(ReferenceTable.Row::expected)
                            .sum())
                    .as(table.id())
                    .isCloseTo(100, within(0.05));
        }
    }

    /** US-KSU (Kansas State University, Lamb processing options for consumers): shares of a carcase of 75 lb, printed 16.8, 6.5, 9.5, 10.5, 4.4 lb. */
    @ParameterizedTest
    @CsvSource({"22.4, 16.8", "8.7, 6.5", "12.7, 9.5", "14.0, 10.5", "5.8, 4.4"})
    void a_share_of_a_carcase_is_the_weight_printed_beside_it(double share, double pounds) {
        var row = new ReferenceTable.Row("x", "x", false, 0, "", share, 1, List.of(), List.of());
        assertThat(row.expected() * 75 / 100).isCloseTo(pounds, within(0.06));
    }

    /** Our own presentation after bone, fat and loss (derived): 5.5 points come off the six main joints, 0.9405 of each is left. */
    @Test
    void what_is_left_after_bone_fat_and_loss_adds_to_a_hundred_too() {
        double left = 1 - 5.5 / 92.5;
        double[] joints = {32.5, 10, 10, 6.9, 6.6, 26.5};
        double[] printed = {30.6, 9.4, 9.4, 6.5, 6.2, 24.9};
        double sum = 3.8 + 0.5 + 3.2 + 2.0 + 3.0 + 0.5;
        for (int i = 0; i < joints.length; i++) {
            assertThat(joints[i] * left).isCloseTo(printed[i], within(0.05));
            sum += printed[i];
        }
        assertThat(sum).isCloseTo(100, within(0.05));
    }

    private static double percent(String part, String whole) {
        var row = Tables.primals().rows().get(0);
        return CutYield.of(row, mass(part), mass(whole)).percent();
    }

    private static Mass mass(String kg) {
        return new Mass(Weight.ofKilograms(kg).grams(), 0);
    }
}
