package ribmark.feedback;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import ribmark.blocksheet.BlockSheet;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;

/** Answers to feedback; each is a row of its own, and none is ever changed. */
public final class ReplyStore {

    /** The table that says again what the log says of answers. */
    public static final Mirror MIRROR =
            new Mirror("feedback-answered", "replies", List.of("id", "sheet_id", "apprentice_id", "agrees"));

    private record Row(UUID id, UUID sheet, String agrees, java.time.Instant at, long record) {

        Reply with(Map<String, String> words) {
            return new Reply(id, sheet, Reply.Agrees.of(agrees).orElseThrow(), words.getOrDefault("words", ""), at);
        }
    }

    private final Database database;
    private final EvidenceLog log;
    private final Clock clock;

    /** The log keeps the words; the clock is the server's. */
    public ReplyStore(Database database, EvidenceLog log, Clock clock) {
        this.database = database;
        this.log = log;
        this.clock = clock;
    }

    /** Keeps what the apprentice of a sheet answers to it. */
    public void add(BlockSheet sheet, Reply.Agrees agrees, String words) {
        UUID id = UUID.randomUUID();
        database.write(handle -> {
            long record = log.append(Entry.of("feedback-answered")
                    .fact("id", id)
                    .fact("sheet_id", sheet.id())
                    .fact("apprentice_id", sheet.apprentice().id())
                    .fact("agrees", agrees.word())
                    .words("words", words));
            handle.execute(
                    "insert into replies (id, sheet_id, apprentice_id, agrees, replied_at, evidence_seq)"
                            + " values (?, ?, ?, ?, ?, ?)",
                    id,
                    sheet.id(),
                    sheet.apprentice().id(),
                    agrees.word(),
                    clock.instant(),
                    record);
        });
    }

    /** The answers to a sheet, oldest first. */
    public List<Reply> allOf(UUID sheet) {
        List<Row> rows = database.reading(handle -> handle.createQuery(
                        "select id, sheet_id, agrees, replied_at, evidence_seq from replies where sheet_id = :sheet"
                                + " order by evidence_seq")
                .bind("sheet", sheet)
                .map(ReplyStore::read)
                .list());
        Map<Long, Map<String, String>> words =
                log.words(rows.stream().map(Row::record).toList());
        return rows.stream()
                .map(row -> row.with(words.getOrDefault(row.record(), Map.of())))
                .toList();
    }

    /** The sheets an apprentice has answered at least once. */
    public Set<UUID> answeredBy(UUID apprentice) {
        return new HashSet<>(database.reading(
                handle -> handle.createQuery("select distinct sheet_id from replies where apprentice_id = :apprentice")
                        .bind("apprentice", apprentice)
                        .mapTo(UUID.class)
                        .list()));
    }

    private static Row read(java.sql.ResultSet row, org.jdbi.v3.core.statement.StatementContext ctx)
            throws java.sql.SQLException {
        return new Row(
                row.getObject("id", UUID.class),
                row.getObject("sheet_id", UUID.class),
                row.getString("agrees"),
                row.getObject("replied_at", OffsetDateTime.class).toInstant(),
                row.getLong("evidence_seq"));
    }
}
