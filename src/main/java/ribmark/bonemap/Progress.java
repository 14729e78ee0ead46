package ribmark.bonemap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Piece;
import ribmark.anatomy.Plane;
import ribmark.basics.Side;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow;
import ribmark.curriculum.MapRow.Role;
import ribmark.curriculum.Step;

/**
 * How far the work has come after a step: the pieces and what they are called, the lines that are cut, and which line each
 * sawn bone was sawn along.
 */
record Progress(
        Step step,
        Animal animal,
        Map<Set<String>, Cut> names,
        Set<String> cut,
        Map<String, List<String>> sawnAlong,
        boolean onMidline) {

    /** A line runs on past the first and last bone by so much: ours. */
    private static final double MARGIN = 24;

    /** After every step, all optional ones done. */
    static List<Progress> through(Curriculum curriculum) {
        Animal now = Animal.whole(curriculum.skeleton());
        Set<String> cut = new HashSet<>();
        Map<String, List<String>> sawn = new HashMap<>();
        Map<Set<String>, Cut> names = new HashMap<>();
        List<Progress> all = new ArrayList<>();
        for (Step step : curriculum.breakdown().steps()) {
            List<String> lines = lines(curriculum, step);
            now = now.after(step.operations());
            if (!step.operations().isEmpty()
                    || !step.frees().isEmpty()
                    || !step.leaves().isEmpty()) {
                cut.addAll(lines);
            }
            sawnAcross(step).forEach(bone -> sawn.put(bone, lines));
            cuts(curriculum, step)
                    .forEach(each -> each.holdings().forEach(holding -> names.put(Set.copyOf(holding.parts()), each)));
            all.add(new Progress(
                    step, now, Map.copyOf(names), Set.copyOf(cut), Map.copyOf(sawn), onMidline(curriculum, step)));
        }
        return List.copyOf(all);
    }

    private static List<Cut> cuts(Curriculum curriculum, Step step) {
        return Stream.concat(step.frees().stream(), step.leaves().stream())
                .flatMap(id -> curriculum.cut(id).stream())
                .toList();
    }

    /** What a piece is called since it came free. */
    Optional<Cut> cutOf(Piece piece) {
        return Optional.ofNullable(names.get(Set.copyOf(piece.names())));
    }

    /** The landmarks of a step that a line runs by. */
    private static List<String> lines(Curriculum curriculum, Step step) {
        List<String> drawn = curriculum.map().stream()
                .filter(row -> row.role() == Role.LINE)
                .map(MapRow::of)
                .toList();
        return step.landmark().uses().stream().filter(drawn::contains).toList();
    }

    List<String> lines(Drawing drawing) {
        return step.landmark().uses().stream()
                .filter(landmark -> drawing.linesBy(landmark).findAny().isPresent())
                .toList();
    }

    /** Of the line down the middle the stretch this step works along, when it does. */
    Optional<Shape> midline(Drawing drawing) {
        List<Box> worked = step.landmark().bones().stream()
                .flatMap(bone -> drawing.bone(bone).stream())
                .map(Shape::box)
                .toList();
        return drawing.midline().filter(line -> onMidline && !worked.isEmpty()).map(line -> {
            Box all = worked.stream().reduce(Box::with).orElseThrow();
            double y = line.box().middle().y();
            return line.with(List.of(MapPoint.at(all.left() - MARGIN, y), MapPoint.at(all.right() + MARGIN, y)));
        });
    }

    private static List<String> sawnAcross(Step step) {
        List<String> bones = new ArrayList<>();
        for (Operation operation : step.operations()) {
            if (operation instanceof Operation.Saw saw && saw.plane() == Plane.ACROSS) {
                saw.ids().forEach(id -> bones.add(id.replaceAll("\\..*", "")));
            }
        }
        return bones;
    }

    /** Whether the step works down the middle: by a saw, or by a joint between a left and a right bone. */
    private static boolean onMidline(Curriculum curriculum, Step step) {
        return step.operations().stream().anyMatch(operation -> {
            boolean saw = operation instanceof Operation.Saw sawn && sawn.plane() == Plane.MIDLINE;
            boolean seam = operation instanceof Operation.Sever
                    && operation.ids().stream()
                            .flatMap(id -> curriculum.skeleton().joint(id).stream())
                            .anyMatch(joint -> joinsSides(curriculum, joint));
            return saw || seam;
        });
    }

    private static boolean joinsSides(Curriculum curriculum, Joint joint) {
        Side a = side(curriculum, joint.boneA());
        Side b = side(curriculum, joint.boneB());
        return a == Side.LEFT && b == Side.RIGHT || a == Side.RIGHT && b == Side.LEFT;
    }

    private static Side side(Curriculum curriculum, String bone) {
        return curriculum.skeleton().bone(bone).orElseThrow().side();
    }
}
