package ribmark.slips;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.basics.Side;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.slips.Lambs.Lamb;

/** A lamb with one line cut elsewhere; the ways are written down here again, each with how many steps it can go. */
record Miscut(Lamb lamb, String line, String towards, Side side, int by) {

    /** One way to be wrong: what a step does to the cuts, or for a split, which pairs it parts. */
    record Way(
            String line, String towards, String otherwise, int steps, Map<String, Double> points, Set<String> split) {}

    private static final List<Way> ALL = List.of(
            way("fores", "head", 2, Map.of("shoulders", -1.97, "best-ends", 1.37, "breasts", 0.6)),
            way("fores", "head", 2, Map.of("fores", -1.97, "middle", 1.97)),
            way("fores", "head", 2, Map.of("fores", -1.97, "middle-kidneys-in", 1.97)),
            way("middle", "head", 1, Map.of("loins", -2.0, "chumps", 2.0)),
            way("middle", "head", 1, Map.of("middle", -2.0, "legs-chump-on", 2.0)),
            way("middle", "head", 1, Map.of("middle-kidneys-in", -2.0, "legs-chump-on", 2.0)),
            new Way(
                    "breasts",
                    "back",
                    "belly",
                    2,
                    Map.of("breasts", 0.9, "best-ends", -0.45, "loins", -0.45),
                    Set.of()),
            way("chumps", "head", 2, Map.of("chumps", -1.5, "legs-chump-off", 1.5)),
            split("fores-split", "shoulders"),
            split("middle-split", "best-ends", "loins"),
            split("legs-split", "chumps", "legs-chump-off"));

    private static Way way(String line, String towards, int steps, Map<String, Double> points) {
        return new Way(line, towards, "tail", steps, points, Set.of());
    }

    private static Way split(String line, String... pairs) {
        return new Way(line, "right", "left", 2, Map.of(), Set.of(pairs));
    }

    /** The ways this table can show. */
    static List<Way> ways(ReferenceTable table, boolean sided) {
        Set<String> cuts = table.rows().stream().map(Row::cut).collect(Collectors.toSet());
        return ALL.stream()
                .filter(way -> cuts.containsAll(way.points().keySet()) && cuts.containsAll(way.split()))
                .filter(way -> sided || way.split().isEmpty())
                .toList();
    }

    /** Any way as the model holds them likely, one step twice as often as two. */
    static Miscut any(Lambs lambs) {
        Random random = lambs.random();
        List<Way> ways = ways(lambs.table(), lambs.sided());
        Way way = ways.get(random.nextInt(ways.size()));
        int by = way.steps() == 2 && random.nextInt(3) == 0 ? 2 : 1;
        List<Side> sides = new ArrayList<>(List.of(Side.BOTH));
        if (lambs.sided() && way.split().isEmpty()) {
            sides.addAll(List.of(Side.LEFT, Side.RIGHT));
        }
        return of(lambs, way, by, sides.get(random.nextInt(sides.size())), random.nextBoolean());
    }

    static Miscut of(Lambs lambs, Way way, int by, Side side, boolean turned) {
        double times = turned ? -by : by;
        Map<String, Double> points = new HashMap<>();
        way.points().forEach((cut, moved) -> points.put(cut, times * moved));
        Map<String, Double> toTheLeft = new HashMap<>();
        way.split().forEach(cut -> toTheLeft.put(cut, 0.03 * times));
        String towards = turned ? way.otherwise() : way.towards();
        return new Miscut(lambs.lamb(points, side, toTheLeft), way.line(), towards, side, by);
    }

    /** What the weights ought to say. */
    Group group() {
        return new Group(Optional.of(line), Optional.of(towards), side);
    }

    /** The way of this name that a table can show. */
    static Way way(Lambs lambs, String line) {
        return ways(lambs.table(), lambs.sided()).stream()
                .filter(way -> way.line().equals(line))
                .findFirst()
                .orElseThrow();
    }
}
