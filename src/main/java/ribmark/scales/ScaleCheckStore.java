package ribmark.scales;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Weight;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.Acting;
import ribmark.people.PeopleStore;
import ribmark.people.Person;
import ribmark.scales.ScaleCheck.Found;
import ribmark.scoring.Scale;

/** Every check of a scale in the database; rows are only ever added. */
public final class ScaleCheckStore {

    /** The table that says again what the log says of scales. */
    public static final Mirror MIRROR = new Mirror(
            "scale-checked", "scale_checks", List.of("id", "scale_id", "nominal_g", "reading_g", "verdict", "by_id"));

    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Clock clock;

    /** People give the rows their names; the clock says when a scale was checked. */
    public ScaleCheckStore(Database database, EvidenceLog log, PeopleStore people, Clock clock) {
        this.database = database;
        this.log = log;
        this.people = people;
        this.clock = clock;
    }

    /** Keeps what a scale showed under a weight known to be right, and answers how it was found. */
    public Found keep(Scale scale, Weight nominal, Weight reading, Acting by) {
        Found found = Found.of(scale, nominal, reading);
        UUID id = UUID.randomUUID();
        database.write(handle -> {
            long record = log.append(Entry.of("scale-checked")
                    .fact("id", id)
                    .fact("scale_id", scale.id())
                    .fact("nominal_g", nominal.grams())
                    .fact("reading_g", reading.grams())
                    .fact("verdict", found.word())
                    .fact("by_id", by.id()));
            handle.execute(
                    "insert into scale_checks (id, scale_id, nominal_g, reading_g, verdict, by_id, checked_at, evidence_seq)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                    id,
                    scale.id(),
                    nominal.grams(),
                    reading.grams(),
                    found.word(),
                    by.id(),
                    clock.instant(),
                    record);
        });
        return found;
    }

    /** Every check, the newest first. */
    public List<ScaleCheck> all() {
        Map<UUID, Person> byId = people.byId();
        return database.reading(handle -> handle.createQuery("select * from scale_checks order by evidence_seq desc")
                .map((row, ctx) -> check(row, byId))
                .list());
    }

    /** The newest check of each scale, by its id. */
    public Map<String, ScaleCheck> newest() {
        Map<String, ScaleCheck> newest = new LinkedHashMap<>();
        all().forEach(check -> newest.putIfAbsent(check.scale(), check));
        return newest;
    }

    /** Whether a check was made today, by the calendar of the college. */
    public boolean isOfToday(ScaleCheck check, ZoneId zone) {
        return LocalDate.ofInstant(check.at(), zone).equals(LocalDate.ofInstant(clock.instant(), zone));
    }

    private static ScaleCheck check(ResultSet row, Map<UUID, Person> byId) throws SQLException {
        return new ScaleCheck(
                row.getString("scale_id"),
                new Weight(row.getLong("nominal_g")),
                new Weight(row.getLong("reading_g")),
                Found.of(row.getString("verdict")),
                byId.get(row.getObject("by_id", UUID.class)),
                row.getObject("checked_at", OffsetDateTime.class).toInstant());
    }
}
