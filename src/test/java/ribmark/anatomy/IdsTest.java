package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribmark.basics.Refused;
import ribmark.basics.Side;

class IdsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    7,13,6,4,3 | L(last)                  | L6
                    7,13,7,4,3 | L(last).far              | L7.far
                    7,14,6,4,3 | IV-T(last)-L1            | IV-T14-L1
                    7,13,6,4,3 | IV-L(last-1)-L(last)     | IV-L5-L6
                    6,13,6,4,3 | C5..C(last)              | C5 C6
                    7,14,6,4,3 | T12..T(last)             | T12 T13 T14
                    7,12,6,4,3 | R11(s)..R(last)(s)       | R11L R12L R11R R12R
                    7,13,6,4,3 | CC12L..CC(last)L         | CC12L CC13L
                    7,13,6,4,3 | S1..S3.left              | S1.left S2.left S3.left
                    7,13,6,4,3 | S1.left..S3.left         | S1.left S2.left S3.left
                    7,13,6,4,3 | S1..S2.(side)            | S1.left S2.left S1.right S2.right
                    7,13,6,4,3 | L(last).(side).far       | L6.left.far L6.right.far
                    7,13,6,4,3 | SC-7(s)a                 | SC-7La SC-7Ra
                    7,13,6,4,3 | L1..L(last-1)            | L1 L2 L3 L4 L5
                    7,13,6,4,3 | IS-7L..IS-9L             | IS-7L IS-8L IS-9L
                    7,13,6,4,3 | ST(last)                 | ST7
                    7,13,6,4,1 | Cd1..Cd(last)            | Cd1
                    7,13,6,4,0 | Cd1..Cd(last)            | ''
                    7,13,6,4,3 | XS                       | XS
                    """)
    void an_expression_gives_the_ids_of_this_animal(String formula, String expression, String ids) {
        assertThat(String.join(" ", Ids.of(Ovine.with(formula.strip())).expand(expression.strip())))
                .isEqualTo(ids.strip());
    }

    @Test
    void one_side_can_be_asked_for() {
        assertThat(Ids.of(Ovine.USUAL).expand("ILI(s)", Side.RIGHT)).containsExactly("ILIR");
        assertThat(Ids.of(Ovine.USUAL).expand("XS", Side.RIGHT)).containsExactly("XS");
    }

    @Test
    void an_operation_with_sides_is_one_for_the_left_followed_by_one_for_the_right() {
        assertThat(operations(Operation.of(null, null, null, List.of("ILI(s)", "ISC(s)"))))
                .containsExactly(
                        new Operation.Lift(List.of("ILIL", "ISCL")), new Operation.Lift(List.of("ILIR", "ISCR")));
        assertThat(operations(Operation.of(null, List.of("L(last)"), "across", null)))
                .containsExactly(new Operation.Saw(List.of("L6"), Plane.ACROSS));
    }

    @Test
    void an_operation_that_names_nothing_in_this_animal_is_left_out() {
        Ids tailless = Ids.of(Ovine.with("7,13,6,4,0"));

        assertThat(tailless.operations(Operation.of(null, List.of("Cd1..Cd(last)"), "midline", null)))
                .isEmpty();
    }

    @Test
    void an_operation_with_sides_takes_no_id_without() {
        assertThatThrownBy(() -> operations(Operation.of(List.of("IS-6(s)", "XS"), null, null, null)))
                .isInstanceOf(Refused.class)
                .hasMessageStartingWith("“XS” has no side in an operation");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Q(last)",
                "(last)",
                "IS-(last)L",
                "T(lst)",
                "T(last",
                "T9..T7",
                "T7..L3",
                "T7..",
                "..T7",
                "XS..XX",
                "S1.right..S3.left",
                "T(last-20)",
                ""
            })
    void what_cannot_be_read_is_refused_by_name(String expression) {
        assertThatThrownBy(() -> Ids.of(Ovine.USUAL).expand(expression))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("“" + expression + "”");
    }

    @Test
    void the_last_of_a_tail_that_is_not_there_is_refused() {
        assertThatThrownBy(() -> Ids.of(Ovine.with("7,13,6,4,0")).expand("Cd(last)"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("“Cd(last)” counts back past the first Cd");
    }

    private static List<Operation> operations(Operation written) {
        return Stream.of(written)
                .flatMap(each -> Ids.of(Ovine.USUAL).operations(each).stream())
                .toList();
    }
}
