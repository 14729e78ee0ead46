package ribmark.scoring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.scoring.CuttingRule.CarcaseClass;
import ribmark.scoring.ReferenceTable.Row;

/** A reference table moved towards what competent butchers of the college came to, on carcases of one class. */
public record OwnTable(ReferenceTable from, CarcaseClass of, List<Map<String, Double>> tests) {

    /** Keeps its own copy; each test holds the share of every row it weighed. */
    public OwnTable {
        tests = List.copyOf(tests);
    }

    /**
     * Why a weigh-up cannot teach this table, or nothing when it can: the carcase must be one the table was made for, and every row
     * must have been weighed.
     */
    public static Optional<String> whyNot(ReferenceTable table, Conditions conditions, Map<String, Double> percents) {
        List<String> widened = table.whyWidened(conditions);
        if (!widened.isEmpty()) {
            return Optional.of(widened.get(0));
        }
        if (table.cutting().of(conditions).isEmpty()) {
            return Optional.of("its fat class is in none of the table's carcase classes");
        }
        return table.under(conditions).rows().stream()
                .filter(row -> !percents.containsKey(row.cut()))
                .findFirst()
                .map(row -> "there is no whole weight for " + row.name() + " at the moment its row means");
    }

    /**
     * What a weigh-up teaches: each row's share of all rows together, with the kidneys in, so that a table keeps adding up to a
     * hundred whatever was lost.
     */
    public static Map<String, Double> shares(
            ReferenceTable table, Conditions conditions, Map<String, Double> percents) {
        List<Row> rows = table.under(conditions).rows();
        double all = rows.stream().mapToDouble(row -> percents.get(row.cut())).sum();
        double whole = conditions.kidneysIn() ? 100 : 100 * table.kidneysOut().divideBy();
        Map<String, Double> shares = new HashMap<>();
        rows.forEach(row -> shares.put(row.cut(), percents.get(row.cut()) * whole / all));
        return shares;
    }

    /** What is known of one row after the tests. */
    public Learned learned(Row row) {
        Learned learned =
                Learned.borrowed(row.expected(), row.sd(), from.cutting().worth());
        for (Map<String, Double> test : tests) {
            if (test.containsKey(row.cut())) {
                learned = learned.with(test.get(row.cut()));
            }
        }
        return learned;
    }

    /** How many tests weighed one row. */
    public int testsOf(Row row) {
        return (int) tests.stream().filter(test -> test.containsKey(row.cut())).count();
    }

    /** The table to judge by: means and spreads moved, each row saying on how many tests it stands. */
    public ReferenceTable table() {
        if (tests.isEmpty()) {
            return from;
        }
        List<Row> rows = new ArrayList<>();
        for (Row row : from.rows()) {
            rows.add(testsOf(row) == 0 ? row : moved(row));
        }
        return from.with(rows);
    }

    private Row moved(Row row) {
        Learned learned = learned(row);
        int tests = testsOf(row);
        Ground own = new Ground(
                String.format(
                        java.util.Locale.ROOT,
                        "Moved to %.2f, spread %.2f, by cutting tests of the college on carcases of %s: %d so far; %.0f %%"
                                + " is still borrowed from the table",
                        learned.mean(),
                        learned.spread(),
                        of.name(),
                        tests,
                        from.cutting().borrowedPercent(tests)),
                "OWN",
                Basis.OWN);
        Row moved = row.with(learned.mean(), learned.spread());
        return tests >= from.cutting().ownFrom() ? moved.restingOn(List.of(own)) : moved.and(List.of(own));
    }
}
