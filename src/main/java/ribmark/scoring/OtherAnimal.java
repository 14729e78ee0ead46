package ribmark.scoring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.scoring.ReferenceTable.Row;

/**
 * What a table expects of an animal with another number of vertebrae: which cuts grow by how much, how much wider the spreads are, and
 * up to how many more or fewer that may be said.
 */
public record OtherAnimal(double widen, int atMost, List<Grows> grows) {

    /** A table that says nothing of such animals. */
    public static final OtherAnimal NOTHING_SAID = new OtherAnimal(1, 0, List.of());

    /** Keeps its own copy. */
    public OtherAnimal {
        grows = List.copyOf(grows);
    }

    /** What one vertebra more in a region adds to some cuts, in percent of the carcase. */
    public record Grows(Region region, Map<String, Double> points, List<Ground> grounds) {

        /** Keeps its own copies. */
        public Grows {
            points = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(points));
            grounds = List.copyOf(grounds);
        }
    }

    /** What each cut gains on such an animal, in percent of the carcase. */
    Map<String, Double> gains(Vertebrae vertebrae) {
        Map<String, Double> gains = new HashMap<>();
        for (Grows one : grows) {
            int more = vertebrae.more(one.region());
            if (more != 0) {
                one.points().forEach((cut, points) -> gains.merge(cut, more * points, Double::sum));
            }
        }
        return gains;
    }

    /** Whether the table can say what to expect: not too far from the usual, and no cut may be expected to be nothing. */
    boolean reaches(List<Row> rows, Vertebrae vertebrae, double share) {
        return vertebrae.more().values().stream().allMatch(more -> Math.abs(more) <= atMost)
                && factor(rows, gains(vertebrae), share) > 0
                && rows.stream()
                        .allMatch(row -> row.expected() + gains(vertebrae).getOrDefault(row.cut(), 0.0) / share > 0);
    }

    /**
     * The rows moved: a cut that grows by its points, all the others in proportion so that together they stay what they were.
     * {@code share} is what the shares were divided by before.
     */
    List<Row> moved(List<Row> rows, Vertebrae vertebrae, double share) {
        Map<String, Double> gains = gains(vertebrae);
        if (gains.isEmpty() || !reaches(rows, vertebrae, share)) {
            return rows;
        }
        double factor = factor(rows, gains, share);
        List<Row> moved = new ArrayList<>();
        for (Row row : rows) {
            Optional<Double> gain = Optional.ofNullable(gains.get(row.cut()));
            double expected =
                    gain.map(points -> row.expected() + points / share).orElse(row.expected() * factor);
            moved.add(row.with(expected, row.sd()).and(groundsOf(row.cut(), vertebrae)));
        }
        return moved;
    }

    private static double factor(List<Row> rows, Map<String, Double> gains, double share) {
        double others = 0;
        double gained = 0;
        for (Row row : rows) {
            if (gains.containsKey(row.cut())) {
                gained += gains.get(row.cut()) / share;
            } else {
                others += row.expected();
            }
        }
        return (others - gained) / others;
    }

    private List<Ground> groundsOf(String cut, Vertebrae vertebrae) {
        return grows.stream()
                .filter(one -> vertebrae.more(one.region()) != 0 && one.points().containsKey(cut))
                .flatMap(one -> one.grounds().stream())
                .toList();
    }
}
