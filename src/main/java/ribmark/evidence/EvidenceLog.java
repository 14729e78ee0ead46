package ribmark.evidence;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import ribmark.database.Database;

/** Writes records one after the other, each carrying the digest of the one before. Nothing here changes or removes one. */
public final class EvidenceLog {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final String COLUMNS = "select seq, recorded_at, kind, text, digest_before, digest from evidence";

    private final Database database;
    private final Clock clock;
    private final Supplier<String> contentVersion;
    private final MerkleTree tree = new MerkleTree();
    private final ThreadLocal<String> key = ThreadLocal.withInitial(() -> "");

    /** The clock is the server's; the version is that of the content a mark is given under. */
    public EvidenceLog(Database database, Clock clock, Supplier<String> contentVersion) {
        this.database = database;
        this.clock = clock;
        this.contentVersion = contentVersion;
    }

    /** Writes one record, as part of the writing under way, and answers its place in the log. */
    public long append(Entry entry) {
        return database.writing(handle -> insert(handle, entry));
    }

    /** The words that people wrote, by record; a record without words, or with erased ones, answers none. */
    public Map<Long, Map<String, String>> words(Collection<Long> records) {
        if (records.isEmpty()) {
            return Map.of();
        }
        Map<Long, Map<String, String>> all = new HashMap<>();
        database.reading(handle -> handle.createQuery(
                        "select seq, field, words from evidence_words where seq in (<seqs>)")
                .bindList("seqs", List.copyOf(records))
                .map((row, ctx) -> all.computeIfAbsent(row.getLong("seq"), seq -> new TreeMap<>())
                        .put(row.getString("field"), row.getString("words")))
                .list());
        return all;
    }

    /** The words of one record. */
    public Map<String, String> words(long record) {
        return words(List.of(record)).getOrDefault(record, Map.of());
    }

    /** All records, oldest first. */
    public List<Kept> all() {
        return database.reading(handle -> handle.createQuery(COLUMNS + " order by seq")
                .map(EvidenceLog::read)
                .list());
    }

    /** The newest records, newest first. */
    public List<Kept> newest(int most) {
        return database.reading(handle -> handle.createQuery(COLUMNS + " order by seq desc limit :most")
                .bind("most", most)
                .map(EvidenceLog::read)
                .list());
    }

    /** The head over everything written so far. */
    public Head head() {
        return Head.over(database.reading(handle -> handle.createQuery("select digest from evidence order by seq")
                .mapTo(String.class)
                .list()));
    }

    /** Marks everything written by this work with the key of the form that asked for it. */
    void under(String formKey, Runnable work) {
        key.set(formKey);
        try {
            work.run();
        } finally {
            key.remove();
        }
    }

    private long insert(Handle handle, Entry entry) {
        Map<String, String> salts = new HashMap<>();
        Map<String, String> digests = new HashMap<>();
        entry.words().forEach((field, text) -> {
            salts.put(field, salt());
            digests.put(field, Digest.of(salts.get(field) + "\n" + text));
        });
        Kept kept = Kept.of(entry, digests, setting(handle));
        handle.createUpdate("insert into evidence (seq, recorded_at, kind, text, digest_before, digest)"
                        + " values (:seq, :at, :kind, :text, :before, :digest)")
                .bind("seq", kept.seq())
                .bind("at", kept.recordedAt())
                .bind("kind", kept.kind())
                .bind("text", kept.text())
                .bind("before", kept.digestBefore())
                .bind("digest", kept.digest())
                .execute();
        entry.words()
                .forEach((field, text) -> handle.execute(
                        "insert into evidence_words (seq, field, salt, words) values (?, ?, ?, ?)",
                        kept.seq(),
                        field,
                        salts.get(field),
                        text));
        return kept.seq();
    }

    private Kept.Setting setting(Handle handle) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        return handle.createQuery(COLUMNS + " order by seq desc limit 1")
                .map(EvidenceLog::read)
                .findOne()
                .map(last -> new Kept.Setting(last.seq() + 1, now, key.get(), contentVersion.get(), last.digest()))
                .orElseGet(() -> new Kept.Setting(1, now, key.get(), contentVersion.get(), Digest.NOTHING));
    }

    static Kept read(java.sql.ResultSet row, org.jdbi.v3.core.statement.StatementContext ctx)
            throws java.sql.SQLException {
        return new Kept(
                row.getLong("seq"),
                row.getObject("recorded_at", java.time.OffsetDateTime.class).toInstant(),
                row.getString("kind"),
                row.getString("text"),
                row.getString("digest_before"),
                row.getString("digest"));
    }

    private static String salt() {
        byte[] bytes = new byte[16];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}
