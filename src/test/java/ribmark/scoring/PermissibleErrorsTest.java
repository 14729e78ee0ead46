package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

class PermissibleErrorsTest {

    /**
     * OIML R 76-1, table 6 and UK S.I. 1995/1907, schedule 2: half a division, one, one and a half; doubled in use; a limit belongs to
     * the lower step. Load and division in the same unit; the values recomputed in Python and R.
     */
    @ParameterizedTest
    @CsvSource({
        "100, 0.5, III, 0.25, 0.5",
        "250, 0.5, III, 0.25, 0.5",
        "250.5, 0.5, III, 0.5, 1",
        "1000, 0.5, III, 0.5, 1",
        "1000.5, 0.5, III, 0.75, 1.5",
        "5000, 0.5, III, 0.75, 1.5",
        "5001, 0.5, III, , ",
        "10000, 5, III, 5, 10",
        "15000, 5, III, 7.5, 15",
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
    void the_error_a_scale_may_have_is_that_of_its_class(
            double load, double division, String ofClass, Double verified, Double inUse) throws IOException {
        PermissibleErrors errors = ofTheFile(ofClass);
        if (verified == null) {
            assertThat(errors.whenVerified(load, division)).isEmpty();
            assertThat(errors.inUse(load, division)).isEmpty();
        } else {
            assertThat(errors.whenVerified(load, division).getAsDouble()).isCloseTo(verified, within(1e-9));
            assertThat(errors.inUse(load, division).getAsDouble()).isCloseTo(inUse, within(1e-9));
        }
    }

    @Test
    void a_scale_of_which_no_class_is_known_has_no_limit() {
        assertThat(new Scale("", "", 5, 2).permissibleG(100)).isEmpty();
    }

    /** The limits of a class as they stand in the shipped file. */
    private static PermissibleErrors ofTheFile(String ofClass) throws IOException {
        String text = Files.readString(Path.of("assessments/scales.yaml"));
        Map<?, ?> file = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
        Map<?, ?> permissible = (Map<?, ?>) file.get("permissible");
        Map<?, ?> found = ((List<?>) permissible.get("classes"))
                .stream()
                        .map(one -> (Map<?, ?>) one)
                        .filter(one -> one.get("class").equals(ofClass))
                        .findFirst()
                        .orElseThrow();
        List<PermissibleErrors.Step> steps = ((List<?>) found.get("steps"))
                .stream()
                        .map(one -> (Map<?, ?>) one)
                        .map(one -> new PermissibleErrors.Step(
                                number(one, "up-to-divisions"), number(one, "error-divisions")))
                        .toList();
        return new PermissibleErrors(ofClass, steps, number(permissible, "in-use"), 10, List.of());
    }

    private static double number(Map<?, ?> from, String name) {
        return ((Number) from.get(name)).doubleValue();
    }
}
