package ribmark.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ItemAnalysisTest {

    /** Which of five items were right, and how many people answered so. */
    private static final String LAW_SCHOOL =
            "00000 3, 00001 6, 00010 2, 00011 11, 00100 1, 00101 1, 00110 3, 00111 4, 01000 1,"
                    + " 01001 8, 01011 16, 01101 3, 01110 2, 01111 15, 10000 10, 10001 29, 10010 14, 10011 81, 10100 3,"
                    + " 10101 28, 10110 15, 10111 80, 11000 16, 11001 56, 11010 21, 11011 173, 11100 11, 11101 61, 11110 28,"
                    + " 11111 298";

    private static final String TEN = "00000 2, 00001 1, 00011 2, 00111 1, 01111 2, 11111 1, 10111 1";

    private static List<Map<String, Boolean>> people(String patterns) {
        List<Map<String, Boolean>> people = new ArrayList<>();
        for (String pattern : patterns.split(", *")) {
            Map<String, Boolean> answers = new LinkedHashMap<>();
            for (int item = 0; item < 5; item++) {
                answers.put("item " + item, pattern.charAt(item) == '1');
            }
            for (int count = Integer.parseInt(pattern.substring(6)); count > 0; count--) {
                people.add(answers);
            }
        }
        return people;
    }

    private static void check(String patterns, double[] difficulty, double[] pointBiserial) {
        Map<String, ItemAnalysis.Item> items = ItemAnalysis.of(people(patterns));
        for (int item = 0; item < 5; item++) {
            ItemAnalysis.Item found = items.get("item " + item);
            assertThat(found.difficulty()).isCloseTo(difficulty[item], within(1e-12));
            assertThat(found.pointBiserial().orElseThrow()).isCloseTo(pointBiserial[item], within(1e-9));
        }
    }

    /**
     * Bock and Lieberman (1970), Psychometrika 35, 179 to 197: section 6 of a law school test, 1000 people, as R packages ltm and
     * psych carry it; 0.924, 0.553 and 0.1128 are printed by Rizopoulos (2006), J Stat Softw 17(5) (from memory), all digits
     * worked a second time with psych::alpha 2.2.9.
     */
    @Test
    void a_thousand_people_and_five_items_come_out_as_published() {
        check(LAW_SCHOOL, new double[] {0.924, 0.709, 0.553, 0.763, 0.87}, new double[] {
            0.11283268892234197, 0.15317812011652976, 0.17277894329108853, 0.14442809524709438, 0.12159640254709614
        });
    }

    /** The example matrix in the help of the R package CTT; worked a second time with psych::alpha 2.2.9. */
    @Test
    void ten_people_and_five_items_come_out_as_in_the_example() {
        check(TEN, new double[] {0.2, 0.3, 0.5, 0.7, 0.8}, new double[] {
            0.4036036763977875, 0.5299577334302673, 0.7905694150420949, 0.7237468644557459, 0.5995437734798083
        });
    }

    @Test
    void where_everybody_is_right_no_correlation_is_said() {
        Map<String, ItemAnalysis.Item> items = ItemAnalysis.of(
                List.of(Map.of("a", true, "b", true), Map.of("a", true, "b", false), Map.of("a", true)));

        assertThat(items.get("a").difficulty()).isOne();
        assertThat(items.get("a").answers()).isEqualTo(3);
        assertThat(items.get("a").pointBiserial()).isEmpty();
    }

    @Test
    void the_figures_are_put_into_one_word() {
        assertThat(Behaviour.of(item(7, 0.1, -0.5))).isEqualTo(Behaviour.NOT_ENOUGH);
        assertThat(Behaviour.of(item(8, 0.1, -0.1))).isEqualTo(Behaviour.MISLEADING);
        assertThat(Behaviour.of(item(8, 0.3, -0.09))).isEqualTo(Behaviour.TOO_HARD);
        assertThat(Behaviour.of(item(20, 0.95, 0.2))).isEqualTo(Behaviour.TOO_EASY);
        assertThat(Behaviour.of(item(20, 0.94, 0.2))).isEqualTo(Behaviour.FITS);
    }

    private static ItemAnalysis.Item item(int answers, double difficulty, double with) {
        return new ItemAnalysis.Item(answers, difficulty, java.util.OptionalDouble.of(with));
    }
}
