package ribmark.contentfiles;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeType;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Traps of YAML, by its specification 1.2.2 (the plain scalars of section 10.2, tabs of 6.1, one value for a key of 3.2.1.3). */
class StrictYamlTest {

    private final Findings found = new Findings();

    @Test
    void a_bare_word_stays_text_unless_it_is_a_number_true_false_or_null() {
        Map<String, JsonNodeType> traps = new TreeMap<>();
        for (String text : new String[] {
            "NO",
            "no",
            "Yes",
            "on",
            "off",
            "True",
            "FALSE",
            "~",
            "Null",
            "012",
            "0x1F",
            "0o17",
            "1_000",
            "1e3",
            ".5",
            "5.",
            "+1",
            ".inf",
            ".nan",
            "12:30:45",
            "2026-09-01",
            "1,5",
            "<<",
            "=",
            "3L",
            "-",
            "0.1.2"
        }) {
            traps.put(text, JsonNodeType.STRING);
        }
        traps.put("12", JsonNodeType.NUMBER);
        traps.put("-0.5", JsonNodeType.NUMBER);
        traps.put("true", JsonNodeType.BOOLEAN);
        traps.put("null", JsonNodeType.NULL);
        traps.put("\"12\"", JsonNodeType.STRING);
        traps.put("'true'", JsonNodeType.STRING);
        traps.remove("-");
        traps.forEach((text, kind) -> {
            Node value = read("a: " + text + "\n").orElseThrow().get("a");
            assertThat(value.json().getNodeType()).as(text).isEqualTo(kind);
            if (kind == JsonNodeType.STRING) {
                assertThat(value.text()).isEqualTo(text.replaceAll("[\"']", ""));
            }
        });
        assertThat(found.none()).isTrue();
    }

    @Test
    void what_could_mislead_is_refused_with_its_code() {
        Map<String, String> traps = new TreeMap<>();
        traps.put("a: 1\na: 2\n", "C004");
        traps.put("{a: 1, a: 2}\n", "C004");
        traps.put("'a': 1\n\"a\": 2\n", "C004");
        traps.put("a: {b: 1, b: 1}\n", "C004");
        traps.put("a: &x 1\nb: *x\n", "C005");
        traps.put("a: &x [&y [1, 1], *y, *y]\nb: [*x, *x]\n", "C005");
        traps.put("&x a: 1\n", "C005");
        traps.put("a: !!binary x\n", "C005");
        traps.put("a: !own x\n", "C005");
        traps.put("a: !!str 1\n", "C005");
        traps.put("%YAML 1.1\n---\na: no\n", "C005");
        traps.put("%TAG ! x\n---\na: no\n", "C005");
        traps.put("a:\n\t- b\n", "C003");
        traps.put("\ta: 1\n", "C003");
        traps.put("a: |\n  one\n\ttwo\n", "C003");
        traps.put("a: 1\n---\nb: 2\n", "C006");
        traps.put("a: 1\n...\n---\nb: 2\n", "C006");
        traps.put("", "C001");
        traps.put("# nothing but this\n", "C001");
        traps.put("? [a]\n: b\n", "C002");
        traps.put("a: b: c\n", "C002");
        traps.put("a: 'x\n", "C002");
        traps.put("a: \"\\q\"\n", "C002");
        traps.put("a: [1, 2\n", "C002");
        traps.put("a: {b: 1\nc: 2\n", "C002");
        traps.put("a: 1\nb 2\n", "C002");
        traps.put("a: - b\n", "C002");
        traps.put("a: @b\n", "C002");
        traps.put("a:\n  b: 1\n c: 2\n", "C002");
        traps.put("a: \u0000\n", "C002");
        traps.put("[".repeat(5000), "C002");
        traps.put("- ".repeat(5000) + "a", "C002");
        traps.forEach((text, code) -> {
            Findings findings = new Findings();
            assertThat(TextFile.of("trap.yaml", text.getBytes(StandardCharsets.UTF_8), findings)
                            .flatMap(file -> StrictYaml.read(file, findings)))
                    .as(text)
                    .isEmpty();
            assertThat(findings.list())
                    .as(text)
                    .extracting(ContentProblem::code)
                    .containsExactly(code);
        });
    }

    @Test
    void a_file_larger_than_a_mebibyte_is_refused() {
        assertThat(read("a: " + "x".repeat(TextFile.LARGEST_BYTES))).isEmpty();
        assertThat(found.list()).extracting(ContentProblem::code).containsExactly("C001");
    }

    @Test
    void a_file_that_is_not_utf_8_is_refused_where_it_goes_wrong() {
        byte[] bytes = "a: 1\nb: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(TextFile.of("trap.yaml", bytes, found)).isEmpty();
        assertThat(found.list().get(0).line()).isEqualTo(2);
        assertThat(found.list().get(0).column()).isEqualTo(7);
    }

    @Test
    void a_byte_order_mark_and_other_line_ends_do_no_harm() {
        assertThat(read("\uFEFFa: 1\r\nb: 2\r\n").orElseThrow().get("b").text()).isEqualTo("2");
    }

    @Test
    void every_value_knows_its_line_and_column() {
        Node root = read("a:\n  - {b: one, c: two}\n").orElseThrow();
        Node c = root.get("a").items().get(0).get("c");
        assertThat(c.place().line()).isEqualTo(2);
        assertThat(c.place().column()).isEqualTo(17);
        assertThat(c.place().length()).isEqualTo(3);
    }

    private Optional<Node> read(String text) {
        return TextFile.of("trap.yaml", text.getBytes(StandardCharsets.UTF_8), found)
                .flatMap(file -> StrictYaml.read(file, found));
    }
}
