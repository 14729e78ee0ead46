package ribmark.cuttingtests;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.Conditions;
import ribmark.scoring.CuttingRule.CarcaseClass;
import ribmark.scoring.OwnTable;
import ribmark.scoring.ReferenceTable;

/** The tables of the content as the college's cutting tests have moved them by some moment, for one carcase that does not teach itself. */
public final class OwnTables {

    /** Every test that was ever told. */
    public static final long NOW = Long.MAX_VALUE;

    private final CuttingTestStore store;

    /** Reads the tests afresh each time. */
    public OwnTables(CuttingTestStore store) {
        this.store = store;
    }

    /** The tables this carcase is judged by, as they stood at this record of the log, and their version. */
    public Judging judging(Curriculum curriculum, Conditions conditions, UUID carcase, long record) {
        List<CuttingTest> tests = counting(record).stream()
                .filter(test -> !test.carcase().equals(carcase))
                .toList();
        List<ReferenceTable> tables = new ArrayList<>();
        Set<Long> taught = new TreeSet<>();
        for (ReferenceTable table : curriculum.tables()) {
            Optional<CarcaseClass> ofClass = table.cutting().of(conditions);
            List<CuttingTest> teaching =
                    ofClass.map(one -> teaching(table, one, tests)).orElse(List.of());
            teaching.forEach(test -> taught.add(test.record()));
            tables.add(
                    teaching.isEmpty()
                            ? table
                            : own(table, ofClass.get(), teaching).table());
        }
        return new Judging(tables, version(curriculum, taught), taught.size());
    }

    /** Tables with the version that names them: the content's, and which cutting tests they have learnt from. */
    public record Judging(List<ReferenceTable> tables, String version, int tests) {}

    private static String version(Curriculum curriculum, Set<Long> taught) {
        String content = curriculum.version().substring(0, 12);
        return taught.isEmpty() ? content : String.format("%s+%d-%08x", content, taught.size(), taught.hashCode());
    }

    /** One table as it stands now for one class of carcases. */
    public OwnTable now(ReferenceTable table, CarcaseClass ofClass) {
        return own(table, ofClass, teaching(table, ofClass, counting(NOW)));
    }

    /** The tests that teach one table something of one class. */
    public List<CuttingTest> teaching(ReferenceTable table, CarcaseClass ofClass) {
        return teaching(table, ofClass, counting(NOW));
    }

    private List<CuttingTest> counting(long record) {
        return store.asOf(record).stream().filter(CuttingTest::counts).toList();
    }

    private static List<CuttingTest> teaching(ReferenceTable table, CarcaseClass ofClass, List<CuttingTest> tests) {
        return tests.stream()
                .filter(test -> table.cutting().of(test.conditions()).equals(Optional.of(ofClass)))
                .filter(test -> table.whyNot(test.conditions()).isEmpty())
                .filter(test -> OwnTable.whyNot(table, test.conditions(), test.percents())
                        .isEmpty())
                .toList();
    }

    private static OwnTable own(ReferenceTable table, CarcaseClass ofClass, List<CuttingTest> tests) {
        return new OwnTable(
                table,
                ofClass,
                tests.stream()
                        .map(test -> OwnTable.shares(table, test.conditions(), test.percents()))
                        .toList());
    }
}
