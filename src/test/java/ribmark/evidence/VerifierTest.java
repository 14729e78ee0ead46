package ribmark.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ribmark.database.Database;
import ribmark.database.DatabaseUrl;
import ribmark.database.Keys;
import ribmark.testing.MovableClock;

/** S-16: whatever is done to the tables behind the program's back, the check names the first record that does not fit. */
class VerifierTest {

    private static final int RECORDS = 40;
    private static final int ROUNDS = Integer.getInteger("drills", 200);

    private final DatabaseUrl url = DatabaseUrl.throwAway();
    private final Keys keys = Keys.fresh();
    private final Database database = Database.open(url, keys);
    private final EvidenceLog log = new EvidenceLog(database, new MovableClock(), () -> "v1");
    private final Verifier verifier = new Verifier(database, log, List.of(), List.of());
    private Head head;

    @BeforeEach
    void write() {
        for (int n = 0; n < RECORDS; n++) {
            log.append(Entry.of("step-marked")
                    .fact("mark", n % 2 == 0 ? "unaided" : "prompted")
                    .words("words", "said " + n));
        }
        head = log.head();
    }

    @AfterEach
    void stop() {
        database.close();
    }

    @Test
    void an_untouched_log_holds_and_its_head_is_the_one_reckoned_anew() {
        Verification found = verifier.verify(Optional.of(head));

        assertThat(found.holds()).isTrue();
        assertThat(found.records()).isEqualTo(RECORDS);
        assertThat(found.head())
                .isEqualTo(
                        Head.over(log.all().stream().map(Kept::digest).toList()).root());
    }

    @Test
    void every_tampering_is_found_and_the_first_bad_record_named() throws SQLException {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            int at = 2 + random.nextInt(RECORDS - 3);
            int kind = random.nextInt(7);
            try (Connection owner = DriverManager.getConnection(url.text(), "OWNER", keys.owner())) {
                owner.setAutoCommit(false);
                tamper(owner, kind, at);
                Verification found = asSeenBy(owner);
                assertThat(found.holds())
                        .as("seed %d, kind %d, record %d", seed, kind, at)
                        .isFalse();
                assertThat(found.firstThatDoesNotFit())
                        .as("seed %d, kind %d, record %d: %s", seed, kind, at, found.why())
                        .isIn(expected(kind, at));
                restore(owner);
            }
        }
    }

    /** Commits the tampering, looks, and leaves undoing to {@link #restore}. */
    private Verification asSeenBy(Connection owner) throws SQLException {
        owner.commit();
        return verifier.verify(Optional.of(head));
    }

    private static List<Long> expected(int kind, int at) {
        return switch (kind) {
            case 4 -> List.of((long) at + 1, (long) at);
            case 5 -> List.of(RECORDS + 1L);
            case 6 -> List.of((long) RECORDS);
            default -> List.of((long) at, (long) at + 1);
        };
    }

    private static void tamper(Connection owner, int kind, int at) throws SQLException {
        try (Statement sql = owner.createStatement()) {
            sql.execute("drop table if exists kept_aside");
            sql.execute("drop table if exists words_aside");
            sql.execute("create table kept_aside as select * from evidence");
            sql.execute("create table words_aside as select * from evidence_words");
            switch (kind) {
                case 0 ->
                    sql.execute("update evidence set text = replace(text, 'said', 'Said') || ' ' where seq = " + at);
                case 1 -> sql.execute("update evidence set kind = 'step-signed' where seq = " + at);
                case 2 -> sql.execute("update evidence_words set words = words || '.' where seq = " + at);
                case 3 -> {
                    sql.execute("delete from evidence_words where seq = " + at);
                    sql.execute("delete from evidence where seq = " + at);
                }
                case 4 -> sql.execute("update evidence set digest = '" + Digest.of("x" + at) + "' where seq = " + at);
                case 5 ->
                    sql.execute("insert into evidence select " + (RECORDS + 1) + ", recorded_at, kind, text, '"
                            + "a".repeat(64) + "', '" + "b".repeat(64) + "' from evidence where seq = 1");
                default -> {
                    sql.execute("delete from evidence_words where seq >= " + RECORDS);
                    sql.execute("delete from evidence where seq >= " + RECORDS);
                }
            }
        }
    }

    private static void restore(Connection owner) throws SQLException {
        try (Statement sql = owner.createStatement()) {
            sql.execute("delete from evidence_words");
            sql.execute("delete from evidence");
            sql.execute("insert into evidence select * from kept_aside");
            sql.execute("insert into evidence_words select * from words_aside");
            owner.commit();
        }
    }

    @Test
    void long_words_that_records_name_by_their_digest_are_looked_at_too() throws SQLException {
        Verifier check = new Verifier(
                database, log, List.of(), List.of(new Quoted("step-marked", "wording", "content_wordings")));
        assertThat(check.verify(Optional.empty()).holds()).isTrue();
        String digest = Digest.of("Cut the fore line");
        log.append(Entry.of("step-marked").fact("mark", "unaided").fact("wording", digest));
        assertThat(check.verify(Optional.empty()).firstThatDoesNotFit()).isEqualTo(RECORDS + 1L);

        try (Connection owner = DriverManager.getConnection(url.text(), "OWNER", keys.owner());
                Statement sql = owner.createStatement()) {
            sql.execute("insert into content_wordings values ('" + digest + "', '" + digest
                    + "', 'Cut the fore line', current_timestamp)");
            assertThat(check.verify(Optional.empty()).holds()).isTrue();
            sql.execute("update content_wordings set words = 'Cut any line'");
            assertThat(check.verify(Optional.empty()).why())
                    .isEqualTo("The words that record " + (RECORDS + 1)
                            + " names in content_wordings were altered or are missing.");
        }
    }

    @Test
    void a_log_written_anew_with_all_digests_right_is_caught_by_a_head_kept_elsewhere() {
        Database other = Database.open(DatabaseUrl.throwAway(), Keys.fresh());
        try (other) {
            EvidenceLog anew = new EvidenceLog(other, new MovableClock(), () -> "v1");
            for (int n = 0; n < RECORDS; n++) {
                anew.append(Entry.of("step-marked").fact("mark", "unaided").words("words", "said " + n));
            }
            Verifier check = new Verifier(other, anew, List.of(), List.of());

            assertThat(check.verify(Optional.empty()).holds()).isTrue();
            assertThat(check.verify(Optional.of(head)).holds()).isFalse();
        }
    }

    @Test
    void erased_words_leave_the_chain_whole() throws SQLException {
        try (Connection owner = DriverManager.getConnection(url.text(), "OWNER", keys.owner());
                Statement sql = owner.createStatement()) {
            sql.execute("delete from evidence_words where seq = 7");
        }

        assertThat(verifier.verify(Optional.of(head)).holds()).isTrue();
        assertThat(log.words(7)).isEmpty();
        assertThat(log.words(8)).containsEntry("words", "said 7");
    }
}
