package ribmark.carcase;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;
import ribmark.basics.Weight;
import ribmark.carcase.Checks.Cord;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.people.Person;

/** Turns carcases into rows and rows into carcases. Names of places, numbers read and reasons stand beside the log, not in the rows. */
final class CarcaseRows {

    /** The columns that say again what the record says. */
    static final List<String> FACTS = List.of(
            "id",
            "number",
            "breakdown_id",
            "killed_on",
            "ticket_weight_g",
            "ticket_weighed",
            "own_weight_g",
            "own_weighed",
            "scale_id",
            "kidneys",
            "fat_class",
            "mark_legible",
            "age",
            "cord",
            "meat_tenths_c",
            "kidney_tenths_c",
            "recorded_by_id");

    /** A carcase about to be written. */
    record New(UUID id, int number, Intake intake, UUID by, Instant at) {}

    private record Of<T>(UUID carcase, T row) {}

    private final Handle handle;
    private final EvidenceLog log;
    private final Map<UUID, Person> people;

    CarcaseRows(Handle handle, EvidenceLog log, Map<UUID, Person> people) {
        this.handle = handle;
        this.log = log;
        this.people = people;
    }

    static void insert(Handle handle, EvidenceLog log, New carcase) {
        Map<String, Object> facts = facts(carcase);
        long record = log.append(entry(facts, carcase.intake()));
        String columns = String.join(", ", FACTS);
        String values = ":" + String.join(", :", FACTS);
        Update update = handle.createUpdate("insert into carcases (" + columns + ", recorded_at, evidence_seq) values ("
                        + values + ", :at, :seq)")
                .bind("at", carcase.at())
                .bind("seq", record);
        facts.forEach(update::bind);
        update.execute();
    }

    private static Map<String, Object> facts(New carcase) {
        Intake intake = carcase.intake();
        Checks checks = intake.checks();
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", carcase.id());
        facts.put("number", carcase.number());
        facts.put("breakdown_id", intake.breakdownId());
        facts.put("killed_on", intake.ticket().killedOn());
        facts.put("ticket_weight_g", intake.ticket().weighed().weight().grams());
        facts.put("ticket_weighed", intake.ticket().weighed().word());
        facts.put("own_weight_g", intake.own().weight().grams());
        facts.put("own_weighed", intake.own().word());
        facts.put("scale_id", intake.scaleId());
        facts.put("kidneys", checks.kidneys());
        facts.put("fat_class", intake.ticket().fatClass().orElse(null));
        facts.put("mark_legible", checks.markLegible() ? "yes" : "no");
        facts.put("age", checks.age().code());
        facts.put("cord", checks.cord().code());
        facts.put("meat_tenths_c", checks.meatTenths());
        facts.put("kidney_tenths_c", orNull(checks.kidneyTenths()));
        facts.put("recorded_by_id", carcase.by());
        return facts;
    }

    private static Entry entry(Map<String, Object> facts, Intake intake) {
        Entry entry = Entry.of("carcase-recorded");
        for (Map.Entry<String, Object> fact : facts.entrySet()) {
            entry = entry.fact(fact.getKey(), fact.getValue());
        }
        return entry.words("kill_number", intake.ticket().killNumber())
                .words("came_from", intake.ticket().cameFrom())
                .words("batch", intake.ticket().batch())
                .words("dressing", intake.ticket().dressing())
                .words("mark", intake.checks().mark());
    }

    /** Every carcase, the newest first, each with its decisions and counts oldest first. */
    List<Carcase> all() {
        Map<UUID, List<Decided>> decisions = decisions();
        Map<UUID, List<Counted>> counts = counts();
        Map<UUID, List<Reweighed>> weights = weights();
        Map<Long, Map<String, String>> words = log.words(records("carcases"));
        return handle.createQuery("select * from carcases order by number desc")
                .map((row, ctx) -> {
                    UUID id = row.getObject("id", UUID.class);
                    return new Carcase(
                            id,
                            row.getInt("number"),
                            intake(row, words.getOrDefault(row.getLong("evidence_seq"), Map.of())),
                            decisions.get(id),
                            counts.getOrDefault(id, List.of()),
                            weights.getOrDefault(id, List.of()),
                            people.get(row.getObject("recorded_by_id", UUID.class)),
                            moment(row, "recorded_at"));
                })
                .list();
    }

    private static Intake intake(ResultSet row, Map<String, String> words) throws SQLException {
        return new Intake(
                row.getString("breakdown_id"),
                ticket(row, words),
                weighed(row, "own"),
                row.getString("scale_id"),
                checks(row, words));
    }

    private static Ticket ticket(ResultSet row, Map<String, String> words) throws SQLException {
        return new Ticket(
                words.getOrDefault("kill_number", ""),
                row.getObject("killed_on", LocalDate.class),
                words.getOrDefault("came_from", ""),
                words.getOrDefault("batch", ""),
                weighed(row, "ticket"),
                words.getOrDefault("dressing", ""),
                Optional.ofNullable(row.getString("fat_class")));
    }

    private static Checks checks(ResultSet row, Map<String, String> words) throws SQLException {
        return new Checks(
                words.getOrDefault("mark", ""),
                "yes".equals(row.getString("mark_legible")),
                Age.of(row.getString("age")).orElseThrow(),
                Cord.of(row.getString("cord")).orElseThrow(),
                "in".equals(row.getString("kidneys")),
                row.getInt("meat_tenths_c"),
                whole(row, "kidney_tenths_c"));
    }

    private static Weighed weighed(ResultSet row, String whose) throws SQLException {
        return new Weighed(
                new Weight(row.getLong(whose + "_weight_g")), "hot".equals(row.getString(whose + "_weighed")));
    }

    private Map<UUID, List<Decided>> decisions() {
        Map<Long, Map<String, String>> words = log.words(records("carcase_decisions"));
        return grouped(handle.createQuery("select * from carcase_decisions order by evidence_seq")
                .map((row, ctx) -> new Of<>(
                        row.getObject("carcase_id", UUID.class),
                        new Decided(
                                Decision.of(row.getString("decision")).orElseThrow(),
                                words.getOrDefault(row.getLong("evidence_seq"), Map.of())
                                        .getOrDefault("reason", ""),
                                people.get(row.getObject("by_id", UUID.class)),
                                moment(row, "decided_at"))))
                .list());
    }

    private Map<UUID, List<Counted>> counts() {
        return grouped(handle.createQuery("select * from carcase_counts order by evidence_seq")
                .map((row, ctx) -> new Of<>(
                        row.getObject("carcase_id", UUID.class),
                        new Counted(
                                whole(row, "thoracic"),
                                whole(row, "lumbar"),
                                people.get(row.getObject("by_id", UUID.class)),
                                moment(row, "counted_at"),
                                row.getLong("evidence_seq"))))
                .list());
    }

    private Map<UUID, List<Reweighed>> weights() {
        return grouped(handle.createQuery("select * from carcase_weights order by evidence_seq")
                .map((row, ctx) -> new Of<>(
                        row.getObject("carcase_id", UUID.class),
                        new Reweighed(
                                new Weight(row.getLong("weight_g")),
                                Optional.ofNullable(row.getString("weight_typed")),
                                row.getString("scale_id"),
                                people.get(row.getObject("by_id", UUID.class)),
                                moment(row, "weighed_at"),
                                row.getLong("evidence_seq"))))
                .list());
    }

    private List<Long> records(String table) {
        return handle.createQuery("select evidence_seq from " + table)
                .mapTo(Long.class)
                .list();
    }

    private static <T> Map<UUID, List<T>> grouped(List<Of<T>> rows) {
        Map<UUID, List<T>> all = new HashMap<>();
        rows.forEach(row ->
                all.computeIfAbsent(row.carcase(), id -> new ArrayList<>()).add(row.row()));
        return all;
    }

    private static OptionalInt whole(ResultSet row, String column) throws SQLException {
        int number = row.getInt(column);
        return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static Integer orNull(OptionalInt number) {
        return number.isPresent() ? number.getAsInt() : null;
    }
}
