package ribmark.bonemap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribmark.curriculum.Curriculum;

/** The scene of one step: the bones it touches filled in, and the lines it marks or cuts. */
final class Touched {

    private final Curriculum curriculum;
    private final Progress progress;
    private final Drawing drawing;
    private final List<String> bones;
    private final Naming naming;

    Touched(Curriculum curriculum, Progress progress, Drawing view) {
        this.curriculum = curriculum;
        this.progress = progress;
        List<String> all = progress.step().landmark().bones();
        this.bones = all.stream().distinct().filter(view::shows).toList();
        this.drawing = withRoom(view);
        this.naming = new Naming(drawing);
    }

    /** A limb that is touched, and lies over other bones that are touched, is laid aside. */
    private Drawing withRoom(Drawing view) {
        Drawing roomy = view;
        for (String limb : view.limbs()) {
            if (holdsTouched(view, limb) && covers(view, limb)) {
                roomy = roomy.laidAside(limb);
            }
        }
        return roomy;
    }

    private boolean holdsTouched(Drawing view, String limb) {
        return bones.stream().anyMatch(bone -> view.group(bone).equals(limb));
    }

    private boolean covers(Drawing view, String limb) {
        return bones.stream()
                .filter(bone -> !view.group(bone).equals(limb))
                .anyMatch(bone -> !view.lyingOver(bone, limb).isEmpty());
    }

    boolean showsSomething() {
        return !bones.isEmpty();
    }

    Scene scene() {
        Map<String, List<Portion>> portions = new HashMap<>();
        bones.forEach(bone -> portions.put(bone, List.of(Portion.whole(bone, Fill.SOLID))));
        faint().forEach(bone -> portions.put(bone, List.of(Portion.faint(bone))));
        List<DrawnLine> lines = lines();
        return new Scene(
                drawing,
                "Step " + progress.step().number() + ", " + progress.step().title(),
                lines.isEmpty() ? "The bones it touches" : "The bones it touches, and the line",
                portions,
                lines,
                naming.tags(bones, false),
                marks(lines),
                bones.stream()
                        .flatMap(bone -> drawing.bone(bone).stream())
                        .map(Shape::box)
                        .toList());
    }

    /** A limb not touched that lies over what is touched lets it shine through. */
    private Set<String> faint() {
        Set<String> faint = new HashSet<>();
        for (String limb : drawing.limbs()) {
            if (!holdsTouched(drawing, limb) && covers(drawing, limb)) {
                drawing.bones().keySet().stream()
                        .filter(bone -> drawing.group(bone).equals(limb))
                        .forEach(faint::add);
            }
        }
        return faint;
    }

    private List<DrawnLine> lines() {
        List<DrawnLine> lines = new ArrayList<>();
        for (String landmark : progress.lines(drawing)) {
            drawing.linesBy(landmark)
                    .forEach(
                            line -> lines.add(new DrawnLine(line, progress.cut().contains(landmark))));
        }
        progress.midline(drawing).ifPresent(line -> lines.add(new DrawnLine(line, true)));
        return lines;
    }

    private List<Mark> marks(List<DrawnLine> lines) {
        List<Mark> marks = new ArrayList<>();
        List<String> touched = progress.step().landmark().bones();
        List<String> hidden = touched.stream().filter(this::isOutOfSight).toList();
        marks.add(new Mark(
                Fill.SOLID.word(),
                naming.say(touched.stream().filter(bone -> !isOutOfSight(bone)).toList())));
        lines.stream()
                .map(line -> new Mark(line.word(), line.name(curriculum)))
                .distinct()
                .forEach(marks::add);
        marks.addAll(naming.marks(bones));
        if (!hidden.isEmpty()) {
            marks.add(new Mark("out of sight", naming.say(hidden)));
        }
        return marks;
    }

    /** A bone of the midline that this view does not show; right bones are the mirror of left ones. */
    private boolean isOutOfSight(String bone) {
        return !drawing.shows(bone) && drawing.animal().bone(bone).orElseThrow().isMidline();
    }
}
