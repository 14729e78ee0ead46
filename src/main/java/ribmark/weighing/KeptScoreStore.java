package ribmark.weighing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.Acting;
import ribmark.people.PeopleStore;
import ribmark.people.Person;
import ribmark.scoring.ReferenceTable;
import ribmark.weighup.VerdictLine;
import ribmark.weighup.WeighUpScore;

/** Every score that was kept, in the database; rows are only ever added. */
public final class KeptScoreStore {

    /** The table that says again what the log says of kept scores. */
    public static final Mirror MIRROR = new Mirror(
            "score-kept",
            "kept_scores",
            List.of("id", "carcase_id", "tables", "table_version", "balance", "yield_hundredths", "cuts", "by_id"));

    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Clock clock;

    /** People give the rows their names; the clock says when a score was kept. */
    public KeptScoreStore(Database database, EvidenceLog log, PeopleStore people, Clock clock) {
        this.database = database;
        this.log = log;
        this.people = people;
        this.clock = clock;
    }

    /** Keeps a score beside those before it. */
    public void keep(UUID carcase, WeighUpScore score, String version, Acting by) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", UUID.randomUUID());
        facts.put("carcase_id", carcase);
        facts.put(
                "tables",
                score.weighUp().tables().stream().map(ReferenceTable::id).collect(Collectors.joining(", ")));
        facts.put("table_version", version);
        facts.put("balance", score.balance().verdict().word());
        facts.put(
                "yield_hundredths",
                score.yieldScore().isPresent()
                        ? Math.round(100 * score.yieldScore().getAsDouble())
                        : null);
        facts.put("cuts", score.cuts().stream().map(VerdictLine::of).collect(Collectors.joining("\n")));
        facts.put("by_id", by.id());
        database.write(handle -> {
            Entry entry = Entry.of("score-kept");
            for (Map.Entry<String, Object> fact : facts.entrySet()) {
                entry = entry.fact(fact.getKey(), fact.getValue());
            }
            facts.put("scored_at", clock.instant());
            facts.put("evidence_seq", log.append(entry));
            handle.createUpdate("insert into kept_scores (" + String.join(", ", facts.keySet()) + ") values (:"
                            + String.join(", :", facts.keySet()) + ")")
                    .bindMap(facts)
                    .execute();
        });
    }

    /** The scores kept of one carcase, the oldest first. */
    public List<KeptScore> of(UUID carcase) {
        Map<UUID, Person> byId = people.byId();
        return database.reading(handle -> handle.createQuery(
                        "select * from kept_scores where carcase_id = :carcase order by evidence_seq")
                .bind("carcase", carcase)
                .map((row, ctx) -> score(row, byId))
                .list());
    }

    private static KeptScore score(ResultSet row, Map<UUID, Person> byId) throws SQLException {
        long hundredths = row.getLong("yield_hundredths");
        OptionalLong yield = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(hundredths);
        String cuts = row.getString("cuts");
        return new KeptScore(
                row.getString("tables"),
                row.getString("table_version"),
                row.getString("balance"),
                yield,
                cuts.isEmpty() ? List.of() : List.of(cuts.split("\n")),
                byId.get(row.getObject("by_id", UUID.class)),
                row.getObject("scored_at", OffsetDateTime.class).toInstant());
    }
}
