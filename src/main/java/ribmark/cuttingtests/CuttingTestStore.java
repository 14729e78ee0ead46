package ribmark.cuttingtests;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.basics.Refused;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.Acting;
import ribmark.people.PeopleStore;
import ribmark.people.Person;
import ribmark.scoring.Conditions;

/** Every cutting test in the database. Rows are only ever added: one taken back is a later row. */
public final class CuttingTestStore {

    /** The table that says again what the log says of cutting tests. */
    public static final Mirror MIRROR = new Mirror(
            "cutting-test-told",
            "cutting_tests",
            List.of("id", "carcase_id", "counts", "percents", "fat_class", "kidneys", "cold_g", "by_id"));

    private static final String WORDS = "words";

    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Clock clock;

    /** People give the rows their names; the clock says when a test was told. */
    public CuttingTestStore(Database database, EvidenceLog log, PeopleStore people, Clock clock) {
        this.database = database;
        this.log = log;
        this.people = people;
        this.clock = clock;
    }

    /** Enters what a competent butcher's carcase came to; the words say who cut it. */
    public void enter(UUID carcase, Map<String, Double> percents, Conditions conditions, String who, Acting by) {
        if (of(carcase).filter(CuttingTest::counts).isPresent()) {
            throw new Refused("This carcase counts as a cutting test already.");
        }
        tell(carcase, true, percents, conditions, who, by);
    }

    /** Takes a test back; the words say why. */
    public void takeBack(CuttingTest test, String why, Acting by) {
        if (!of(test.carcase()).map(CuttingTest::counts).orElse(false)) {
            throw new Refused("This carcase does not count as a cutting test any more.");
        }
        tell(test.carcase(), false, test.percents(), test.conditions(), why, by);
    }

    private void tell(
            UUID carcase,
            boolean counts,
            Map<String, Double> percents,
            Conditions conditions,
            String words,
            Acting by) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", UUID.randomUUID());
        facts.put("carcase_id", carcase);
        facts.put("counts", counts ? "yes" : "no");
        facts.put("percents", written(percents));
        facts.put("fat_class", conditions.fatClass().orElse(null));
        facts.put("kidneys", conditions.kidneysIn() ? "in" : "out");
        facts.put("cold_g", Math.round(conditions.coldKg() * 1000));
        facts.put("by_id", by.id());
        database.write(handle -> {
            Entry entry = Entry.of("cutting-test-told").words(WORDS, words);
            for (Map.Entry<String, Object> fact : facts.entrySet()) {
                entry = entry.fact(fact.getKey(), fact.getValue());
            }
            facts.put("told_at", clock.instant());
            facts.put("evidence_seq", log.append(entry));
            handle.createUpdate("insert into cutting_tests (" + String.join(", ", facts.keySet()) + ") values (:"
                            + String.join(", :", facts.keySet()) + ")")
                    .bindMap(facts)
                    .execute();
        });
    }

    /** The newest that was told of each carcase, the oldest first, as it stood at this record of the log. */
    public List<CuttingTest> asOf(long record) {
        Map<UUID, Person> byId = people.byId();
        List<CuttingTest> told = database.reading(handle -> handle.createQuery(
                        "select * from cutting_tests where evidence_seq <= :record order by evidence_seq")
                .bind("record", record)
                .map((row, ctx) -> test(row, byId))
                .list());
        Map<Long, Map<String, String>> words =
                log.words(told.stream().map(CuttingTest::record).toList());
        Map<UUID, CuttingTest> newest = new LinkedHashMap<>();
        told.forEach(test -> newest.put(test.carcase(), with(test, words)));
        return List.copyOf(newest.values());
    }

    /** The newest that was told of one carcase. */
    public Optional<CuttingTest> of(UUID carcase) {
        return asOf(Long.MAX_VALUE).stream()
                .filter(test -> test.carcase().equals(carcase))
                .findFirst();
    }

    private static CuttingTest with(CuttingTest test, Map<Long, Map<String, String>> words) {
        return new CuttingTest(
                test.carcase(),
                test.counts(),
                test.percents(),
                test.conditions(),
                words.getOrDefault(test.record(), Map.of()).getOrDefault(WORDS, ""),
                test.by(),
                test.at(),
                test.record());
    }

    private static CuttingTest test(ResultSet row, Map<UUID, Person> byId) throws SQLException {
        Conditions conditions = new Conditions(
                row.getLong("cold_g") / 1000.0,
                row.getString("kidneys").equals("in"),
                Optional.ofNullable(row.getString("fat_class")));
        return new CuttingTest(
                row.getObject("carcase_id", UUID.class),
                row.getString("counts").equals("yes"),
                read(row.getString("percents")),
                conditions,
                "",
                byId.get(row.getObject("by_id", UUID.class)),
                row.getObject("told_at", OffsetDateTime.class).toInstant(),
                row.getLong("evidence_seq"));
    }

    private static String written(Map<String, Double> percents) {
        return new TreeMap<>(percents)
                .entrySet().stream()
                        .map(one -> one.getKey() + "=" + String.format(Locale.ROOT, "%.6f", one.getValue()))
                        .collect(Collectors.joining(";"));
    }

    private static Map<String, Double> read(String written) {
        Map<String, Double> percents = new HashMap<>();
        for (String one : written.split(";")) {
            int at = one.indexOf('=');
            percents.put(one.substring(0, at), Double.valueOf(one.substring(at + 1)));
        }
        return percents;
    }
}
