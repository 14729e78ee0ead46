package ribmark.drills;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Step;

/** Which cut is this, from bones it holds and bones it does not hold. */
final class CutDrills implements DrillMaker {

    /** Bones that the piece holds, all or part of them, and bones of which it holds nothing. */
    private record Clue(List<String> holds, List<String> lacks) {}

    private final Worked worked;
    private final InWords words;
    private final Map<String, List<Set<String>>> pieces = new HashMap<>();

    CutDrills(Worked worked, InWords words) {
        this.worked = worked;
        this.words = words;
        worked.cuts().forEach(cut -> pieces.put(cut.id(), piecesOf(cut)));
    }

    @Override
    public DrillKind kind() {
        return DrillKind.CUT;
    }

    @Override
    public List<Subject> subjects() {
        return worked.steps().stream()
                .filter(step -> !askable(step).isEmpty())
                .map(step -> new Subject(step.id(), step.id(), step.title()))
                .toList();
    }

    private List<Cut> askable(Step step) {
        return worked.named(step).stream().filter(cut -> !cut.isBoneless()).toList();
    }

    /** The bones of one piece, whole or in part; the first that is listed. */
    private Set<String> bones(Cut cut) {
        return pieces(cut).get(0);
    }

    /** The bones of every piece that may be called so: left, right, and with an optional step left out. */
    private static List<Set<String>> piecesOf(Cut cut) {
        return cut.holdings().stream()
                .map(Cut.Holding::parts)
                .map(CutDrills::whole)
                .toList();
    }

    private List<Set<String>> pieces(Cut cut) {
        return pieces.get(cut.id());
    }

    private static Set<String> whole(List<String> parts) {
        return parts.stream()
                .map(part -> part.replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Cut right = Drill.oneOf(askable(worked.step(subject.id())), random);
        List<Cut> others = others(right, random);
        Clue clue = clue(right, others, random);
        String lacks = clue.lacks().isEmpty() ? "" : ", but no part of " + words.bones(clue.lacks());
        String ask = "A piece holds all or part of " + words.bones(clue.holds()) + lacks + ". Which cut is it?";
        List<String> given = new ArrayList<>(clue.holds());
        clue.lacks().forEach(bone -> given.add("not " + bone));
        Drill.About about = new Drill.About(kind(), List.copyOf(given), ask, clue.holds());
        String why = right.name() + ": " + right.text();
        return about.with(
                new Drill.Choice(right.id(), FreeDrills.small(right.name()), why),
                others.stream().map(cut -> wrong(cut, clue)),
                random);
    }

    /** Three other cuts, those that share bones first, none of the very same bones. */
    private List<Cut> others(Cut right, Random random) {
        List<Cut> all = Drill.shuffled(worked.cuts(), random).stream()
                .filter(cut -> !cut.isBoneless() && !pieces(cut).contains(bones(right)))
                .filter(cut -> !cut.name().equals(right.name()))
                .toList();
        Stream<Cut> sharing = all.stream().filter(cut -> bones(cut).stream().anyMatch(bones(right)::contains));
        return Stream.concat(sharing, all.stream()).distinct().limit(3).toList();
    }

    /** For each piece that could be meant instead, one bone that tells it from the right one. */
    private Clue clue(Cut right, List<Cut> others, Random random) {
        List<String> mine = Drill.shuffled(List.copyOf(bones(right)), random);
        Set<String> holds = new LinkedHashSet<>(mine.subList(0, 1));
        Set<String> lacks = new LinkedHashSet<>();
        for (Cut other : others) {
            for (Set<String> theirs : pieces(other)) {
                if (fault(theirs, holds, lacks).isEmpty()) {
                    first(mine, bone -> !theirs.contains(bone))
                            .ifPresentOrElse(
                                    holds::add,
                                    () -> first(
                                                    Drill.shuffled(List.copyOf(theirs), random),
                                                    bone -> !mine.contains(bone))
                                            .ifPresent(lacks::add));
                }
            }
        }
        return new Clue(List.copyOf(holds), List.copyOf(lacks));
    }

    private static Optional<String> first(Collection<String> bones, Predicate<String> like) {
        return bones.stream().filter(like).findFirst();
    }

    /** The bone that shows a piece is not meant: one it should hold and does not, or one it should not. */
    private static Optional<String> fault(Set<String> theirs, Collection<String> holds, Collection<String> lacks) {
        return first(holds, bone -> !theirs.contains(bone)).or(() -> first(lacks, theirs::contains));
    }

    private Drill.Choice wrong(Cut cut, Clue clue) {
        Set<String> nearest = pieces(cut).stream()
                .max(Comparator.comparing(
                        piece -> clue.holds().stream().filter(piece::contains).count()))
                .orElseThrow();
        String bone = fault(nearest, clue.holds(), clue.lacks()).orElseThrow();
        String fault = nearest.contains(bone)
                ? " It holds " + words.bone(bone) + " too."
                : " It holds no part of " + words.bone(bone) + ".";
        return new Drill.Choice(cut.id(), FreeDrills.small(cut.name()), cut.name() + ": " + cut.text() + fault);
    }
}
