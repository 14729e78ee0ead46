package ribmark.export;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;

/** The progress report as comma-separated values (RFC 4180: lines end in CRLF, quotes are doubled), one row a step. */
public final class CsvFile {

    /** What the file calls itself when it is fetched (RFC 4180, section 3). */
    public static final String TYPE = "text/csv; charset=utf-8; header=present";

    /** The names of the columns, in order. */
    public static final List<String> COLUMNS = List.of(
            "apprentice",
            "step number",
            "step id",
            "step title",
            "stage",
            "standing",
            "closed sheets unaided",
            "of seen",
            "carcases",
            "assessors",
            "newest",
            "signed off by",
            "signed on",
            "block sheets",
            "content version",
            "evidence head");

    /** What a spreadsheet takes for the beginning of a formula (OWASP, CSV injection). */
    private static final String BEGINS_A_FORMULA = "=+-@\t\r";

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(COLUMNS.toArray(String[]::new))
            .setQuoteMode(QuoteMode.NON_NUMERIC)
            .get();

    private CsvFile() {}

    /** Writes the rows, heads first. */
    public static String of(List<ProgressRow> rows, Receipt receipt) {
        StringWriter text = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (ProgressRow row : rows) {
                printer.printRecord(cells(row, receipt));
            }
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return text.toString();
    }

    private static List<Object> cells(ProgressRow row, Receipt receipt) {
        return List.of(
                guarded(row.apprentice()),
                row.number(),
                guarded(row.stepId()),
                guarded(row.step()),
                guarded(row.stage()),
                guarded(row.standing()),
                row.unaided(),
                row.seen(),
                row.carcases(),
                row.assessors(),
                day(row.newest()),
                guarded(row.signedBy().orElse("")),
                day(row.signedOn()),
                guarded(row.behind().stream().map(ProgressRow.Behind::text).collect(Collectors.joining("; "))),
                guarded(receipt.contentVersion()),
                guarded(receipt.head().toString()));
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    /** Text that a spreadsheet would work out as a formula gets an apostrophe before it; figures are never touched. */
    static String guarded(String text) {
        return !text.isEmpty() && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
