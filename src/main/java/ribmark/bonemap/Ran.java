package ribmark.bonemap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.anatomy.Comparison;
import ribmark.anatomy.Comparison.Whereabouts;
import ribmark.anatomy.End;
import ribmark.anatomy.Part;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow.Role;
import ribmark.moved.Outcome;
import ribmark.moved.Way;

/** The scene of a line that ran elsewhere: the pieces as they came, and the bones that ended up in another one filled in. */
final class Ran {

    private final Outcome outcome;
    private final Progress progress;
    private final Drawing drawing;
    private final Naming naming;
    private final List<Shape> ran;
    private final List<Comparison.Pair> changed;

    Ran(Outcome outcome, Progress progress, Drawing view) {
        this.outcome = outcome;
        this.progress = progress;
        this.ran = view.moved(name(outcome.way()), outcome.way().side());
        this.drawing = withRoom(view);
        this.naming = new Naming(drawing);
        this.changed = outcome.comparison().pieces().stream()
                .filter(pair -> !pair.isAsItShouldBe())
                .filter(pair -> pair.is().stream()
                        .flatMap(piece -> piece.parts().stream())
                        .anyMatch(this::inSight))
                .toList();
    }

    private static String name(Way way) {
        return way.line().id() + "-" + way.run().towards() + "-" + way.run().by();
    }

    /** Whether this view draws the line where it ran and looks at that side of the animal: along the middle when one side alone was wrong, else from the side. */
    boolean showsSomething() {
        Side side = outcome.way().side();
        return !ran.isEmpty() && (drawing.showsBothSides() ? side != Side.BOTH || onlyAlong() : side != Side.RIGHT);
    }

    private boolean onlyAlong() {
        return elsewhere().noneMatch(bone -> drawing.shows(bone.part().bone().id()));
    }

    private Stream<Whereabouts> elsewhere() {
        return outcome.comparison().elsewhere().stream();
    }

    /** A limb that lies over a bone that went elsewhere is laid aside, where there is room for it. */
    private Drawing withRoom(Drawing view) {
        Drawing roomy = view;
        for (String limb : view.limbs()) {
            boolean over = elsewhere()
                    .map(bone -> bone.part().bone().id())
                    .filter(bone -> !view.group(bone).equals(limb))
                    .anyMatch(bone -> !view.lyingOver(bone, limb).isEmpty());
            roomy = over ? roomy.laidAside(limb) : roomy;
        }
        return roomy;
    }

    Scene scene() {
        List<String> bones =
                elsewhere().map(bone -> bone.part().bone().id()).distinct().toList();
        return new Scene(
                drawing,
                outcome.way().says(),
                drawing.showsBothSides() ? "From the back" : "From the left",
                portions(),
                lines(),
                naming.tags(bones, true),
                marks(),
                focus(bones));
    }

    private Map<String, List<Portion>> portions() {
        Map<String, List<Portion>> portions = new HashMap<>();
        outcome.comparison().bones().stream()
                .filter(bone -> inSight(bone.part()))
                .forEach(bone -> portions.computeIfAbsent(bone.part().bone().id(), id -> new ArrayList<>())
                        .add(portion(bone)));
        return portions;
    }

    private boolean inSight(Part part) {
        return drawing.shows(part.bone().id()) && (drawing.showsBothSides() || part.side() != Side.RIGHT);
    }

    private Portion portion(Whereabouts bone) {
        int at = changed.indexOf(bone.is());
        Fill fill = bone.isElsewhere() ? Fill.SOLID : at < 0 ? Fill.PLAIN : Fill.values()[at];
        return new Portion(bone.part().name(), fill, at < 0, clips(bone.part()));
    }

    private List<List<MapPoint>> clips(Part part) {
        List<List<MapPoint>> clips = new ArrayList<>();
        if (part.bone().isMidline() && part.halves().isSided()) {
            drawing.midline().ifPresent(line -> clips.add(Halving.side(line.curve(), part.side() == Side.RIGHT)));
        }
        Halving halving = new Halving(drawing);
        for (End end : part.halves().ends()) {
            halving.part(part.bone().id(), sawnAlong(part.bone().id()), end).ifPresent(clips::add);
        }
        return clips;
    }

    /** The line a bone was sawn along as it should be, or else the one that ran elsewhere. */
    private Stream<Shape> sawnAlong(String bone) {
        return Optional.ofNullable(progress.sawnAlong().get(bone))
                .map(landmarks -> landmarks.stream().flatMap(drawing::linesBy))
                .orElseGet(ran::stream);
    }

    private List<DrawnLine> lines() {
        List<DrawnLine> lines =
                new ArrayList<>(should().map(line -> new DrawnLine(line, true)).toList());
        ran.forEach(line -> lines.add(new DrawnLine(line, DrawnLine.Stroke.RAN)));
        return lines;
    }

    /** Where it should run, on every side in sight. */
    private Stream<Shape> should() {
        List<String> landmarks = drawing.all(Role.LINE).stream()
                .filter(line -> ran.stream().anyMatch(moved -> moved.of().equals(line.id())))
                .map(Shape::of)
                .distinct()
                .toList();
        return landmarks.stream().flatMap(drawing::linesBy);
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        outcome.sentences().stream()
                .limit(elsewhere().findAny().isPresent() ? outcome.sentences().size() - 1L : 0)
                .forEach(sentence ->
                        marks.add(new Mark(Fill.SOLID.word(), sentence.substring(0, sentence.length() - 1))));
        for (Comparison.Pair pair : changed) {
            marks.add(new Mark(
                    Fill.values()[changed.indexOf(pair)].word(), Words.capital(outcome.name(pair)) + " as it came"));
        }
        marks.add(new Mark("solid line", "Where the line should run"));
        marks.add(new Mark("dotted line", "Where it ran: " + outcome.way().howFar()));
        if (outcome.comparison().pieces().size() > changed.size()) {
            marks.add(new Mark("faint", "What lies apart from them"));
        }
        return marks;
    }

    private List<Box> focus(List<String> bones) {
        return Stream.concat(bones.stream().flatMap(bone -> drawing.bone(bone).stream()), ran.stream())
                .map(Shape::box)
                .toList();
    }
}
