package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every test in a class called …PropertiesTest is one property; there are at least sixty, and each class honours {@code drills}. */
class PropertiesCountTest {

    private static final Path TESTS = Path.of("src/test/java");

    @Test
    void at_least_sixty_properties_are_tried_on_cases_drawn_by_chance() throws IOException {
        List<String> properties = new ArrayList<>();
        for (Path file : classes()) {
            String code = Files.readString(file);
            assertThat(code).as(file + " draws as many cases as -Ddrills says").containsAnyOf("holds(random", "Drill.");
            code.lines().filter(line -> line.strip().equals("@Test")).forEach(test -> properties.add(file.toString()));
        }
        System.out.println("properties: " + properties.size());
        assertThat(properties).hasSizeGreaterThanOrEqualTo(60);
    }

    private static List<Path> classes() throws IOException {
        try (Stream<Path> files = Files.walk(TESTS)) {
            return files.filter(file -> file.toString().endsWith("PropertiesTest.java"))
                    .sorted()
                    .toList();
        }
    }
}
