package ribmark.contentfiles;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every schema is draft 2020-12, closed, and explains each of its properties with an example. */
class SchemaLintTest {

    private static final Path SCHEMAS = Path.of("content/schemas");

    /** Words by which a number's unit is told. */
    private static final List<String> UNITS = List.of(
            "in the unit",
            "percent",
            "grams",
            "kilograms",
            "days",
            "Degrees Celsius",
            "without unit",
            "sheets",
            "carcases",
            "assessors");

    private final ObjectMapper json = new ObjectMapper();
    private final List<String> wrong = new ArrayList<>();

    @Test
    void every_schema_is_closed_and_described() throws IOException {
        try (Stream<Path> files = Files.list(SCHEMAS)) {
            for (Path file : files.sorted().toList()) {
                JsonNode schema = json.readTree(file.toFile());
                assertThat(schema.path("$schema").asText()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
                assertThat(schema.path("description").asText())
                        .as(file.toString())
                        .isNotBlank();
                lint(file.getFileName().toString(), schema);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private void lint(String where, JsonNode node) {
        if (node.path("type").asText().equals("object")
                && node.has("properties")
                && !node.path("additionalProperties").isBoolean()) {
            wrong.add(where + " is not closed");
        }
        node.path("properties")
                .properties()
                .forEach(property -> property(where + " " + property.getKey(), property.getValue()));
        node.properties().forEach(child -> {
            if (!Set.of("examples", "enum").contains(child.getKey())) {
                lint(where + "/" + child.getKey(), child.getValue());
            }
        });
    }

    private void property(String where, JsonNode property) {
        boolean nested = property.path("type").asText().equals("object");
        if (property.path("description").asText().isBlank()) {
            wrong.add(where + " has no description");
        }
        if (!nested && property.path("examples").isEmpty()) {
            wrong.add(where + " has no example");
        }
        boolean number = property.path("type").toString().matches(".*\"(number|integer)\".*")
                && !property.path("type").toString().contains("string");
        if (number && UNITS.stream().noneMatch(property.path("description").asText()::contains)) {
            wrong.add(where + " has no unit");
        }
    }

    @Test
    void every_content_file_begins_with_the_schema_it_is_written_against() throws IOException {
        for (String path : ContentFiles.in(Path.of("")).paths()) {
            if (path.endsWith(".yaml")) {
                String first = Files.readAllLines(Path.of(path)).get(0);
                assertThat(first).as(path).startsWith("# yaml-language-server: $schema=");
                Path named = Path.of(path)
                        .resolveSibling(first.substring(first.indexOf('=') + 1))
                        .normalize();
                assertThat(named).as(path).isEqualTo(SCHEMAS.resolve(Library.schemaOf(path) + ".json"));
            }
        }
    }
}
