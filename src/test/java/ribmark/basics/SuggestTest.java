package ribmark.basics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuggestTest {

    private static final List<String> STEPS =
            List.of("fores-mark", "fores-cut", "fores-saw", "legs-open", "legs-split");

    @ParameterizedTest
    @CsvSource({
        "fores-cutt, fores-cut",
        "fores-ctu, fores-cut",
        "Fores-Saw, fores-saw",
        "leg-open, legs-open",
        "lgs-spilt, legs-split"
    })
    void finds_the_word_that_was_meant(String typed, String meant) {
        assertThat(Suggest.nearest(typed, STEPS)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"scrag, ''", "fores, ''", "zz, ab"})
    void suggests_nothing_far_off(String typed, String other) {
        assertThat(Suggest.nearest(typed, List.of("fores-cut", other))).isEmpty();
    }

    /** The distance between "kitten" and "sitting" is the usual textbook example, 3; "ca" and "abc" are 3 apart as well. */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ca, abc, 3", "ab, ba, 1", "same, same, 0", "'', abc, 3"})
    void counts_slips(String one, String other, int slips) {
        assertThat(Suggest.slips(one, other)).isEqualTo(slips);
    }

    @Test
    void says_it_as_the_end_of_a_sentence() {
        assertThat("There is no step “fores-cit”" + Suggest.orNothing("fores-cit", STEPS))
                .isEqualTo("There is no step “fores-cit” (did you mean “fores-cut”?)");
        assertThat(Suggest.orNothing("scrag", STEPS)).isEmpty();
    }
}
