package ribmark.export;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.Property.holds;
import static ribmark.testing.Property.text;

import java.io.StringReader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import ribmark.evidence.Head;

/** What holds for every report, whatever people are called and whatever steps are named. */
class CsvPropertiesTest {

    private static final String HOSTILE = "=+-@\t\r\n\",;' a1é李'\\";
    private static final Receipt RECEIPT = new Receipt(new Head(1, "9f".repeat(32)), "4c".repeat(32), Instant.EPOCH);

    private static ProgressRow row(String name, String title, int number) {
        return new ProgressRow(
                name,
                number,
                "a-step",
                title,
                "stage",
                "ready",
                1,
                2,
                3,
                4,
                Optional.empty(),
                Optional.of(title),
                Optional.empty(),
                List.of());
    }

    private static List<CSVRecord> read(String file) throws Exception {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(new StringReader(file))) {
            return parser.getRecords();
        }
    }

    @Test
    void whatever_stands_in_a_cell_is_read_back_and_never_begins_a_formula() {
        holds(random -> {
            String name = text(random, HOSTILE, 8);
            String title = text(random, HOSTILE, 8);
            CSVRecord read =
                    read(CsvFile.of(List.of(row(name, title, 1)), RECEIPT)).get(0);
            for (String[] cell : new String[][] {
                {read.get("apprentice"), name}, {read.get("step title"), title}, {read.get("signed off by"), title}
            }) {
                assertThat(cell[0]).isIn(cell[1], "'" + cell[1]);
                assertThat(cell[0].isEmpty() || "=+-@\t\r".indexOf(cell[0].charAt(0)) < 0)
                        .as(cell[0])
                        .isTrue();
            }
        });
    }

    @Test
    void there_is_one_row_for_each_step_in_their_order_with_as_many_cells_as_columns() {
        holds(random -> {
            List<ProgressRow> rows = new ArrayList<>();
            for (int n = random.nextInt(5); n > 0; n--) {
                rows.add(row(text(random, HOSTILE, 4), text(random, HOSTILE, 4), random.nextInt(99)));
            }
            List<CSVRecord> read = read(CsvFile.of(rows, RECEIPT));
            assertThat(read)
                    .extracting(record -> Integer.valueOf(record.get("step number")))
                    .isEqualTo(rows.stream().map(ProgressRow::number).toList());
            assertThat(read).allMatch(record -> record.size() == CsvFile.COLUMNS.size());
        });
    }
}
