package ribmark.signing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.PeopleStore;
import ribmark.people.Person;

/** Sign-offs and withdrawals: rows are only added, so what was once signed can always be read, with who took it back. */
public final class SignOffStore {

    /** The tables that say again what the log says of sign-offs and withdrawals. */
    public static final List<Mirror> MIRRORS = List.of(
            new Mirror(
                    "step-signed-off", "sign_offs", List.of("id", "apprentice_id", "step_id", "turn", "assessor_id")),
            new Mirror("sign-off-withdrawn", "withdrawals", List.of("id", "sign_off_id", "by_id")));

    private static final String ROWS = "select s.id, s.apprentice_id, s.step_id, s.turn, s.assessor_id, s.signed_at,"
            + " s.evidence_seq, w.by_id, w.withdrawn_at, w.evidence_seq as withdrawal_seq"
            + " from sign_offs s left join withdrawals w on w.sign_off_id = s.id";

    /** A sign-off as it stands in the tables, before names and words are put to it. */
    private record Row(
            UUID id,
            UUID apprentice,
            String step,
            int turn,
            UUID assessor,
            Instant at,
            long seq,
            Optional<Taken> taken) {

        private record Taken(UUID by, Instant at, long seq) {}

        Stream<Long> records() {
            return Stream.concat(Stream.of(seq), taken.stream().map(Taken::seq));
        }
    }

    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Clock clock;

    /** The clock says when somebody signed. */
    public SignOffStore(Database database, EvidenceLog log, PeopleStore people, Clock clock) {
        this.database = database;
        this.log = log;
        this.people = people;
        this.clock = clock;
    }

    /** Everything ever signed, oldest first. */
    public List<SignOff> all() {
        return read(" order by s.evidence_seq", Map.of());
    }

    /** Everything ever signed for an apprentice, oldest first. */
    public List<SignOff> allOf(UUID apprentice) {
        return read(" where s.apprentice_id = :id order by s.evidence_seq", Map.of("id", apprentice));
    }

    /** Everything ever signed for an apprentice on one step, oldest first. */
    public List<SignOff> allOf(UUID apprentice, String step) {
        return allOf(apprentice).stream().filter(s -> s.stepId().equals(step)).toList();
    }

    /** The sign-off with this id, or nothing here. */
    public SignOff find(UUID id) {
        return read(" where s.id = :id", Map.of("id", id)).stream().findFirst().orElseThrow(NotFound::new);
    }

    /** Puts an assessor's name to a step; the sheets are those they read before signing. Nobody signs for themselves. */
    public SignOff sign(UUID apprentice, String step, Person assessor, List<UUID> sheets, String convinced) {
        if (assessor.id().equals(apprentice)) {
            throw new Refused("Nobody signs for themselves. Ask another assessor who watched you.");
        }
        UUID id = UUID.randomUUID();
        int turn = allOf(apprentice, step).size() + 1;
        Entry entry = Entry.of("step-signed-off")
                .fact("id", id)
                .fact("apprentice_id", apprentice)
                .fact("step_id", step)
                .fact("turn", turn)
                .fact("assessor_id", assessor.id())
                .fact(
                        "sheets",
                        String.join(" ", sheets.stream().map(UUID::toString).toList()))
                .words("convinced", convinced);
        database.write(handle -> insert(handle, entry));
        return find(id);
    }

    /** Takes a sign-off back, with a reason; once only. */
    public void withdraw(SignOff signOff, Person by, String reason) {
        signOff.mustStand();
        if (by.id().equals(signOff.apprenticeId())) {
            throw new Refused("Nobody withdraws their own sign-off. Ask an assessor or your tutor.");
        }
        UUID id = UUID.randomUUID();
        database.write(handle -> {
            long seq = log.append(Entry.of("sign-off-withdrawn")
                    .fact("id", id)
                    .fact("sign_off_id", signOff.id())
                    .fact("by_id", by.id())
                    .words("reason", reason));
            handle.createUpdate("insert into withdrawals (id, sign_off_id, by_id, withdrawn_at, evidence_seq)"
                            + " values (:id, :sign_off_id, :by_id, :at, :seq)")
                    .bind("id", id)
                    .bind("sign_off_id", signOff.id())
                    .bind("by_id", by.id())
                    .bind("at", now())
                    .bind("seq", seq)
                    .execute();
        });
    }

    private void insert(Handle handle, Entry entry) {
        long seq = log.append(entry);
        Map<String, String> facts = entry.facts();
        handle.createUpdate(
                        "insert into sign_offs (id, apprentice_id, step_id, turn, assessor_id, signed_at, evidence_seq)"
                                + " values (:id, :apprentice_id, :step_id, :turn, :assessor_id, :at, :seq)")
                .bind("id", UUID.fromString(facts.get("id")))
                .bind("apprentice_id", UUID.fromString(facts.get("apprentice_id")))
                .bind("step_id", facts.get("step_id"))
                .bind("turn", Integer.parseInt(facts.get("turn")))
                .bind("assessor_id", UUID.fromString(facts.get("assessor_id")))
                .bind("at", now())
                .bind("seq", seq)
                .execute();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    private List<SignOff> read(String which, Map<String, UUID> of) {
        List<Row> rows = database.reading(handle -> handle.createQuery(ROWS + which)
                .bindMap(of)
                .map(SignOffStore::row)
                .list());
        Map<UUID, Person> byId = rows.isEmpty() ? Map.of() : people.byId();
        Map<Long, Map<String, String>> words =
                log.words(rows.stream().flatMap(Row::records).toList());
        List<SignOff> all = new ArrayList<>();
        rows.forEach(row -> all.add(whole(row, byId, words)));
        return all;
    }

    private static SignOff whole(Row row, Map<UUID, Person> people, Map<Long, Map<String, String>> words) {
        return new SignOff(
                row.id(),
                row.apprentice(),
                row.step(),
                row.turn(),
                people.get(row.assessor()),
                row.at(),
                word(words, row.seq(), "convinced"),
                row.seq(),
                row.taken()
                        .map(t -> new SignOff.Withdrawal(people.get(t.by()), t.at(), word(words, t.seq(), "reason"))));
    }

    private static String word(Map<Long, Map<String, String>> words, long seq, String field) {
        return words.getOrDefault(seq, Map.of()).getOrDefault(field, "");
    }

    private static Row row(ResultSet row, StatementContext ctx) throws SQLException {
        UUID by = row.getObject("by_id", UUID.class);
        Optional<Row.Taken> taken = by == null
                ? Optional.empty()
                : Optional.of(new Row.Taken(by, moment(row, "withdrawn_at"), row.getLong("withdrawal_seq")));
        return new Row(
                row.getObject("id", UUID.class),
                row.getObject("apprentice_id", UUID.class),
                row.getString("step_id"),
                row.getInt("turn"),
                row.getObject("assessor_id", UUID.class),
                moment(row, "signed_at"),
                row.getLong("evidence_seq"),
                taken);
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
