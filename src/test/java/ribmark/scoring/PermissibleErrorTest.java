package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** OIML R 76-1, table 6 (excerpt seen): load, step, class, permissible error at first verification and in service. */
class PermissibleErrorTest {

    @ParameterizedTest
    @CsvSource({
        "100, 0.5, III, 0.25, 0.5",
        "250, 0.5, III, 0.25, 0.5",
        "250.5, 0.5, III, 0.5, 1.0",
        "1000, 0.5, III, 0.5, 1.0",
        "1000.5, 0.5, III, 0.75, 1.5",
        "5000, 0.5, III, 0.75, 1.5",
        "5001, 0.5, III, , ",
        "10000, 5, III, 5.0, 10.0",
        "15000, 5, III, 7.5, 15.0",
        "2, 0.005, III, 0.0025, 0.005",
        "2.5, 0.005, III, 0.0025, 0.005",
        "2.505, 0.005, III, 0.005, 0.01",
        "10, 0.005, III, 0.005, 0.01",
        "15, 0.005, III, 0.0075, 0.015",
        "20, 0.02, IIII, 0.03, 0.06",
        "3, 0.02, IIII, 0.02, 0.04",
        "100, 0.01, II, 0.01, 0.02",
        "60, 0.01, II, 0.01, 0.02"
    })
    void the_permissible_error_grows_with_the_load(
            double load, double step, String name, Double initial, Double inService) {
        PermissibleError of = PermissibleError.valueOf("CLASS_" + name);
        same(of.initial(load, step), initial);
        same(of.inService(load, step), inService);
    }

    private static void same(OptionalDouble found, Double printed) {
        if (printed == null) {
            assertThat(found).isEmpty();
        } else {
            assertThat(found.getAsDouble()).isCloseTo(printed, within(1e-9));
        }
    }

    /** Twenty steps in class III (OIML R 76-1, table 3, from memory). */
    @Test
    void a_scale_is_meant_for_loads_from_so_many_steps_up() {
        assertThat(PermissibleError.CLASS_III.lightest(20)).isEqualTo(400);
    }

    /** 2 × 20/√12 = 11.547 g of 100 g. */
    @Test
    void a_pair_of_kidneys_is_too_light_for_a_step_of_twenty_grams() {
        assertThat(PermissibleError.coarseness(100, 20)).isCloseTo(11.547, within(1e-3));
    }
}
