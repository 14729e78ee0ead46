package ribmark.weighing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import ribmark.basics.Weight;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.Acting;
import ribmark.people.PeopleStore;
import ribmark.people.Person;
import ribmark.slips.Cause;

/** The answers to questions about readings; each is a row of its own, and none is ever changed. */
public final class SlipAnswerStore {

    /** The table that says again what the log says of answers. */
    public static final Mirror MIRROR = new Mirror(
            "slip-answered",
            "slip_answers",
            List.of(
                    "id",
                    "carcase_id",
                    "reading_id",
                    "other_id",
                    "because",
                    "chance_in_1000",
                    "likely_g",
                    "answer",
                    "used_id",
                    "other_used_id",
                    "used_weight_id",
                    "by_id"));

    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Clock clock;

    /** The log keeps the words; people give the rows their names. */
    public SlipAnswerStore(Database database, EvidenceLog log, PeopleStore people, Clock clock) {
        this.database = database;
        this.log = log;
        this.people = people;
        this.clock = clock;
    }

    /** Keeps an answer: the readings used instead, where there are any, and why the old ones stay, where they do. */
    void add(UUID carcase, Question question, SlipAnswer.Choice choice, List<UUID> used, String why, Acting by) {
        List<Question.Doubt> doubts = question.doubts();
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", UUID.randomUUID());
        facts.put("carcase_id", carcase);
        facts.put("reading_id", doubts.get(0).reading().id());
        facts.put("other_id", doubts.size() > 1 ? doubts.get(1).reading().id() : null);
        facts.put("because", question.because().words());
        facts.put("chance_in_1000", Math.round(1000 * Math.min(1, question.probability())));
        facts.put("likely_g", doubts.get(0).likely().map(Weight::grams).orElse(null));
        facts.put("answer", choice.word());
        facts.put("used_id", used.isEmpty() ? null : used.get(0));
        facts.put("other_used_id", used.size() > 1 ? used.get(1) : null);
        facts.put("by_id", by.id());
        insert(facts, why);
    }

    /** Keeps an answer about the weight of the carcase: the weight that counts instead, where there is one, and why the old one stays. */
    void add(CarcaseQuestion question, SlipAnswer.Choice choice, Optional<UUID> used, String why, Acting by) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", UUID.randomUUID());
        facts.put("carcase_id", question.carcase().id());
        facts.put("because", question.because().words());
        facts.put("chance_in_1000", Math.round(1000 * Math.min(1, question.probability())));
        facts.put("likely_g", question.likely().grams());
        facts.put("answer", choice.word());
        facts.put("used_weight_id", used.orElse(null));
        facts.put("by_id", by.id());
        insert(facts, why);
    }

    private void insert(Map<String, Object> facts, String why) {
        Map<String, Object> columns = new LinkedHashMap<>(facts);
        Entry entry = Entry.of("slip-answered");
        for (Map.Entry<String, Object> fact : facts.entrySet()) {
            entry = entry.fact(fact.getKey(), fact.getValue());
        }
        Entry said = why.isEmpty() ? entry : entry.words("why", why);
        database.write(handle -> {
            columns.put("answered_at", clock.instant());
            columns.put("evidence_seq", log.append(said));
            String names = String.join(", ", columns.keySet());
            String values = ":" + String.join(", :", columns.keySet());
            handle.createUpdate("insert into slip_answers (" + names + ") values (" + values + ")")
                    .bindMap(columns)
                    .execute();
        });
    }

    /** Every answer on a carcase, oldest first. */
    public List<SlipAnswer> of(UUID carcase) {
        Map<UUID, Person> byId = people.byId();
        List<SlipAnswer> rows = database.reading(handle -> handle.createQuery(
                        "select * from slip_answers where carcase_id = :carcase order by evidence_seq")
                .bind("carcase", carcase)
                .map((row, ctx) -> read(row, byId))
                .list());
        Map<Long, Map<String, String>> words =
                log.words(rows.stream().map(SlipAnswer::record).toList());
        return rows.stream()
                .map(row -> with(row, words.getOrDefault(row.record(), Map.of())))
                .toList();
    }

    private static SlipAnswer with(SlipAnswer answer, Map<String, String> words) {
        return new SlipAnswer(
                answer.readings(),
                answer.because(),
                answer.choice(),
                words.getOrDefault("why", ""),
                answer.by(),
                answer.at(),
                answer.record());
    }

    private static SlipAnswer read(ResultSet row, Map<UUID, Person> byId) throws SQLException {
        List<UUID> readings = Stream.of("reading_id", "other_id")
                .flatMap(column -> id(row, column).stream())
                .toList();
        return new SlipAnswer(
                readings,
                cause(row.getString("because")),
                SlipAnswer.Choice.of(row.getString("answer")).orElseThrow(),
                "",
                byId.get(row.getObject("by_id", UUID.class)),
                row.getObject("answered_at", OffsetDateTime.class).toInstant(),
                row.getLong("evidence_seq"));
    }

    private static Optional<UUID> id(ResultSet row, String column) {
        try {
            return Optional.ofNullable(row.getObject(column, UUID.class));
        } catch (SQLException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private static Cause cause(String words) {
        return List.of(Cause.values()).stream()
                .filter(cause -> cause.words().equals(words))
                .findFirst()
                .orElseThrow();
    }
}
