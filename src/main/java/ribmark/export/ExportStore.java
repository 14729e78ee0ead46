package ribmark.export;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import ribmark.basics.NotFound;
import ribmark.database.Database;
import ribmark.evidence.Digest;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.Acting;

/** Every report that was taken away, with the very file, so that what the college holds can be compared with it. */
public final class ExportStore {

    /** The table that says again what the log says of exports. */
    public static final List<Mirror> MIRRORS = List.of(new Mirror(
            "progress-exported",
            "exports",
            List.of("id", "by_id", "covers", "subject_id", "format", "row_count", "digest")));

    private final Database database;
    private final EvidenceLog log;

    /** Who took what is written into the log. */
    public ExportStore(Database database, EvidenceLog log) {
        this.database = database;
        this.log = log;
    }

    /** Keeps a file and who took it. */
    public Export keep(Acting by, Taking taking, String content) {
        Export export = new Export(
                UUID.randomUUID(),
                by.id(),
                taking.covers(),
                taking.subject(),
                taking.format(),
                taking.rows().size(),
                Digest.of(content),
                taking.receipt().at().truncatedTo(ChronoUnit.MILLIS));
        database.write(handle -> insert(handle, export, content));
        return export;
    }

    /** The export with this id, or nothing here. */
    public Export find(UUID id) {
        return database.reading(handle -> handle.createQuery("select * from exports where id = :id")
                        .bind("id", id)
                        .map(ExportStore::read)
                        .findOne())
                .orElseThrow(NotFound::new);
    }

    /** Everything taken, newest first. */
    public List<Export> all() {
        return database.reading(handle -> handle.createQuery("select * from exports order by evidence_seq desc")
                .map(ExportStore::read)
                .list());
    }

    /** The file as it was taken. */
    public String content(UUID export) {
        return database.reading(handle -> handle.createQuery("select content from export_files where export_id = :id")
                        .bind("id", export)
                        .mapTo(String.class)
                        .findOne())
                .orElseThrow(NotFound::new);
    }

    private void insert(Handle handle, Export export, String content) {
        long seq = log.append(Entry.of("progress-exported")
                .fact("id", export.id())
                .fact("by_id", export.byId())
                .fact("covers", export.covers().word())
                .fact("subject_id", export.subjectId())
                .fact("format", export.format().word())
                .fact("row_count", export.rows())
                .fact("digest", export.digest()));
        handle.createUpdate("insert into exports"
                        + " (id, by_id, covers, subject_id, format, row_count, digest, taken_at, evidence_seq)"
                        + " values (:id, :by, :covers, :subject, :format, :rows, :digest, :at, :seq)")
                .bind("id", export.id())
                .bind("by", export.byId())
                .bind("covers", export.covers().word())
                .bind("subject", export.subjectId())
                .bind("format", export.format().word())
                .bind("rows", export.rows())
                .bind("digest", export.digest())
                .bind("at", export.takenAt())
                .bind("seq", seq)
                .execute();
        handle.execute("insert into export_files (export_id, content) values (?, ?)", export.id(), content);
    }

    private static Export read(ResultSet row, StatementContext ctx) throws SQLException {
        return new Export(
                row.getObject("id", UUID.class),
                row.getObject("by_id", UUID.class),
                Export.Covers.valueOf(row.getString("covers").toUpperCase(Locale.ROOT)),
                row.getObject("subject_id", UUID.class),
                Export.Format.valueOf(row.getString("format").toUpperCase(Locale.ROOT)),
                row.getInt("row_count"),
                row.getString("digest"),
                row.getObject("taken_at", OffsetDateTime.class).toInstant());
    }
}
