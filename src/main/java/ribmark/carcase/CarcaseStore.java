package ribmark.carcase;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import ribmark.basics.NotFound;
import ribmark.basics.Weight;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.PeopleStore;
import ribmark.people.Person;

/** The carcases in the database. What was recorded is never edited: a later decision, count or weight is a new row. */
public final class CarcaseStore {

    private static final List<String> WEIGHED =
            List.of("id", "carcase_id", "weight_g", "weight_typed", "scale_id", "by_id");

    /** The tables that say again what the log says of carcases. */
    public static final List<Mirror> MIRRORS = List.of(
            new Mirror("carcase-recorded", "carcases", CarcaseRows.FACTS),
            new Mirror("carcase-decided", "carcase_decisions", List.of("id", "carcase_id", "decision", "by_id")),
            new Mirror("carcase-counted", "carcase_counts", List.of("id", "carcase_id", "thoracic", "lumbar", "by_id")),
            new Mirror("carcase-weighed", "carcase_weights", CarcaseStore.WEIGHED));

    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Clock clock;

    /** The clock says when something was recorded. */
    public CarcaseStore(Database database, EvidenceLog log, PeopleStore people, Clock clock) {
        this.database = database;
        this.log = log;
        this.people = people;
        this.clock = clock;
    }

    /** The carcase with this id, or nothing here. */
    public Carcase find(UUID id) {
        return Optional.ofNullable(byId().get(id)).orElseThrow(NotFound::new);
    }

    /** Every carcase by id, for putting names to rows. */
    public Map<UUID, Carcase> byId() {
        return all().stream().collect(Collectors.toMap(Carcase::id, Function.identity()));
    }

    /** Every carcase, the newest first. */
    public List<Carcase> all() {
        return database.reading(handle -> new CarcaseRows(handle, log, people.byId()).all());
    }

    /** Those that may be worked on, the newest first. */
    public List<Carcase> accepted() {
        return all().stream().filter(Carcase::isAccepted).toList();
    }

    /** The carcase that a ticket belongs to, if it was recorded before. */
    public Optional<Carcase> of(Ticket ticket) {
        return all().stream().filter(c -> c.ticket().isOfTheSameAs(ticket)).findFirst();
    }

    /** The number the next carcase gets. */
    public int nextNumber() {
        return database.reading(handle -> handle.createQuery("select coalesce(max(number), 0) + 1 from carcases")
                .mapTo(Integer.class)
                .one());
    }

    /** Records a carcase under the next number, with its first decision. */
    public Carcase add(Intake intake, Decision decision, String reason, Person by) {
        return add(nextNumber(), intake, decision, reason, by);
    }

    /** Records a carcase under a number of the college's own, with its first decision. */
    public Carcase add(int number, Intake intake, Decision decision, String reason, Person by) {
        UUID id = UUID.randomUUID();
        database.write(handle -> {
            CarcaseRows.insert(handle, log, new CarcaseRows.New(id, number, intake, by.id(), clock.instant()));
            insert(handle, id, decision, reason, by);
        });
        return find(id);
    }

    /** Adds a later decision; refuses what may not follow the one before. */
    public void decide(Carcase carcase, Decision decision, String reason, Person by) {
        database.write(handle -> {
            find(carcase.id()).mustAllow(decision);
            insert(handle, carcase.id(), decision, reason, by);
        });
    }

    /** Adds a count; what is not counted yet is left out. */
    public void count(Carcase carcase, OptionalInt thoracic, OptionalInt lumbar, Person by) {
        UUID id = UUID.randomUUID();
        Integer ribs = thoracic.isPresent() ? thoracic.getAsInt() : null;
        Integer loin = lumbar.isPresent() ? lumbar.getAsInt() : null;
        database.write(handle -> handle.execute(
                "insert into carcase_counts (id, carcase_id, thoracic, lumbar, by_id, counted_at, evidence_seq)"
                        + " values (?, ?, ?, ?, ?, ?, ?)",
                id,
                carcase.id(),
                ribs,
                loin,
                by.id(),
                clock.instant(),
                log.append(Entry.of("carcase-counted")
                        .fact("id", id)
                        .fact("carcase_id", carcase.id())
                        .fact("thoracic", ribs)
                        .fact("lumbar", loin)
                        .fact("by_id", by.id()))));
    }

    /** Adds a later weight on the scale it was weighed on before, as typed unless it was taken over, and answers its id. */
    public UUID weighAgain(Carcase carcase, Weight weight, Optional<String> typed, Person by) {
        UUID id = UUID.randomUUID();
        database.write(handle -> handle.execute(
                "insert into carcase_weights (id, carcase_id, weight_g, weight_typed, scale_id, by_id, weighed_at, evidence_seq)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                id,
                carcase.id(),
                weight.grams(),
                typed.orElse(null),
                carcase.scaleId(),
                by.id(),
                clock.instant(),
                log.append(Entry.of("carcase-weighed")
                        .fact("id", id)
                        .fact("carcase_id", carcase.id())
                        .fact("weight_g", weight.grams())
                        .fact("weight_typed", typed.orElse(null))
                        .fact("scale_id", carcase.scaleId())
                        .fact("by_id", by.id()))));
        return id;
    }

    private void insert(Handle handle, UUID carcase, Decision decision, String reason, Person by) {
        UUID id = UUID.randomUUID();
        long record = log.append(Entry.of("carcase-decided")
                .fact("id", id)
                .fact("carcase_id", carcase)
                .fact("decision", decision.word())
                .fact("by_id", by.id())
                .words("reason", reason));
        handle.execute(
                "insert into carcase_decisions (id, carcase_id, decision, by_id, decided_at, evidence_seq)"
                        + " values (?, ?, ?, ?, ?, ?)",
                id,
                carcase,
                decision.word(),
                by.id(),
                clock.instant(),
                record);
    }
}
