package ribmark.export;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The progress report for programs: the receipt once, then one entry a step, nothing rounded. */
public final class JsonFile {

    private static final ObjectMapper JSON = new ObjectMapper();

    private JsonFile() {}

    /** Writes the rows of a person or a group. */
    public static String of(String about, List<ProgressRow> rows, Receipt receipt) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("progressReport", about);
        all.put("taken", receipt.at().toString());
        all.put("contentVersion", receipt.contentVersion());
        all.put(
                "evidence",
                Map.of(
                        "records",
                        receipt.head().records(),
                        "root",
                        receipt.head().root()));
        all.put("rows", rows.stream().map(JsonFile::row).toList());
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(all) + "\n";
        } catch (JsonProcessingException never) {
            throw new IllegalStateException(never);
        }
    }

    private static Map<String, Object> row(ProgressRow row) {
        Map<String, Object> cells = new LinkedHashMap<>();
        cells.put("apprentice", row.apprentice());
        cells.put("number", row.number());
        cells.put("step", row.stepId());
        cells.put("title", row.step());
        cells.put("stage", row.stage());
        cells.put("standing", row.standing());
        cells.put("closedSheetsUnaided", row.unaided());
        cells.put("seen", row.seen());
        cells.put("carcases", row.carcases());
        cells.put("assessors", row.assessors());
        cells.put("newest", row.newest().map(Object::toString).orElse(null));
        cells.put("signedOffBy", row.signedBy().orElse(null));
        cells.put("signedOn", row.signedOn().map(Object::toString).orElse(null));
        cells.put("blockSheets", row.behind().stream().map(JsonFile::behind).toList());
        return cells;
    }

    private static Map<String, Object> behind(ProgressRow.Behind behind) {
        Map<String, Object> cells = new LinkedHashMap<>();
        cells.put("sheet", behind.sheet().toString());
        cells.put("carcase", behind.carcase());
        cells.put("closed", behind.day().toString());
        cells.put("assessor", behind.assessor());
        return cells;
    }
}
