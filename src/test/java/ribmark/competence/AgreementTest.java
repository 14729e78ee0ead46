package ribmark.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import ribmark.competence.Agreement.Level;

class AgreementTest {

    /** Sources stand at the head of the file: Cohen 1968, Fleiss, Cohen and Everitt 1969, printed output of a statistics package. */
    @ParameterizedTest
    @CsvFileSource(resources = "/worked-examples/cohen-kappa.csv", numLinesToSkip = 1)
    void kappa_of_published_tables(String counts, double observed, double kappa, String printed) {
        Agreement agreement = Agreement.of(table(counts), Level.NOMINAL);
        assertThat(agreement.percentAgreement().getAsDouble()).isCloseTo(100 * observed, within(1e-9));
        assertThat(agreement.cohenKappa().getAsDouble()).isCloseTo(kappa, within(1e-9));
        assertThat(agreement.cohenKappa().getAsDouble()).isCloseTo(Double.parseDouble(printed), within(5e-4));
        assertThat(agreement.assessors()).isEqualTo(2);
    }

    /** By definition 0/0: chance agreement is 1, so kappa is not defined, and never shown as 0 or 1. */
    @Test
    void one_rating_for_everything_has_no_kappa() {
        Agreement agreement = Agreement.of(table("12 0 0 0 0 0 0 0 0"), Level.NOMINAL);
        assertThat(agreement.percentAgreement()).hasValue(100);
        assertThat(agreement.cohenKappa()).isEmpty();
        assertThat(agreement.notComputable().get("cohenKappa")).contains("Only one rating");
    }

    /** By hand: two of three pairs of the first item differ (1/3), all of the second agree (1): 66.67 %. */
    @Test
    void three_assessors_have_percent_agreement_and_no_kappa() {
        List<Rating> ratings = List.of(
                new Rating("a", "Ada", "unaided"),
                new Rating("a", "Bo", "unaided"),
                new Rating("a", "Cy", "prompted"),
                new Rating("b", "Ada", "unaided"),
                new Rating("b", "Bo", "unaided"),
                new Rating("c", "Cy", "stopped"));
        Agreement agreement = Agreement.of(ratings, Level.NOMINAL);
        assertThat(agreement.percentAgreement().getAsDouble()).isCloseTo(200.0 / 3, within(1e-9));
        assertThat(agreement.notComputable().get("cohenKappa")).contains("here there are 3");
        assertThat(agreement.items()).isEqualTo(3);
    }

    @Test
    void neither_the_order_of_lines_nor_the_names_of_assessors_matter() {
        List<Rating> ratings = new ArrayList<>(table("88 14 18 10 40 10 2 6 12"));
        double kappa = Agreement.of(ratings, Level.NOMINAL).cohenKappa().getAsDouble();
        Collections.shuffle(ratings, new Random(29));
        List<Rating> swapped = ratings.stream()
                .map(r -> new Rating(r.item(), r.assessor().equals("one") ? "z" : "a", r.rating()))
                .toList();
        assertThat(Agreement.of(swapped, Level.ORDINAL).cohenKappa().getAsDouble())
                .isCloseTo(kappa, within(1e-12));
    }

    private static List<Rating> table(String counts) {
        List<Rating> ratings = new ArrayList<>();
        String[] cells = counts.split(" ");
        for (int cell = 0; cell < cells.length; cell++) {
            for (int i = 0; i < Integer.parseInt(cells[cell]); i++) {
                String item = "item " + cell + "-" + i;
                ratings.add(new Rating(item, "one", "class " + cell / 3));
                ratings.add(new Rating(item, "two", "class " + cell % 3));
            }
        }
        return ratings;
    }
}
