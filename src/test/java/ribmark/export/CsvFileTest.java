package ribmark.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribmark.evidence.Head;

class CsvFileTest {

    private static final Receipt RECEIPT =
            new Receipt(new Head(812, "9f".repeat(32)), "4c".repeat(32), Instant.parse("2026-11-25T16:40:00Z"));

    @Test
    void what_was_written_is_read_back_by_name() throws IOException {
        CSVRecord row = only(CsvFile.of(List.of(rowOf("Ada")), RECEIPT));

        assertThat(row.get("apprentice")).isEqualTo("Ada");
        assertThat(row.get("step number")).isEqualTo("8");
        assertThat(row.get("standing")).isEqualTo("signed off");
        assertThat(row.get("closed sheets unaided")).isEqualTo("3");
        assertThat(row.get("of seen")).isEqualTo("4");
        assertThat(row.get("newest")).isEqualTo("2026-11-25");
        assertThat(row.get("signed on")).isEmpty();
        assertThat(row.get("block sheets"))
                .isEqualTo("lamb 31, 2026-11-25, Maeve, sheet 00000000-0000-0001-0000-000000000002");
        assertThat(row.get("content version")).isEqualTo(RECEIPT.contentVersion());
        assertThat(row.get("evidence head")).isEqualTo(RECEIPT.head().toString());
    }

    /** RFC 4180, section 2: lines end in CRLF, quotes inside a field are doubled, line breaks may stand in one. */
    @Test
    void quotes_commas_and_line_breaks_come_through_whole() throws IOException {
        String hostile = "Ada \"the knife\", of\r\nFernside; Ünal 李";
        String file = CsvFile.of(List.of(rowOf(hostile)), RECEIPT);

        assertThat(only(file).get("apprentice")).isEqualTo(hostile);
        assertThat(file).endsWith("\r\n").contains("\"\"the knife\"\"");
    }

    /** The characters are those named by OWASP under CSV injection. */
    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(\"x\")", "+1", "-2+3", "@SUM(A1)", "\t=1", "\r=1"})
    void a_name_that_a_spreadsheet_would_work_out_gets_an_apostrophe(String name) throws IOException {
        assertThat(only(CsvFile.of(List.of(rowOf(name)), RECEIPT)).get("apprentice"))
                .isEqualTo("'" + name);
    }

    @Test
    void figures_are_never_guarded_and_never_quoted() {
        String line = CsvFile.of(List.of(rowOf("Ada")), RECEIPT).split("\r\n")[1];

        assertThat(line).startsWith("\"Ada\",8,").contains(",3,4,3,2,");
    }

    @Test
    void the_first_line_names_every_column_once() {
        String head = CsvFile.of(List.of(), RECEIPT);

        assertThat(head.strip().replace("\"", "").split(",")).containsExactlyElementsOf(CsvFile.COLUMNS);
        assertThat(CsvFile.COLUMNS).doesNotHaveDuplicates();
    }

    private static ProgressRow rowOf(String name) {
        return new ProgressRow(
                name,
                8,
                "a-step",
                "Cut the line",
                "Wholesale",
                "signed off",
                3,
                4,
                3,
                2,
                Optional.of(LocalDate.parse("2026-11-25")),
                Optional.of("Maeve"),
                Optional.empty(),
                List.of(new ProgressRow.Behind(new UUID(1, 2), "lamb 31", LocalDate.parse("2026-11-25"), "Maeve")));
    }

    private static CSVRecord only(String file) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = format.parse(new StringReader(file))) {
            List<CSVRecord> all = parser.getRecords();
            assertThat(all).hasSize(1);
            return all.get(0);
        }
    }
}
