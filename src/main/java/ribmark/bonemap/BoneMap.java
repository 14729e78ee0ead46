package ribmark.bonemap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Newest;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.MapRow;
import ribmark.curriculum.MapRow.Role;
import ribmark.curriculum.Step;
import ribmark.moved.Outcome;
import ribmark.moved.Way;

/** All pictures of the skeleton that the curriculum asks for. */
public final class BoneMap {

    /** A bone smaller than this on the whole sheet, in square units, gets no name of its own: ours. */
    private static final double TOO_SMALL_FOR_A_NAME = 4000;

    /** The pictures of so many animals beside the usual one are remembered: ours. */
    private static final int ANIMALS = 6;

    private final Curriculum curriculum;
    private final Map<String, Drawing> drawings = new ConcurrentHashMap<>();
    private final Map<String, Optional<Scene>> scenes = new ConcurrentHashMap<>();
    private final Map<String, Map<String, Scene>> ways = new ConcurrentHashMap<>();
    private final Map<String, String> files = new ConcurrentHashMap<>();
    private final Newest<Formula, BoneMap> others = new Newest<>(ANIMALS);
    private List<Progress> progress = List.of();

    /** The pictures show this curriculum's animal. */
    public BoneMap(Curriculum curriculum) {
        this.curriculum = curriculum;
    }

    Curriculum curriculum() {
        return curriculum;
    }

    /** The same pictures of the animal of another reading of the same content. */
    BoneMap on(Curriculum other) {
        Formula formula = other.skeleton().formula();
        return formula.equals(curriculum.skeleton().formula()) ? this : others.get(formula, f -> new BoneMap(other));
    }

    /** What tells the addresses of its pictures from those of the usual animal. */
    String animal() {
        return curriculum.isUsual() ? "" : "&formula=" + curriculum.skeleton().formula();
    }

    /** A file drawn once for as long as it is remembered. */
    String file(String address, Supplier<String> drawing) {
        return files.computeIfAbsent(address, one -> drawing.get());
    }

    /** The views there are, the first of them the one most is shown in. */
    List<String> views() {
        return curriculum.map().stream()
                .filter(row -> row.role() == Role.FIELD)
                .map(MapRow::view)
                .distinct()
                .toList();
    }

    Drawing drawing(String view) {
        return drawings.computeIfAbsent(view, id -> drawing(id, curriculum.skeleton()));
    }

    private Drawing drawing(String view, Skeleton animal) {
        return Variation.of(view, curriculum.map(), animal);
    }

    /** An animal with these numbers of vertebrae; refuses numbers that no animal can have. */
    Drawing drawing(String view, Formula formula) {
        return drawing(view, curriculum.skeleton().withFormula(formula));
    }

    /** All bones of a drawing with their short names and the names of the large ones. */
    Scene plain(Drawing drawing) {
        List<String> named = drawing.all(Role.BONE).stream()
                .filter(shape -> isNamed(drawing, shape))
                .map(Shape::id)
                .toList();
        Naming naming = new Naming(drawing);
        return new Scene(
                drawing,
                curriculum.breakdown().title() + ", " + drawing.animal().formula(),
                drawing.showsBothSides() ? "From the back" : "From the left",
                Map.of(),
                List.of(),
                naming.tags(named, false),
                naming.marks(named),
                List.of());
    }

    private static boolean isNamed(Drawing drawing, Shape shape) {
        boolean midline = drawing.animal().bone(shape.id()).map(Bone::isMidline).orElse(false);
        return midline || shape.box().area() > TOO_SMALL_FOR_A_NAME;
    }

    /** Some bones alone, without their names, where one view shows them all. */
    Optional<Scene> asked(List<String> bones) {
        return Asked.of(views().stream().map(this::drawing).toList(), bones)
                .map(asked -> asked.scene(curriculum.breakdown().title()));
    }

    /** What a step touches, when it touches bones. */
    Optional<Scene> touched(Step step) {
        return scene("touched " + step.id(), step, after -> {
            Touched touched = new Touched(curriculum, after, view(after));
            return Optional.of(touched).filter(Touched::showsSomething).map(Touched::scene);
        });
    }

    /** The pieces after a step, when there are any. */
    Optional<Scene> pieces(Step step) {
        return scene("pieces " + step.id(), step, after -> {
            Pieces pieces = new Pieces(curriculum, after, view(after));
            return Optional.of(pieces).filter(Pieces::showsSomething).map(Pieces::scene);
        });
    }

    /** A line that ran elsewhere, by the views it can be seen in. */
    Map<String, Scene> ran(Way way) {
        return ways.computeIfAbsent(String.join(" ", way.words()), words -> {
            Outcome outcome = Outcome.of(curriculum, way);
            String last = way.line().steps().get(way.line().steps().size() - 1);
            Progress after = progress().stream()
                    .filter(each -> each.step().id().equals(last))
                    .findFirst()
                    .orElseThrow();
            Map<String, Scene> scenes = new LinkedHashMap<>();
            for (String view : views()) {
                Ran ran = new Ran(outcome, after, drawing(view));
                if (ran.showsSomething()) {
                    scenes.put(view, ran.scene());
                }
            }
            return scenes;
        });
    }

    private Optional<Scene> scene(String key, Step step, Function<Progress, Optional<Scene>> making) {
        Optional<Progress> after =
                progress().stream().filter(each -> each.step().equals(step)).findFirst();
        return scenes.computeIfAbsent(key, id -> after.flatMap(making));
    }

    private synchronized List<Progress> progress() {
        if (progress.isEmpty()) {
            progress = Progress.through(curriculum);
        }
        return progress;
    }

    /** Work down the middle is seen in the view that looks along it. */
    private Drawing view(Progress after) {
        List<Drawing> all = new ArrayList<>(views().stream().map(this::drawing).toList());
        return all.stream()
                .filter(drawing -> after.onMidline() == drawing.midline().isPresent())
                .findFirst()
                .orElse(all.get(0));
    }
}
