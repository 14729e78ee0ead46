package ribmark.blocksheet;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import ribmark.basics.Side;
import ribmark.carcase.Carcase;
import ribmark.evidence.EvidenceLog;
import ribmark.people.Person;

/** Reads the rows of block sheets and puts them together, a few questions for however many sheets. */
final class BlockSheetRows {

    /** A row of its own, before anything is put to it. */
    record Opened(UUID id, UUID carcase, UUID apprentice, UUID assessor, String breakdown, Instant at) {

        static Opened read(ResultSet row, StatementContext ctx) throws SQLException {
            return new Opened(
                    BlockSheetRows.id(row, "id"),
                    BlockSheetRows.id(row, "carcase_id"),
                    BlockSheetRows.id(row, "apprentice_id"),
                    BlockSheetRows.id(row, "assessor_id"),
                    row.getString("breakdown_id"),
                    moment(row, "opened_at"));
        }
    }

    private record Kept(
            UUID id,
            Place place,
            String mark,
            String fault,
            Instant observedAt,
            Instant recordedAt,
            long seq,
            String wording) {}

    private record Closed(Instant at, LocalDate nextDay, long seq) {}

    private interface Reading<T> {
        T of(ResultSet row) throws SQLException;
    }

    private final Handle handle;
    private final EvidenceLog log;
    private final WordingStore wordings;

    BlockSheetRows(Handle handle, EvidenceLog log, WordingStore wordings) {
        this.handle = handle;
        this.log = log;
        this.wordings = wordings;
    }

    /** The sheets of these rows, in their order. */
    List<BlockSheet> sheets(Collection<Opened> rows, Map<UUID, Carcase> carcases, Map<UUID, Person> people) {
        List<UUID> ids = rows.stream().map(Opened::id).toList();
        Map<UUID, List<Place>> scopes = each("sheet_steps", "place", ids, BlockSheetRows::place);
        Map<UUID, List<Mark>> marks = marks(ids);
        Map<UUID, List<Answer>> answers = each("answers", "evidence_seq", ids, BlockSheetRows::answer);
        Map<UUID, Closing> closings = closings(ids);
        return rows.stream()
                .map(row -> new BlockSheet(
                        row.id(),
                        row.breakdown(),
                        carcases.get(row.carcase()),
                        people.get(row.apprentice()),
                        people.get(row.assessor()),
                        row.at(),
                        new LinkedHashSet<>(scopes.getOrDefault(row.id(), List.of())),
                        inOrder(marks.getOrDefault(row.id(), List.of()), scopes.getOrDefault(row.id(), List.of())),
                        answers.getOrDefault(row.id(), List.of()),
                        Optional.ofNullable(closings.get(row.id()))))
                .toList();
    }

    Optional<Draft> draft(UUID sheet) {
        return handle.createQuery("select next_day, evidence_seq from closing_drafts where sheet_id = :sheet"
                        + " order by evidence_seq desc limit 1")
                .bind("sheet", sheet)
                .map((row, ctx) -> Draft.of(
                        log.words(row.getLong("evidence_seq")),
                        Optional.ofNullable(row.getString("next_day")).orElse("")))
                .findOne();
    }

    private static List<Mark> inOrder(List<Mark> marks, List<Place> scope) {
        return marks.stream()
                .sorted(java.util.Comparator.comparingInt(mark -> scope.indexOf(mark.place())))
                .toList();
    }

    /** The newest mark of every place; one taken back is none. */
    private Map<UUID, List<Mark>> marks(List<UUID> ids) {
        Map<UUID, List<Kept>> newest = new HashMap<>();
        each("marks", "evidence_seq", ids, BlockSheetRows::kept)
                .forEach((sheet, rows) -> newest.put(sheet, counting(rows)));
        Set<Long> records = new LinkedHashSet<>();
        newest.values().forEach(rows -> rows.forEach(row -> records.add(row.seq())));
        Map<Long, Map<String, String>> words = log.words(records);
        Map<UUID, List<Mark>> marks = new HashMap<>();
        newest.forEach((sheet, rows) -> marks.put(
                sheet,
                rows.stream()
                        .map(row -> mark(row, words.getOrDefault(row.seq(), Map.of())))
                        .toList()));
        return marks;
    }

    private static List<Kept> counting(List<Kept> rows) {
        Map<Place, Kept> last = new LinkedHashMap<>();
        rows.forEach(row -> last.put(row.place(), row));
        return last.values().stream().filter(row -> row.mark() != null).toList();
    }

    private Mark mark(Kept row, Map<String, String> words) {
        return new Mark(
                row.id(),
                row.place().stepId(),
                row.place().side(),
                ribmark.competence.Mark.of(row.mark()).orElseThrow(),
                Optional.ofNullable(row.fault()),
                words.getOrDefault("words", ""),
                row.observedAt(),
                row.recordedAt(),
                row.seq(),
                wordings.find(handle, row.wording(), row.place().stepId()));
    }

    private Map<UUID, Closing> closings(List<UUID> ids) {
        Map<UUID, List<Closed>> rows = each(
                "closings",
                "evidence_seq",
                ids,
                row -> new Closed(
                        moment(row, "closed_at"),
                        row.getObject("next_day", LocalDate.class),
                        row.getLong("evidence_seq")));
        Map<Long, Map<String, String>> words =
                log.words(rows.values().stream().map(r -> r.get(0).seq()).toList());
        Map<UUID, Closing> closings = new HashMap<>();
        rows.forEach((sheet, row) -> closings.put(sheet, closing(row.get(0), words::get)));
        return closings;
    }

    private static Closing closing(Closed row, Function<Long, Map<String, String>> words) {
        Map<String, String> said = Optional.ofNullable(words.apply(row.seq())).orElse(Map.of());
        Draft draft = Draft.of(said, "");
        return new Closing(
                row.at(), row.nextDay(), draft.well(), draft.change(), draft.next(), draft.stages(), row.seq());
    }

    private <T> Map<UUID, List<T>> each(String table, String order, List<UUID> ids, Reading<T> reading) {
        Map<UUID, List<T>> all = new HashMap<>();
        handle.createQuery("select * from " + table + " where sheet_id in (<ids>) order by " + order)
                .bindList("ids", ids)
                .map((row, ctx) -> all.computeIfAbsent(id(row, "sheet_id"), sheet -> new ArrayList<>())
                        .add(reading.of(row)))
                .list();
        return all;
    }

    private static Place place(ResultSet row) throws SQLException {
        return new Place(
                row.getString("step_id"), Side.of(row.getString("side")).orElseThrow());
    }

    private static Kept kept(ResultSet row) throws SQLException {
        return new Kept(
                id(row, "id"),
                place(row),
                row.getString("mark"),
                row.getString("fault_id"),
                moment(row, "observed_at"),
                moment(row, "recorded_at"),
                row.getLong("evidence_seq"),
                row.getString("wording"));
    }

    private static Answer answer(ResultSet row) throws SQLException {
        return new Answer(
                id(row, "id"),
                row.getString("step_id"),
                row.getString("question_id"),
                Answer.Known.of(row.getString("answered")).orElseThrow());
    }

    private static UUID id(ResultSet row, String column) throws SQLException {
        return row.getObject(column, UUID.class);
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
