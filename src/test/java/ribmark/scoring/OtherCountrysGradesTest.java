package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Yield grades and retail cuts of the United States, reckoned here and nowhere else: the program does not use them. They show that the
 * figures printed by others are read rightly, and that an older rule must not be mended into a newer one. Inches and pounds.
 */
class OtherCountrysGradesTest {

    /** The rule of 1992: 0.4 + 10 × fat depth. */
    private static double grade(double fatInches) {
        return 0.4 + 10 * fatInches;
    }

    /** A line fitted to the nine sound rows of the printed table. */
    private static double cutability(double grade) {
        return 51.0 - 1.3 * (grade - 1);
    }

    /** Boneless, closely trimmed retail cuts in percent, the equation printed in US-WMREC18. */
    private static double retailCuts(double carcase, double fat, double bodyWall, double eye) {
        return 49.936 - 0.0848 * carcase - 4.376 * fat - 3.530 * bodyWall + 2.456 * eye;
    }

    /** Printed in US-WMREC19 and US-WMREC18 (University of Maryland, notes on lambs, 2019 and 2018); US-STD (grade standards, 1992), lower limits. */
    @ParameterizedTest
    @CsvSource({
        "0.083, 1.23, 0.005",
        "0.100, 1.40, 0.005",
        "0.142, 1.82, 0.005",
        "0.111, 1.51, 0.005",
        "0.122, 1.62, 0.005",
        "0.113, 1.53, 0.005",
        "0.145, 1.85, 0.005",
        "0.128, 1.68, 0.005",
        "0.15, 1.9, 0.01",
        "0.25, 2.9, 0.01",
        "0.35, 3.9, 0.01"
    })
    void a_printed_grade_follows_from_its_fat_depth(double fat, double printed, double tolerance) {
        assertThat(grade(fat)).isCloseTo(printed, within(tolerance + 1e-9));
    }

    /** US-YGTAB (Virginia Department of Agriculture, yield and quality grades for lamb carcasses, table I). */
    @ParameterizedTest
    @CsvSource({
        "1.0, 51.0",
        "1.5, 50.35",
        "2.0, 49.7",
        "2.5, 49.05",
        "3.0, 48.4",
        "3.5, 47.75",
        "4.0, 47.1",
        "4.5, 46.45",
        "5.0, 45.8"
    })
    void the_printed_table_is_a_straight_line(double grade, double printed) {
        assertThat(cutability(grade)).isCloseTo(printed, within(0.005));
    }

    /** The row 5.9 prints 45.15, which belongs to 5.5: likely a misprint, so the line is held to, not the row. */
    @Test
    void one_row_of_the_table_is_likely_misprinted() {
        assertThat(cutability(5.9)).isCloseTo(44.63, within(0.005));
        assertThat(cutability(5.5)).isCloseTo(45.15, within(0.005));
    }

    /** US-WMREC19 and US-WMREC18, carcase weight, fat depth, body wall, eye muscle and the printed percentage. */
    @ParameterizedTest
    @CsvSource({
        "63.0, 0.083, 0.529, 3.01, 49.756, 49.75, 0.02",
        "60.7, 0.100, 0.514, 2.83, 49.487, 49.48, 0.02",
        "58.6, 0.142, 0.558, 2.71, 49.031, 49.04, 0.02",
        "60.6, 0.111, 0.536, 2.84, 49.394, 49.40, 0.02",
        "56.3, 0.122, 0.619, 3.06, 49.96, 50.0, 0.06",
        "57.3, 0.113, 0.647, 3.19, 50.13, 50.1, 0.06",
        "53.4, 0.145, 0.640, 2.91, 49.66, 49.7, 0.06",
        "55.4, 0.128, 0.636, 3.04, 49.90, 49.9, 0.06"
    })
    void printed_retail_cuts_follow_from_the_equation(
            double carcase, double fat, double wall, double eye, double reckoned, double printed, double tolerance) {
        assertThat(retailCuts(carcase, fat, wall, eye)).isCloseTo(reckoned, within(0.005));
        assertThat(retailCuts(carcase, fat, wall, eye)).isCloseTo(printed, within(tolerance));
    }

    /**
     * US-CORANGE (Carcase evaluation of western Colorado range lambs) prints a grade of 3.34 for a fat depth of 0.22 in: its grade also used leg score and kidney fat. The
     * rule of 1992 gives 2.60, and neither may be mended into the other.
     */
    @Test
    void a_grade_of_an_older_rule_is_not_one_of_the_newer() {
        assertThat(grade(0.22)).isCloseTo(2.60, within(1e-9));
        assertThat(grade(0.22)).isNotCloseTo(3.34, within(0.5));
    }
}
