package ribmark.contentfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The guide for authors says what the schemas say, and every example in any document holds. */
class AuthorsGuideTest {

    private static final Path DEVELOPERS = Path.of("DEVELOPERS.md");
    private static final Pattern YAML = Pattern.compile("(?ms)^```ya?ml\n(.*?)^```$");
    private static final Pattern SCHEMA =
            Pattern.compile("# yaml-language-server: \\$schema=content/schemas/([a-z-]+)\\.json\n");

    @Test
    void the_guide_is_what_the_schemas_say() throws IOException {
        String document = Files.readString(DEVELOPERS);
        int from = document.indexOf(AuthorsGuide.BEGINS);
        int to = document.indexOf(AuthorsGuide.ENDS) + AuthorsGuide.ENDS.length() + 1;
        assertThat(from).as("the guide stands in " + DEVELOPERS).isPositive();
        if ("write".equals(System.getProperty("guide"))) {
            Files.writeString(
                    DEVELOPERS, document.substring(0, from) + AuthorsGuide.written() + document.substring(to));
            return;
        }
        assertThat(document.substring(from, to))
                .as("write it anew: mvn test -Dtest=AuthorsGuideTest -Dguide=write")
                .isEqualTo(AuthorsGuide.written());
    }

    @Test
    void every_kind_of_file_is_told() throws IOException {
        assertThat(AuthorsGuide.told()).isEqualTo(AuthorsGuide.kinds());
    }

    @Test
    void every_yaml_example_in_a_document_holds() throws IOException {
        int examples = 0;
        for (Path document : List.of(DEVELOPERS, Path.of("README.md"))) {
            Matcher block = YAML.matcher(Files.readString(document));
            while (block.find()) {
                Matcher schema = SCHEMA.matcher(block.group(1));
                assertThat(schema.lookingAt())
                        .as("an example names its schema: " + block.group(1))
                        .isTrue();
                Findings found = new Findings();
                TextFile.of("example.yaml", block.group(1).getBytes(StandardCharsets.UTF_8), found)
                        .flatMap(text -> StrictYaml.read(text, found))
                        .ifPresent(node -> new Schemas().check(schema.group(1), node, found));
                assertThat(found.list()).as(block.group(1)).isEmpty();
                examples++;
            }
        }
        assertThat(examples).isGreaterThanOrEqualTo(AuthorsGuide.told().size());
    }
}
