package ribmark.scoring;

import java.util.List;
import java.util.Optional;

/** How cutting tests of the college change a table: how many carcases the table counts for, and which carcases are learnt from together. */
public record CuttingRule(double worth, int ownFrom, List<CarcaseClass> classes, List<Ground> grounds) {

    /** A table that learns nothing. */
    public static final CuttingRule NONE = new CuttingRule(1, Integer.MAX_VALUE, List.of(), List.of());

    /** Carcases alike enough to be learnt from together. */
    public record CarcaseClass(String id, String name, List<String> fatClasses) {

        /** Keeps its own copy. */
        public CarcaseClass {
            fatClasses = List.copyOf(fatClasses);
        }
    }

    /** Keeps its own copies. */
    public CuttingRule {
        classes = List.copyOf(classes);
        grounds = List.copyOf(grounds);
    }

    /** The class of a carcase, where its ticket tells a fat class that has one. */
    public Optional<CarcaseClass> of(Conditions conditions) {
        return conditions
                .fatClass()
                .flatMap(fat -> classes.stream()
                        .filter(one -> one.fatClasses().contains(fat))
                        .findFirst());
    }

    /** The share of a row that is still the table's after so many tests, in percent. */
    public double borrowedPercent(int tests) {
        return 100 * worth / (worth + tests);
    }
}
