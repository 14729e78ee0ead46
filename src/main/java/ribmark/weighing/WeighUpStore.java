package ribmark.weighing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.Acting;
import ribmark.people.PeopleStore;
import ribmark.people.Person;
import ribmark.weighing.KeptReading.Struck;
import ribmark.weighing.KeptReading.Typed;

/** Every weight and trim measure in the database. Rows are only ever added: a slip is struck and the piece weighed again. */
public final class WeighUpStore {

    private static final List<String> READ = List.of(
            "id",
            "carcase_id",
            "cut_id",
            "row_id",
            "side",
            "weight_g",
            "weight_typed",
            "tare_g",
            "scale_id",
            "moment",
            "part_of",
            "sheet_id",
            "by_id");
    private static final List<String> MEASURED =
            List.of("id", "sheet_id", "measure_id", "side", "value_typed", "by_id");

    /** The tables that say again what the log says of weights and trim measures. */
    public static final List<Mirror> MIRRORS = List.of(
            new Mirror("weight-read", "readings", READ),
            new Mirror("weight-struck", "reading_strikes", List.of("reading_id", "by_id")),
            new Mirror("trim-measured", "trim_readings", MEASURED));

    private static final String LATER = "later";

    private record Strike(UUID by, Instant at, long record) {}

    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Clock clock;

    /** People give the rows their names; the clock says when something was read. */
    public WeighUpStore(Database database, EvidenceLog log, PeopleStore people, Clock clock) {
        this.database = database;
        this.log = log;
        this.people = people;
        this.clock = clock;
    }

    /** Keeps a reading and answers its id. */
    public UUID keep(UUID carcase, Typed typed, Acting by) {
        UUID id = UUID.randomUUID();
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", id);
        facts.put("carcase_id", carcase);
        facts.put("cut_id", typed.cut());
        facts.put("row_id", typed.row().orElse(null));
        facts.put("side", typed.side().word());
        facts.put("weight_g", typed.weight().grams());
        facts.put("weight_typed", typed.text().orElse(null));
        facts.put("tare_g", typed.tare().map(Weight::grams).orElse(null));
        facts.put("scale_id", typed.scale());
        facts.put("moment", typed.later() ? LATER : "expected");
        facts.put("part_of", typed.partOf().orElse(null));
        facts.put("sheet_id", typed.sheet().orElse(null));
        facts.put("by_id", by.id());
        database.write(handle -> insert(handle, "weight-read", "readings", facts, "observed_at", "recorded_at"));
        return id;
    }

    /** Takes a reading off the list, with the reason. */
    public void strike(KeptReading reading, String why, Acting by) {
        database.write(handle -> {
            if (!find(reading.carcase(), reading.id()).map(KeptReading::counts).orElse(false)) {
                throw new Refused("This reading is off the list already.");
            }
            long record = log.append(Entry.of("weight-struck")
                    .fact("reading_id", reading.id())
                    .fact("by_id", by.id())
                    .words("why", why));
            handle.execute(
                    "insert into reading_strikes (reading_id, by_id, struck_at, evidence_seq) values (?, ?, ?, ?)",
                    reading.id(),
                    by.id(),
                    clock.instant(),
                    record);
        });
    }

    /** Keeps a trim measure as typed; nothing typed takes the one before back. */
    public void measure(UUID sheet, String measure, Side side, Optional<String> value, Acting by) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", UUID.randomUUID());
        facts.put("sheet_id", sheet);
        facts.put("measure_id", measure);
        facts.put("side", side.word());
        facts.put("value_typed", value.orElse(null));
        facts.put("by_id", by.id());
        database.write(handle -> insert(handle, "trim-measured", "trim_readings", facts, "measured_at"));
    }

    private void insert(Handle handle, String kind, String table, Map<String, Object> facts, String... moments) {
        Entry entry = Entry.of(kind);
        for (Map.Entry<String, Object> fact : facts.entrySet()) {
            entry = entry.fact(fact.getKey(), fact.getValue());
        }
        Map<String, Object> columns = new LinkedHashMap<>(facts);
        for (String moment : moments) {
            columns.put(moment, clock.instant());
        }
        columns.put("evidence_seq", log.append(entry));
        String names = String.join(", ", columns.keySet());
        String values = ":" + String.join(", :", columns.keySet());
        handle.createUpdate("insert into " + table + " (" + names + ") values (" + values + ")")
                .bindMap(columns)
                .execute();
    }

    /** One reading of a carcase, struck or not. */
    public Optional<KeptReading> find(UUID carcase, UUID id) {
        return of(carcase).stream().filter(reading -> reading.id().equals(id)).findFirst();
    }

    /** Every reading of a carcase in the order taken, those off the list too. */
    public List<KeptReading> of(UUID carcase) {
        return database.reading(handle -> {
            Map<UUID, Person> byId = people.byId();
            Map<UUID, Struck> struck = struck(handle, carcase, byId);
            return handle.createQuery("select * from readings where carcase_id = :carcase order by evidence_seq")
                    .bind("carcase", carcase)
                    .map((row, ctx) -> new KeptReading(
                            id(row, "id"),
                            carcase,
                            typed(row),
                            byId.get(id(row, "by_id")),
                            moment(row, "recorded_at"),
                            row.getLong("evidence_seq"),
                            Optional.ofNullable(struck.get(id(row, "id")))))
                    .list();
        });
    }

    /** The scale somebody used last. */
    public Optional<String> lastScale(UUID person) {
        return database.reading(handle -> handle.createQuery(
                        "select scale_id from readings where by_id = :person order by evidence_seq desc limit 1")
                .bind("person", person)
                .mapTo(String.class)
                .findOne());
    }

    /** The trim measures of some sheets that count, in the order first taken. */
    public List<KeptTrim> trimOf(Collection<UUID> sheets) {
        if (sheets.isEmpty()) {
            return List.of();
        }
        Map<List<Object>, KeptTrim> newest = new LinkedHashMap<>();
        database.reading(handle -> handle.createQuery(
                                "select * from trim_readings where sheet_id in (<sheets>) order by evidence_seq")
                        .bindList("sheets", List.copyOf(sheets))
                        .map((row, ctx) -> new KeptTrim(
                                id(row, "sheet_id"),
                                row.getString("measure_id"),
                                side(row),
                                row.getString("value_typed")))
                        .list())
                .forEach(trim -> newest.put(List.of(trim.sheet(), trim.measure(), trim.side()), trim));
        List<KeptTrim> counting = new ArrayList<>(newest.values());
        counting.removeIf(trim -> trim.value() == null);
        return counting;
    }

    private Map<UUID, Struck> struck(Handle handle, UUID carcase, Map<UUID, Person> byId) {
        Map<UUID, Strike> strikes = new HashMap<>();
        handle.createQuery("select s.* from reading_strikes s join readings r on r.id = s.reading_id"
                        + " where r.carcase_id = :carcase")
                .bind("carcase", carcase)
                .map((row, ctx) -> strikes.put(
                        id(row, "reading_id"),
                        new Strike(id(row, "by_id"), moment(row, "struck_at"), row.getLong("evidence_seq"))))
                .list();
        Map<Long, Map<String, String>> words =
                log.words(strikes.values().stream().map(Strike::record).toList());
        Map<UUID, Struck> struck = new HashMap<>();
        strikes.forEach((reading, strike) -> struck.put(
                reading,
                new Struck(
                        words.getOrDefault(strike.record(), Map.of()).getOrDefault("why", ""),
                        byId.get(strike.by()),
                        strike.at())));
        return struck;
    }

    private static Typed typed(ResultSet row) throws SQLException {
        long tare = row.getLong("tare_g");
        Optional<Weight> tray = row.wasNull() ? Optional.empty() : Optional.of(new Weight(tare));
        return new Typed(
                row.getString("cut_id"),
                Optional.ofNullable(row.getString("row_id")),
                side(row),
                new Weight(row.getLong("weight_g")),
                tray,
                row.getString("scale_id"),
                LATER.equals(row.getString("moment")),
                Optional.ofNullable(row.getString("part_of")),
                Optional.ofNullable(id(row, "sheet_id")),
                Optional.ofNullable(row.getString("weight_typed")));
    }

    private static Side side(ResultSet row) throws SQLException {
        return Side.of(row.getString("side")).orElseThrow();
    }

    private static UUID id(ResultSet row, String column) throws SQLException {
        return row.getObject(column, UUID.class);
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
