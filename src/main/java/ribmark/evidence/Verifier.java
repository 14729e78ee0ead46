package ribmark.evidence;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import ribmark.database.Database;

/** Walks the whole log and names the first record that does not fit: altered, missing, swapped, put in, or cut off. */
public final class Verifier {

    private record Misfit(long seq, String why) {}

    private record Words(long seq, String field, String salt, String text) {}

    private final Database database;
    private final EvidenceLog log;
    private final List<Mirror> mirrors;
    private final List<Quoted> quoted;

    /** The mirrors are the tables that other parts keep beside the log, what is quoted the long words it names by digest. */
    public Verifier(Database database, EvidenceLog log, List<Mirror> mirrors, List<Quoted> quoted) {
        this.database = database;
        this.log = log;
        this.mirrors = mirrors;
        this.quoted = quoted;
    }

    /** Checks everything; with a head kept elsewhere it also finds a tail that was cut off or a log written anew. */
    public Verification verify(Optional<Head> keptElsewhere) {
        List<Kept> all = log.all();
        Head head = Head.over(all.stream().map(Kept::digest).toList());
        return chain(all)
                .or(() -> words(all))
                .or(() -> mirrors(all))
                .or(() -> quoted(all))
                .or(() -> keptElsewhere.flatMap(kept -> against(kept, all)))
                .map(misfit -> Verification.broken(head, misfit.seq(), misfit.why()))
                .orElseGet(() -> Verification.good(head));
    }

    private static Optional<Misfit> chain(List<Kept> all) {
        String before = Digest.NOTHING;
        long expected = 1;
        for (Kept kept : all) {
            if (kept.seq() != expected) {
                return misfit(expected, "Record " + expected + " is missing.");
            }
            if (!kept.digestBefore().equals(before)) {
                return misfit(kept.seq(), "Record " + kept.seq() + " does not follow the one before it.");
            }
            if (!kept.holds()) {
                return misfit(kept.seq(), "Record " + kept.seq() + " was altered after it was written.");
            }
            before = kept.digest();
            expected++;
        }
        return Optional.empty();
    }

    private Optional<Misfit> words(List<Kept> all) {
        List<Words> kept = database.reading(handle -> handle.createQuery(
                        "select seq, field, salt, words from evidence_words order by seq, field")
                .map((row, ctx) -> new Words(
                        row.getLong("seq"), row.getString("field"), row.getString("salt"), row.getString("words")))
                .list());
        Map<Long, Map<String, String>> digests = new HashMap<>();
        all.forEach(record -> digests.put(record.seq(), record.wordDigests()));
        return kept.stream()
                .filter(word -> !Digest.of(word.salt() + "\n" + word.text())
                        .equals(digests.getOrDefault(word.seq(), Map.of()).get(word.field())))
                .findFirst()
                .map(word -> new Misfit(word.seq(), "The words of record " + word.seq() + " were altered."));
    }

    private Optional<Misfit> mirrors(List<Kept> all) {
        return mirrors.stream()
                .flatMap(mirror -> mirror(mirror, all).stream())
                .min((a, b) -> Long.compare(a.seq(), b.seq()));
    }

    private Optional<Misfit> quoted(List<Kept> all) {
        return quoted.stream().flatMap(one -> quoted(one, all).stream()).min((a, b) -> Long.compare(a.seq(), b.seq()));
    }

    private Optional<Misfit> quoted(Quoted one, List<Kept> all) {
        Set<String> whole = whole(one);
        return all.stream()
                .filter(kept -> kept.kind().equals(one.kind()))
                .filter(kept -> kept.facts().get(one.fact()) != null)
                .filter(kept -> !whole.contains(kept.facts().get(one.fact())))
                .findFirst()
                .map(kept -> new Misfit(
                        kept.seq(),
                        "The words that record " + kept.seq() + " names in " + one.table()
                                + " were altered or are missing."));
    }

    /** The digests of the words that are still what they were. */
    private Set<String> whole(Quoted one) {
        Set<String> whole = new HashSet<>();
        database.reading(handle -> handle.createQuery("select digest, words from " + one.table())
                        .map((row, ctx) -> Map.entry(row.getString("digest"), row.getString("words")))
                        .list())
                .forEach(row -> {
                    if (Digest.of(row.getValue()).equals(row.getKey())) {
                        whole.add(row.getKey());
                    }
                });
        return whole;
    }

    private Optional<Misfit> mirror(Mirror mirror, List<Kept> all) {
        Map<Long, Map<String, String>> rows = rows(mirror);
        for (Kept kept : all) {
            if (kept.kind().equals(mirror.kind())) {
                Map<String, String> row = rows.remove(kept.seq());
                if (row == null || !saysTheSame(mirror, kept.facts(), row)) {
                    return misfit(
                            kept.seq(),
                            "What is kept of record " + kept.seq() + " in " + mirror.table()
                                    + " differs from the log.");
                }
            }
        }
        return rows.keySet().stream()
                .min(Long::compare)
                .map(seq -> new Misfit(seq, "A row of " + mirror.table() + " has no record in the log."));
    }

    private static boolean saysTheSame(Mirror mirror, Map<String, String> facts, Map<String, String> row) {
        return mirror.facts().stream().allMatch(fact -> Objects.equals(facts.get(fact), row.get(fact)));
    }

    private Map<Long, Map<String, String>> rows(Mirror mirror) {
        String sql = "select evidence_seq, " + String.join(", ", mirror.facts()) + " from " + mirror.table();
        Map<Long, Map<String, String>> rows = new HashMap<>();
        database.reading(handle -> handle.createQuery(sql)
                .map((row, ctx) -> rows.put(row.getLong("evidence_seq"), facts(mirror, row)))
                .list());
        return rows;
    }

    private static Map<String, String> facts(Mirror mirror, java.sql.ResultSet row) throws java.sql.SQLException {
        Map<String, String> facts = new HashMap<>();
        for (String fact : mirror.facts()) {
            Object value = row.getObject(fact);
            facts.put(fact, value == null ? null : value.toString());
        }
        return facts;
    }

    private static Optional<Misfit> against(Head kept, List<Kept> all) {
        if (kept.records() > all.size()) {
            return misfit(
                    all.size() + 1L,
                    "The log ends after record " + all.size() + ", but " + kept.records()
                            + " records were there when the head was kept.");
        }
        Head then = Head.over(
                all.subList(0, (int) kept.records()).stream().map(Kept::digest).toList());
        return then.equals(kept)
                ? Optional.empty()
                : misfit(1, "The log was written anew: its head is not the one that was kept.");
    }

    private static Optional<Misfit> misfit(long seq, String why) {
        return Optional.of(new Misfit(seq, why));
    }
}
