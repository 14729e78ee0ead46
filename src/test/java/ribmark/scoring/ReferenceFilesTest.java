package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import ribmark.testing.Tables;

/** The shipped files, read without the program: the tables other tests use by hand are the same, and every figure has a ground. */
class ReferenceFilesTest {

    private static final Path ASSESSMENTS = Path.of("assessments");

    @ParameterizedTest
    @ValueSource(strings = {"uk-wholesale", "uk-primals", "uk-joints"})
    void a_table_adds_to_a_hundred_and_is_the_one_the_other_tests_use(String id) throws IOException {
        Map<?, ?> file = read("lamb/references/" + id + ".yaml");
        ReferenceTable table = Tables.lamb().table(id).orElseThrow();
        assertThat(file.get("id")).isEqualTo(id);
        assertThat(file.get("standing")).isEqualTo("provisional");
        List<Map<?, ?>> rows = list(file, "rows");
        List<String> cuts = rows.stream().map(row -> (String) row.get("cut")).toList();
        assertThat(cuts)
                .isEqualTo(table.rows().stream().map(ReferenceTable.Row::cut).toList());
        double sum = 0;
        for (int i = 0; i < rows.size(); i++) {
            same(rows.get(i), table.rows().get(i));
            sum += number(rows.get(i), "expected");
        }
        assertThat(sum).isCloseTo(100, within(0.05));
    }

    @ParameterizedTest
    @ValueSource(strings = {"uk-wholesale", "uk-primals", "uk-joints"})
    void the_numbers_for_heat_kidneys_range_gap_and_loss_stand_in_the_file(String id) throws IOException {
        Map<?, ?> file = read("lamb/references/" + id + ".yaml");
        ReferenceTable table = Tables.lamb().table(id).orElseThrow();
        Map<?, ?> bounds = map(file, "bounds");
        assertThat(number(bounds, "lowest-kg")).isEqualTo(table.bounds().lowestKg());
        assertThat(number(bounds, "highest-kg")).isEqualTo(table.bounds().highestKg());
        assertThat(bounds.get("fat-classes")).isEqualTo(table.bounds().fatClasses());
        assertThat(number(bounds, "widen")).isEqualTo(table.bounds().widen());
        assertThat(number(map(file, "hot"), "multiply-by"))
                .isEqualTo(table.hot().multiplyBy());
        assertThat(number(map(file, "hot"), "standard-uncertainty"))
                .isEqualTo(table.hot().standardUncertainty());
        Map<?, ?> out = map(file, "kidneys-out");
        assertThat(number(out, "divide-by")).isEqualTo(table.kidneysOut().divideBy());
        assertThat(out.get("leaves-out")).isEqualTo(table.kidneysOut().leavesOut());
        assertThat(out.get("possible")).isEqualTo(table.kidneysOut().possible());
        assertThat(number(map(file, "gap"), "balanced-to-percent"))
                .isEqualTo(table.gap().balancedToPercent());
        assertThat(number(map(file, "gap"), "query-to-percent"))
                .isEqualTo(table.gap().queryToPercent());
        Map<?, ?> losses = map(file, "losses");
        assertThat(number(map(losses, "of-cut"), "expected-percent"))
                .isEqualTo(table.losses().ofCutPercent());
        assertThat(number(map(losses, "of-carcase"), "sd-percent"))
                .isEqualTo(table.losses().ofCarcaseSd());
        Map<?, ?> other = map(file, "other-counts");
        assertThat(number(other, "widen")).isEqualTo(table.other().widen());
        assertThat(number(other, "at-most")).isEqualTo(table.other().atMost());
        List<Map<?, ?>> regions = list(other, "regions");
        for (int i = 0; i < regions.size(); i++) {
            OtherAnimal.Grows typed = table.other().grows().get(i);
            assertThat(regions.get(i).get("region")).isEqualTo(typed.region().word());
            assertThat(list(regions.get(i), "points"))
                    .hasSameSizeAs(typed.points().keySet());
            list(regions.get(i), "points")
                    .forEach(point -> assertThat(number(point, "points"))
                            .isEqualTo(typed.points().get(point.get("row"))));
            grounded(regions.get(i));
        }
        Map<?, ?> pairs = map(file, "pairs");
        assertThat(pairs.get("whose")).isEqualTo(table.pairs().whose());
        assertThat(list(pairs, "tolerances"))
                .hasSameSizeAs(table.pairs().percents().keySet())
                .allMatch(one -> number(one, "percent")
                        == table.pairs().of((String) one.get("row")).getAsDouble());
        for (String part : List.of("pairs", "bounds", "hot", "kidneys-out", "gap", "losses", "other-counts")) {
            grounded(map(file, part));
        }
    }

    /** The middle with kidneys and fat inside: 26.9 + 0.5 + 3.2 = 30.6; √(1.5² + 0.1² + 0.75²) = 1.680. */
    @Test
    void the_middle_with_its_kidneys_is_the_sum_of_its_parts() {
        ReferenceTable primals = Tables.primals();
        var whole = Tables.wholesale().row("middle-kidneys-in").orElseThrow();
        double mean = 0;
        double variance = 0;
        for (String part : List.of("middle", "kidneys", "kidney-fat")) {
            var row = primals.row(part).orElseThrow();
            mean += row.expected();
            variance += row.sd() * row.sd();
        }
        assertThat(whole.expected()).isCloseTo(mean, within(1e-9));
        assertThat(whole.sd()).isCloseTo(Math.sqrt(variance), within(5e-3));
    }

    @Test
    void every_trim_measure_has_a_limit_an_owner_and_a_ground() throws IOException {
        Set<Object> ids = new HashSet<>();
        for (Map<?, ?> measure : list(read("lamb/trim.yaml"), "measures")) {
            assertThat(ids.add(measure.get("id"))).isTrue();
            assertThat(measure.get("unit")).isIn("mm", "count", "ratio");
            assertThat(measure.get("lowest") != null || measure.get("highest") != null)
                    .isTrue();
            assertThat((String) measure.get("whose")).isNotBlank();
            assertThat(number(measure, "division")).isPositive();
            grounded(measure);
        }
        assertThat(ids).hasSize(22);
    }

    @Test
    void every_scale_has_a_division_and_a_ground() throws IOException {
        for (Map<?, ?> scale : list(read("scales.yaml"), "scales")) {
            assertThat(new Scale("x", "x", number(scale, "division-g"), number(scale, "repeatability-g"))
                            .standardUncertaintyG())
                    .isPositive();
            grounded(scale);
        }
    }

    private static void same(Map<?, ?> row, ReferenceTable.Row typed) {
        assertThat(number(row, "expected")).as(typed.cut()).isEqualTo(typed.expected());
        assertThat(number(row, "sd")).as(typed.cut()).isEqualTo(typed.sd());
        assertThat(row.get("pair")).isEqualTo(typed.pair());
        assertThat(number(row, "pair-spread")).isEqualTo(typed.pairSpread());
        assertThat(row.containsKey("part-of") ? row.get("part-of") : List.of()).isEqualTo(typed.partOf());
        grounded(row);
        List<Basis> bases = list(row, "rests-on").stream()
                .map(ground -> Basis.of((String) ground.get("basis")).orElseThrow())
                .toList();
        assertThat(Basis.weakest(bases)).as(typed.cut()).isEqualTo(typed.basis());
    }

    private static void grounded(Map<?, ?> entry) {
        List<Map<?, ?>> grounds = list(entry, "rests-on");
        assertThat(grounds).isNotEmpty();
        for (Map<?, ?> ground : grounds) {
            assertThat((String) ground.get("fact")).isNotBlank();
            assertThat((String) ground.get("source")).isNotBlank();
            assertThat(Basis.of((String) ground.get("basis"))).isPresent();
        }
    }

    private static Map<?, ?> read(String file) throws IOException {
        String text = Files.readString(ASSESSMENTS.resolve(file));
        assertThat(text).startsWith("# yaml-language-server: $schema=");
        return (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
    }

    private static Map<?, ?> map(Map<?, ?> from, String name) {
        return (Map<?, ?>) from.get(name);
    }

    @SuppressWarnings("unchecked")
    private static List<Map<?, ?>> list(Map<?, ?> from, String name) {
        return (List<Map<?, ?>>) from.get(name);
    }

    private static double number(Map<?, ?> from, String name) {
        return ((Number) from.get(name)).doubleValue();
    }
}
