package ribmark.weighing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import ribmark.basics.Refused;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.weighup.CarcaseReading;

/** Which reference tables a weigh-up is held against: as few as know every cut that was weighed, with the fewest weights still missing. */
final class TableChoice {

    private static final Comparator<ReferenceTable> COARSE_FIRST = Comparator.<ReferenceTable>comparingInt(
                    table -> table.rows().size())
            .thenComparing(ReferenceTable::id);

    private TableChoice() {}

    /** The tables that can judge such a carcase at all, the coarsest first. */
    static List<ReferenceTable> usable(List<ReferenceTable> all, CarcaseReading carcase) {
        List<ReferenceTable> usable = all.stream()
                .filter(table -> table.whyNot(carcase.conditions(table.hot())).isEmpty())
                .sorted(COARSE_FIRST)
                .toList();
        if (usable.isEmpty()) {
            throw new Refused(
                    "No reference table can judge this carcase as it was dressed. Ask your tutor for one that can.");
        }
        return usable;
    }

    /** The ones to take for these weighed rows, the coarsest first. */
    static List<ReferenceTable> of(List<ReferenceTable> usable, Set<String> weighed) {
        List<List<ReferenceTable>> fitting = subsets(usable).stream()
                .filter(some -> !some.isEmpty())
                .filter(some -> weighed.stream()
                        .allMatch(row -> some.stream().anyMatch(t -> t.row(row).isPresent())))
                .toList();
        return fitting.stream()
                .min(Comparator.<List<ReferenceTable>>comparingInt(List::size).thenComparingLong(TableChoice::rows))
                .orElse(usable);
    }

    private static long rows(List<ReferenceTable> tables) {
        return tables.stream()
                .flatMap(table -> table.rows().stream())
                .map(Row::cut)
                .distinct()
                .count();
    }

    /** Every selection of them, keeping their order. */
    private static List<List<ReferenceTable>> subsets(List<ReferenceTable> tables) {
        List<List<ReferenceTable>> all = new ArrayList<>(List.of(List.of()));
        for (ReferenceTable table : tables) {
            for (List<ReferenceTable> some : List.copyOf(all)) {
                List<ReferenceTable> with = new ArrayList<>(some);
                with.add(table);
                all.add(List.copyOf(with));
            }
        }
        return all;
    }
}
