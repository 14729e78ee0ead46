package ribmark.contentfiles;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import ribmark.basics.Words;

/** Reads a table of comma-separated values (RFC 4180) as rows of named texts, each knowing its line. */
public final class CsvRows {

    private CsvRows() {}

    /** The rows as a list, empty when the first row is wrong; each fault is among the findings, its row left out. */
    public static Node read(TextFile text, Findings found) {
        List<Node> rows = new ArrayList<>();
        boolean sound = true;
        try (CSVParser parser = CSVParser.parse(text.text(), CSVFormat.RFC4180)) {
            List<String> names = List.of();
            for (CSVRecord record : parser) {
                int line = (int) parser.getCurrentLineNumber();
                if (names.isEmpty()) {
                    names = record.toList();
                    sound = Columns.check(text, names, found);
                } else if (record.size() == names.size()) {
                    rows.add(row(text, line, names, record));
                } else if (sound) {
                    uneven(text, line, names.size(), record.size(), found);
                }
            }
            if (sound && rows.isEmpty()) {
                found.add("C001", text.line(1), "This table has no rows.", "Write its rows, or take the file away.");
            }
        } catch (IOException | UncheckedIOException e) {
            found.add(
                    "C022",
                    text.line(1),
                    "A quote in this table is opened and never closed.",
                    "Look for a lone quote.");
        }
        return sound ? Node.list(text.line(1), rows) : Node.nothingIn(text.name());
    }

    private static void uneven(TextFile text, int line, int wanted, int has, Findings found) {
        found.add(
                "C022",
                text.line(line),
                "This row has " + Words.count(has, "column", "columns") + " where the first row names "
                        + Words.count(wanted) + ".",
                "Add or take out a comma; a text that holds a comma needs quotes.");
    }

    private static Node row(TextFile text, int line, List<String> names, CSVRecord record) {
        String shown = text.line(line).shown();
        List<Node> keys = new ArrayList<>();
        List<Node> values = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < names.size(); i++) {
            String value = record.get(i);
            int at = Math.max(shown.indexOf(value, from), 0);
            from = Math.min(shown.length(), at + value.length());
            keys.add(Node.scalar(text.line(1), JsonNodeFactory.instance.textNode(names.get(i))));
            values.add(Node.scalar(text.place(line, at + 1, value.length()), JsonNodeFactory.instance.textNode(value)));
        }
        return Node.map(text.place(line, 1, Math.max(1, record.get(0).length())), keys, values);
    }
}
