package ribmark.slips;

import java.util.ArrayList;
import java.util.List;
import ribmark.basics.Side;
import ribmark.scoring.ReferenceTable.Row;

/** What a carcase cut without a slip is expected to give at each place, in percent of it, and how that varies from lamb to lamb. */
final class Lamb {

    private final List<Place> places;
    private final boolean sided;
    private final double[] expected;
    private final double[] mean;
    private final double[][] covariance;

    private Lamb(List<Place> places, boolean sided, List<Row> rows, Model.Loss loss) {
        this.places = places;
        this.sided = sided;
        double kept = 1 - loss.expectedPercent() / 100;
        double[] makings = Spreads.unclosed(rows.stream().mapToDouble(Row::sd).toArray());
        double total = java.util.Arrays.stream(makings).sum();
        this.expected =
                places.stream().mapToDouble(p -> p.share() * p.row().expected()).toArray();
        this.mean = java.util.Arrays.stream(expected).map(e -> kept * e).toArray();
        this.covariance = new double[places.size()][places.size()];
        for (Place one : places) {
            for (Place other : places) {
                int i = rows.indexOf(one.row());
                int j = rows.indexOf(other.row());
                double rows2 = kept * kept * ((i == j ? makings[i] : 0) - makings[i] * makings[j] / total);
                double difference =
                        i == j ? kept * one.row().pairSpread() * one.row().expected() : 0;
                covariance[one.index()][other.index()] = one.share() * other.share() * rows2
                        + one.sign() * other.sign() * difference * difference / 4
                        + square(loss.sdPercent() / 100) * expected[one.index()] * expected[other.index()];
            }
        }
    }

    private static double square(double number) {
        return number * number;
    }

    /** Left and right are told apart when every pair that was weighed was weighed so; a pair of which one side came stays apart. */
    static Lamb weighedAs(List<Typed> entries, List<Row> rows, Model.Loss loss) {
        boolean sided = rows.stream().anyMatch(row -> isSided(row, entries))
                && rows.stream().filter(row -> row.pair() && has(row, entries)).allMatch(row -> isSided(row, entries));
        List<Place> places = new ArrayList<>();
        for (Row row : rows) {
            if (isSided(row, entries) && (sided || !(has(row, Side.LEFT, entries) && has(row, Side.RIGHT, entries)))) {
                places.add(new Place(places.size(), row, Side.LEFT));
                places.add(new Place(places.size(), row, Side.RIGHT));
            } else {
                places.add(new Place(places.size(), row, Side.BOTH));
            }
        }
        return new Lamb(List.copyOf(places), sided, rows, loss);
    }

    private static boolean has(Row row, List<Typed> entries) {
        return entries.stream().anyMatch(e -> e.cut().equals(row.cut()));
    }

    private static boolean has(Row row, Side side, List<Typed> entries) {
        return entries.stream().anyMatch(e -> e.cut().equals(row.cut()) && e.side() == side);
    }

    private static boolean isSided(Row row, List<Typed> entries) {
        return row.pair()
                && has(row, entries)
                && entries.stream()
                        .filter(e -> e.cut().equals(row.cut()))
                        .allMatch(e -> e.side() == Side.LEFT || e.side() == Side.RIGHT);
    }

    List<Place> places() {
        return places;
    }

    /** Whether left and right are told apart throughout. */
    boolean sided() {
        return sided;
    }

    /** The table's percentage at a place. */
    double expected(int place) {
        return expected[place];
    }

    /** The same less what is lost at cutting. */
    double mean(int place) {
        return mean[place];
    }

    double covariance(int one, int other) {
        return covariance[one][other];
    }

    /** The place an entry belongs to. */
    int placeOf(Typed entry) {
        return places.stream()
                .filter(place -> place.takes(entry.cut(), entry.side()))
                .findFirst()
                .orElseThrow()
                .index();
    }
}
