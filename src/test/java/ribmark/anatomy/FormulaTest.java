package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullAndEmptySource;
import org.junit.jupiter.params.provider.ValueSource;
import ribmark.basics.Refused;

class FormulaTest {

    @Test
    void reads_counts_with_or_without_spaces() {
        assertThat(Formula.parse(" 7, 14,6,4 ,3 ").counts()).containsExactly(7, 14, 6, 4, 3);
        assertThat(Formula.parse("7,14,6,4,3")).hasToString("7,14,6,4,3");
    }

    @ParameterizedTest
    @NullAndEmptySource
    @ValueSource(
            strings = {"C7 T13", "7,13,6,4,", "7;13;6;4;3", "7,-13,6,4,3", "7,13.5,6,4,3", "07,13,6,4,3", "7,,6,4,3"})
    void refuses_what_is_no_list_of_counts(String written) {
        assertThatThrownBy(() -> Formula.parse(written))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("not a vertebral formula");
    }

    @ParameterizedTest
    @ValueSource(strings = {"7,31,6,4,3", "7,13,6,4,9999"})
    void refuses_counts_nobody_has_seen(String written) {
        assertThatThrownBy(() -> Formula.parse(written))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("out of range");
    }
}
