package ribmark.proof;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.curriculum.Line;

/** Reads what is done to an animal when a line runs elsewhere than its steps say. */
final class LineRuns {

    /** One operation as written, and what it stands for in this animal. */
    record Deed(Node written, List<Operation> operations) {}

    private final List<Node> steps;
    private final Ids ids;
    private final Skeleton animal;

    /** The steps are those that cut the line. */
    LineRuns(List<Node> steps, Skeleton animal) {
        this.steps = steps;
        this.ids = Ids.of(animal);
        this.animal = animal;
    }

    /** The steps that cut a line, in the order worked. */
    static List<Node> stepsOf(Node line, Shelf shelf) {
        List<String> named = line.get("steps").texts();
        return shelf.steps().stream()
                .filter(step -> named.contains(step.get("id").text()))
                .toList();
    }

    static List<Line> read(Shelf shelf, Skeleton animal) {
        return shelf.lines().all("lines[]").stream()
                .map(line -> line(line, new LineRuns(stepsOf(line, shelf), animal)))
                .toList();
    }

    private static Line line(Node node, LineRuns runs) {
        return new Line(
                node.get("id").text(),
                node.get("name").text().strip(),
                node.get("steps").texts(),
                node.get("assumes").text().strip(),
                node.all("runs[]").stream().map(runs::run).toList(),
                CurriculumReader.restsOn(node));
    }

    private Line.Run run(Node node) {
        Map<Side, List<Operation>> operations = new EnumMap<>(Side.class);
        sides(node)
                .forEach(side -> operations.put(
                        side,
                        deeds(node, side).stream()
                                .flatMap(deed -> deed.operations().stream())
                                .toList()));
        return new Line.Run(
                node.get("towards").text().strip(),
                (int) node.get("by").number(),
                node.get("how-far").text().strip(),
                operations,
                CurriculumReader.restsOn(node));
    }

    /** The sides it can be wrong on: both together, and each alone where the file says what one side does. */
    static List<Side> sides(Node run) {
        if (way(run, Side.LEFT).isThere()) {
            return List.of(Side.BOTH, Side.LEFT, Side.RIGHT);
        }
        return way(run, Side.BOTH).isThere() ? List.of(Side.BOTH) : List.of();
    }

    /** What is written for a side; what one side does stands for both where nothing else is written for both. */
    static Node way(Node run, Side side) {
        Node both = run.get("both-sides");
        return side == Side.BOTH && both.isThere() ? both : run.get("one-side");
    }

    /** What the steps do when the line runs where it should. */
    List<Deed> asSpecified() {
        return steps.stream()
                .flatMap(step -> step.get("operations").items().stream())
                .map(written -> new Deed(written, Deeds.operations(written, ids)))
                .toList();
    }

    /** What is done when it runs elsewhere on this side: first what stays as it should be. */
    List<Deed> deeds(Node run, Side side) {
        List<Deed> deeds = new ArrayList<>();
        if (side != Side.BOTH || !run.get("both-sides").isThere()) {
            asSpecified().forEach(deed -> deeds.add(new Deed(deed.written(), without(side, deed.operations()))));
        }
        for (Node node : way(run, side).get("operations").items()) {
            Operation written = Deeds.operation(node);
            boolean alone = side != Side.BOTH && Ids.isSided(written);
            deeds.add(new Deed(node, alone ? ids.operations(written, side) : ids.operations(written)));
        }
        return deeds;
    }

    /** The same without what lies on that side, or on either. */
    private List<Operation> without(Side side, List<Operation> operations) {
        return operations.stream()
                .flatMap(operation -> Stream.of(operation.ids().stream()
                                .filter(id -> !isOn(side, animal.sideOf(id)))
                                .toList())
                        .filter(left -> !left.isEmpty())
                        .map(operation::on))
                .toList();
    }

    private static boolean isOn(Side side, Side where) {
        return side == Side.BOTH ? where != Side.ONCE : side == where;
    }
}
