package ribmark.bonemap;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.anatomy.End;
import ribmark.anatomy.Part;
import ribmark.anatomy.Piece;
import ribmark.basics.Side;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.MapPoint;

/** The scene of what lies there after a step: each cut with a fill and a word of its own. */
final class Pieces {

    /** So many cuts are shown together; when there are more, the new ones alone: ours. */
    private static final int FEW = 3;

    private final Curriculum curriculum;
    private final Progress progress;
    private final Drawing drawing;
    private final Naming naming;
    private final Map<Piece, Cut> named = new LinkedHashMap<>();
    private final List<Cut> shown;

    Pieces(Curriculum curriculum, Progress progress, Drawing view) {
        this.curriculum = curriculum;
        this.progress = progress;
        progress.animal().pieces().forEach(piece -> progress.cutOf(piece).ifPresent(cut -> named.put(piece, cut)));
        this.shown = shown(view);
        this.drawing = withRoom(view);
        this.naming = new Naming(drawing);
    }

    /** All of them while there are few; later the new ones alone. From head to tail, so that like patterns lie apart. */
    private List<Cut> shown(Drawing view) {
        List<Cut> inSight = named.entrySet().stream()
                .filter(entry -> !visible(view, entry.getKey()).isEmpty())
                .map(Map.Entry::getValue)
                .distinct()
                .sorted(Comparator.comparingDouble(cut -> place(view, cut)))
                .toList();
        return inSight.size() <= FEW
                ? inSight
                : inSight.stream().filter(this::isNew).limit(Fill.PATTERNS).toList();
    }

    private boolean isNew(Cut cut) {
        return progress.step().frees().contains(cut.id())
                || progress.step().leaves().contains(cut.id());
    }

    private double place(Drawing view, Cut cut) {
        return pieces(cut)
                .flatMap(piece -> visible(view, piece).stream())
                .flatMap(part -> view.bone(part.bone().id()).stream())
                .mapToDouble(shape -> shape.box().middle().x())
                .average()
                .orElse(0);
    }

    private Stream<Piece> pieces(Cut cut) {
        return named.entrySet().stream()
                .filter(entry -> entry.getValue().equals(cut))
                .map(Map.Entry::getKey);
    }

    /** Of a bone split on the midline only the left half is in sight where a view shows the left alone. */
    private static List<Part> visible(Drawing view, Piece piece) {
        return piece.parts().stream()
                .filter(part -> view.shows(part.bone().id()))
                .filter(part -> view.showsBothSides() || part.side() != Side.RIGHT)
                .toList();
    }

    /** A limb that went to another cut than what it lies over is laid aside, where there is room for it. */
    private Drawing withRoom(Drawing view) {
        Map<String, Cut> cuts = new HashMap<>();
        shown.forEach(cut -> pieces(cut)
                .forEach(piece -> visible(view, piece)
                        .forEach(part -> cuts.putIfAbsent(part.bone().id(), cut))));
        Drawing roomy = view;
        for (String limb : view.asides().keySet()) {
            boolean over = cuts.keySet().stream()
                    .filter(bone -> !view.group(bone).equals(limb))
                    .anyMatch(bone -> view.lyingOver(bone, limb).stream()
                            .anyMatch(other ->
                                    cuts.containsKey(other) && !cuts.get(other).equals(cuts.get(bone))));
            roomy = over ? roomy.laidAside(limb) : roomy;
        }
        return roomy;
    }

    /** Whether the step frees something that has bones, or looks again at what lines cut before have parted. */
    boolean showsSomething() {
        List<String> lines = progress.lines(drawing);
        boolean looksAgain = progress.step().operations().isEmpty()
                && !lines.isEmpty()
                && progress.cut().containsAll(lines)
                && shown.size() > 1;
        return looksAgain || shown.stream().anyMatch(this::isNew);
    }

    Scene scene() {
        return new Scene(
                drawing,
                "Step " + progress.step().number() + ", " + progress.step().title(),
                "The pieces after it",
                portions(),
                lines(),
                tags(),
                marks(),
                focus());
    }

    private Map<String, List<Portion>> portions() {
        Halving halving = new Halving(drawing);
        Map<String, List<Portion>> portions = new HashMap<>();
        named.forEach((piece, cut) -> visible(drawing, piece).forEach(part -> {
            int at = shown.indexOf(cut);
            portions.computeIfAbsent(part.bone().id(), bone -> new ArrayList<>())
                    .add(new Portion(
                            part.name(), at < 0 ? Fill.PLAIN : Fill.values()[at], at < 0, clips(part, halving)));
        }));
        return portions;
    }

    private List<List<MapPoint>> clips(Part part, Halving halving) {
        List<List<MapPoint>> clips = new ArrayList<>();
        if (part.bone().isMidline() && part.halves().isSided()) {
            drawing.midline().ifPresent(line -> clips.add(Halving.side(line.curve(), part.side() == Side.RIGHT)));
        }
        List<String> along = progress.sawnAlong().getOrDefault(part.bone().id(), List.of());
        for (End end : part.halves().ends()) {
            halving.part(part.bone().id(), along.stream().flatMap(drawing::linesBy), end)
                    .ifPresent(clips::add);
        }
        return clips;
    }

    private List<DrawnLine> lines() {
        boolean all = shown.size() == named.values().stream().distinct().count();
        List<String> landmarks = all
                ? progress.cut().stream().sorted().toList()
                : progress.lines(drawing).stream()
                        .filter(progress.cut()::contains)
                        .toList();
        List<DrawnLine> lines = new ArrayList<>(landmarks.stream()
                .flatMap(drawing::linesBy)
                .map(line -> new DrawnLine(line, true))
                .toList());
        progress.midline(drawing)
                .filter(line -> shown.stream().flatMap(this::pieces).anyMatch(Pieces::isSplit))
                .ifPresent(line -> lines.add(new DrawnLine(line, true)));
        return lines;
    }

    private static boolean isSplit(Piece piece) {
        return piece.parts().stream().anyMatch(part -> part.halves().isSided());
    }

    private List<Tag> tags() {
        List<Tag> tags = new ArrayList<>();
        for (Cut cut : shown) {
            pieces(cut)
                    .forEach(piece -> anchor(visible(drawing, piece))
                            .ifPresent(at -> tags.add(Tag.near(at, List.of(), cut.name(), true))));
        }
        return tags;
    }

    /** A spot in sight on the bone that lies nearest to the middle of the piece. */
    private Optional<MapPoint> anchor(List<Part> parts) {
        Map<MapPoint, Shape> spots = new LinkedHashMap<>();
        Halving halving = new Halving(drawing);
        for (Part part : parts) {
            drawing.bone(part.bone().id())
                    .filter(bone -> clips(part, halving).stream()
                            .allMatch(clip -> Halving.inside(Naming.anchor(bone), clip)
                                    || part.halves().ends().isEmpty()))
                    .ifPresent(bone -> spots.put(Naming.anchor(bone), bone));
        }
        MapPoint middle = middle(spots.values());
        return spots.keySet().stream()
                .filter(spot -> !drawing.isCovered(spot, spots.get(spot)))
                .min(Comparator.comparingDouble(spot -> spot.minus(middle).length()));
    }

    /** The middle of some bones, large ones counting for more. */
    private static MapPoint middle(Collection<Shape> bones) {
        double area = bones.stream().map(Shape::box).mapToDouble(Box::area).sum();
        return bones.stream()
                .map(Shape::box)
                .map(box -> box.middle().times(box.area() / area))
                .reduce(MapPoint.at(0, 0), MapPoint::plus);
    }

    private List<Box> focus() {
        return shown.stream()
                .flatMap(this::pieces)
                .flatMap(piece -> visible(drawing, piece).stream())
                .flatMap(part -> drawing.bone(part.bone().id()).stream())
                .map(Shape::box)
                .toList();
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (Cut cut : shown) {
            List<Part> parts =
                    pieces(cut).flatMap(piece -> piece.parts().stream()).toList();
            marks.add(new Mark(Fill.values()[shown.indexOf(cut)].word(), cut.name() + ": " + naming.sayParts(parts)));
        }
        lines().stream()
                .map(line -> new Mark(line.word(), line.name(curriculum)))
                .distinct()
                .forEach(marks::add);
        if (shown.size() < named.values().stream().distinct().count()) {
            marks.add(new Mark(Portion.FAINT_IN_WORDS, "What lies apart from them"));
        }
        Stream.concat(progress.step().frees().stream(), progress.step().leaves().stream())
                .flatMap(id -> curriculum.cut(id).stream())
                .filter(Cut::isBoneless)
                .forEach(cut -> marks.add(new Mark("no bones", cut.name())));
        return marks;
    }
}
