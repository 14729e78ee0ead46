package ribmark.slips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import ribmark.basics.Side;

/** One way a line may have gone, how probable it was beforehand, and what it would do to each place, in points of the carcase. */
record Departure(
        Optional<String> line, Optional<String> towards, int by, Optional<Side> side, double prior, double[] moved) {

    /** Every way the table can show, the first being that nothing was moved. */
    static List<Departure> all(Model model, Lamb lamb) {
        return new Ways(model, lamb).all();
    }

    private static final class Ways {

        private final Model model;
        private final Lamb lamb;
        private final Set<String> rows;
        private final List<Departure> all = new ArrayList<>();

        Ways(Model model, Lamb lamb) {
            this.model = model;
            this.lamb = lamb;
            this.rows = lamb.places().stream().map(p -> p.row().cut()).collect(Collectors.toSet());
        }

        List<Departure> all() {
            List<Model.Line> lines = model.lines().stream()
                    .filter(line -> move(line).isPresent())
                    .toList();
            List<Model.Split> splits =
                    model.splits().stream().filter(this::canShow).toList();
            double prior = (1 - model.departures().none()) / Math.max(1, lines.size() + splits.size());
            boolean none = lines.isEmpty() && splits.isEmpty();
            all.add(new Departure(
                    Optional.empty(),
                    Optional.empty(),
                    0,
                    Optional.empty(),
                    none ? 1 : model.departures().none(),
                    new double[lamb.places().size()]));
            lines.forEach(line -> add(line, prior));
            splits.forEach(split -> add(split, prior));
            return all;
        }

        private boolean canShow(Model.Split split) {
            return lamb.sided() && rows.containsAll(split.rows());
        }

        private Optional<Model.Move> move(Model.Line line) {
            return line.moves().stream()
                    .filter(move -> rows.containsAll(move.points().keySet()))
                    .findFirst();
        }

        private void add(Model.Line line, double prior) {
            Map<String, Double> points = move(line).orElseThrow().points();
            List<Side> sides = lamb.sided() ? List.of(Side.BOTH, Side.LEFT, Side.RIGHT) : List.of(Side.BOTH);
            for (Side side : sides) {
                double[] moved = moved(place -> points.getOrDefault(place.row().cut(), 0.0) * place.shareOf(side));
                add(line.named(), Optional.of(side).filter(s -> s != Side.BOTH), prior / sides.size(), moved);
            }
        }

        private void add(Model.Split split, double prior) {
            double[] moved = moved(place -> split.rows().contains(place.row().cut())
                    ? place.sign() * split.share() * place.row().expected()
                    : 0);
            add(split.named(), Optional.empty(), prior, moved);
        }

        private double[] moved(ToDoubleFunction<Place> points) {
            return lamb.places().stream().mapToDouble(points).toArray();
        }

        private void add(Model.Named line, Optional<Side> side, double prior, double[] moved) {
            List<Model.Distance> distances = line.distances();
            double weights =
                    distances.stream().mapToDouble(Model.Distance::weight).sum();
            for (int by = 1; by <= distances.size(); by++) {
                double each = prior * distances.get(by - 1).weight() / weights / 2;
                all.add(way(line, line.towards(), by, side, each, times(by, moved)));
                all.add(way(line, line.otherwise(), by, side, each, times(-by, moved)));
            }
        }

        private static Departure way(
                Model.Named line, String towards, int by, Optional<Side> side, double prior, double[] moved) {
            return new Departure(Optional.of(line.id()), Optional.of(towards), by, side, prior, moved);
        }

        private static double[] times(int by, double[] moved) {
            return Arrays.stream(moved).map(m -> by * m).toArray();
        }
    }

    /** What two ways have in common but for how far they went. */
    List<Object> way() {
        return List.of(line, towards, side);
    }
}
