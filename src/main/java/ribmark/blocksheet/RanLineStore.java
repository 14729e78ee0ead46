package ribmark.blocksheet;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;

/** Where lines really ran, step by step. Rows are only ever added: the newest of a step counts. */
public final class RanLineStore {

    /** The table that says again what the log says of lines that ran elsewhere. */
    public static final List<Mirror> MIRRORS = List.of(new Mirror(
            "line-ran", "ran_lines", List.of("id", "sheet_id", "step_id", "line_id", "towards", "places", "side")));

    /** A row as it stands; without a line it takes back the one before. */
    private record Row(String stepId, Optional<RanLine> ran) {}

    private final Database database;
    private final EvidenceLog log;

    /** The log keeps the facts. */
    public RanLineStore(Database database, EvidenceLog log) {
        this.database = database;
        this.log = log;
    }

    /** Keeps where a line ran; it takes the place of what was recorded at that step before. */
    public void add(UUID sheet, RanLine ran) {
        keep(sheet, ran.stepId(), Optional.of(ran));
    }

    /** Takes back what was recorded at a step. */
    public void undo(UUID sheet, String step) {
        keep(sheet, step, Optional.empty());
    }

    private void keep(UUID sheet, String step, Optional<RanLine> ran) {
        UUID id = UUID.randomUUID();
        String line = ran.map(RanLine::lineId).orElse(null);
        String towards = ran.map(RanLine::towards).orElse(null);
        Integer places = ran.map(RanLine::places).orElse(null);
        String side = ran.map(RanLine::side).orElse(null);
        database.write(handle -> {
            long record = log.append(Entry.of("line-ran")
                    .fact("id", id)
                    .fact("sheet_id", sheet)
                    .fact("step_id", step)
                    .fact("line_id", line)
                    .fact("towards", towards)
                    .fact("places", places)
                    .fact("side", side));
            handle.execute(
                    "insert into ran_lines (id, sheet_id, step_id, line_id, towards, places, side, evidence_seq)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                    id,
                    sheet,
                    step,
                    line,
                    towards,
                    places,
                    side,
                    record);
        });
    }

    /** What holds on a sheet, in the order first recorded. */
    public List<RanLine> allOf(UUID sheet) {
        Map<String, Optional<RanLine>> newest = new LinkedHashMap<>();
        database.reading(handle -> handle.createQuery("select step_id, line_id, towards, places, side from ran_lines"
                                + " where sheet_id = :sheet order by evidence_seq")
                        .bind("sheet", sheet)
                        .map((row, ctx) -> row(row))
                        .list())
                .forEach(row -> newest.put(row.stepId(), row.ran()));
        return newest.values().stream().flatMap(Optional::stream).toList();
    }

    private static Row row(ResultSet row) throws SQLException {
        String step = row.getString("step_id");
        String line = row.getString("line_id");
        return new Row(
                step,
                line == null
                        ? Optional.empty()
                        : Optional.of(new RanLine(
                                step, line, row.getString("towards"), row.getInt("places"), row.getString("side"))));
    }
}
