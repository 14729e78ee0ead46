package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules of the house that a look into the files can check. */
class HouseRulesTest {

    private static final Path JAVA = Path.of("src/main/java");
    private static final Path RESOURCES = Path.of("src/main/resources");

    /** S-49: templates cannot be made to evaluate or print raw. */
    @Test
    void templates_print_nothing_raw_and_evaluate_nothing_typed() {
        assertThat(found(RESOURCES.resolve("templates"), "th:utext|__\\$\\{|\\[\\(|@\\{/| style=|<script>| on[a-z]+="))
                .isEmpty();
    }

    /** S-15: evidence is insert-only. */
    @Test
    void no_statement_changes_or_removes_evidence() {
        assertThat(found(JAVA, "(?i)update +(evidence|mark|sign_?off)|delete +from +(evidence|mark|sign_?off)"))
                .isEmpty();
    }

    /** S-21: one injected clock. */
    @Test
    void nobody_looks_at_the_wall_clock() {
        assertThat(found(JAVA, "currentTimeMillis|Instant\\.now\\(\\)|LocalDate(Time)?\\.now\\(\\)"))
                .isEmpty();
    }

    /** C-01: the steps, bones and counts of an animal are data. */
    @Test
    void no_step_bone_or_joint_is_named_in_java() {
        Set<String> ids = Stream.of(
                        firstColumn("content/ovine/skeleton.csv"), firstColumn("content/ovine/joints.csv"), stepIds())
                .flatMap(List::stream)
                .collect(Collectors.toSet());
        List<String> named = new ArrayList<>();
        Pattern quoted = Pattern.compile("\"([^\"\\\\]+)\"");
        for (Path file : files(JAVA, ".java")) {
            quoted.matcher(text(file))
                    .results()
                    .map(m -> m.group(1))
                    .filter(ids::contains)
                    .forEach(id -> named.add(file + ": " + id));
        }
        assertThat(ids).hasSizeGreaterThan(480);
        assertThat(named).isEmpty();
        assertThat(found(JAVA, "\\b(ribs?|vertebra[e]?)[A-Za-z_]* *(=|==|<|>|<=) *[0-9]+"))
                .isEmpty();
    }

    /** Nothing points outside the project. */
    @Test
    void no_path_of_a_machine_and_no_unfinished_work_is_left() {
        assertThat(found(Path.of("src"), "(^|[^a-zA-Z])/(work|farm|root)/|TO" + "DO|FIX" + "ME|@Disa" + "bled"))
                .isEmpty();
    }

    @Test
    void templates_stay_short() {
        for (Path file : files(RESOURCES.resolve("templates"), ".html")) {
            assertThat(text(file).lines().count()).as(file + " in lines").isLessThanOrEqualTo(120);
        }
        for (Path file : files(RESOURCES.resolve("static"), ".css")) {
            assertThat(text(file).lines().count()).as(file + " in lines").isLessThanOrEqualTo(200);
        }
    }

    private static List<String> stepIds() {
        return files(Path.of("content/lamb"), ".yaml").stream()
                .flatMap(file -> Pattern.compile("(?m)^  - id: ([a-z-]+)$")
                        .matcher(text(file))
                        .results())
                .map(match -> match.group(1))
                .filter(id -> id.contains("-"))
                .toList();
    }

    private static List<String> firstColumn(String csv) {
        return text(Path.of(csv))
                .lines()
                .skip(1)
                .map(line -> line.split(",")[0])
                .toList();
    }

    private static List<String> found(Path folder, String regex) {
        Pattern pattern = Pattern.compile(regex, Pattern.MULTILINE);
        return files(folder, "").stream()
                .filter(file -> pattern.matcher(text(file)).find())
                .map(file -> file + ": "
                        + pattern.matcher(text(file))
                                .results()
                                .findFirst()
                                .orElseThrow()
                                .group())
                .toList();
    }

    private static List<Path> files(Path folder, String ending) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file ->
                            file.toString().endsWith(ending) && !file.toString().endsWith(".png"))
                    .sorted()
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
