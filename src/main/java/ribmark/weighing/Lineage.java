package ribmark.weighing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import ribmark.basics.Side;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Cut.Holding;

/** Which larger piece a piece came out of, and which pieces of it have no weight yet; the bones tell. */
final class Lineage {

    /** A cut on one side. */
    record Of(String cut, Side side) {

        @Override
        public String toString() {
            return side == Side.ONCE ? cut : cut + " " + side.word();
        }
    }

    private final Curriculum curriculum;

    Lineage(Curriculum curriculum) {
        this.curriculum = curriculum;
    }

    /** The row of the smallest weighed-for piece that holds all bones of this one, among the rows asked for. */
    Optional<String> wholeOf(Of piece, Predicate<String> rowIsThere) {
        List<String> bones =
                curriculum.cut(piece.cut()).map(cut -> cut.bones(piece.side())).orElse(List.of());
        return curriculum.cuts().stream()
                .filter(cut -> cut.rows().stream().anyMatch(rowIsThere))
                .filter(cut -> !bones.isEmpty() && holdings(cut).anyMatch(held -> allWithin(bones, held.parts())))
                .min(Comparator.comparingInt(
                        cut -> cut.holdings().get(0).parts().size()))
                .flatMap(cut -> cut.rows().stream().filter(rowIsThere).findFirst());
    }

    /** What of a whole has no weight yet, beside the rows known to be missing: other sides, then final pieces whose bones lie nowhere. */
    List<Of> missing(List<Of> whole, Set<Of> weighed, Set<Of> knownMissing) {
        Set<Of> accounted = new LinkedHashSet<>(weighed);
        accounted.addAll(knownMissing);
        Set<Of> missing = new LinkedHashSet<>();
        weighed.stream()
                .flatMap(of -> sidesOf(of.cut()).stream().map(side -> new Of(of.cut(), side)))
                .filter(of -> !accounted.contains(of))
                .forEach(missing::add);
        accounted.addAll(missing);
        List<String> wholeBones = bones(whole);
        List<String> there = bones(accounted);
        for (Cut cut : curriculum.cuts()) {
            cut.sides().stream()
                    .filter(side -> cut.isFinal() && !cut.bones(side).isEmpty())
                    .filter(side -> allWithin(cut.bones(side), wholeBones) && !allWithin(cut.bones(side), there))
                    .forEach(side -> missing.add(new Of(cut.id(), side)));
        }
        return List.copyOf(missing);
    }

    private List<Side> sidesOf(String cut) {
        return curriculum.cut(cut).map(Cut::sides).orElse(List.of());
    }

    private List<String> bones(Iterable<Of> pieces) {
        Set<String> bones = new LinkedHashSet<>();
        for (Of of : pieces) {
            curriculum.cut(of.cut()).stream()
                    .flatMap(Lineage::holdings)
                    .filter(held -> held.side() == of.side())
                    .forEach(held -> bones.addAll(held.parts()));
        }
        return List.copyOf(bones);
    }

    private static java.util.stream.Stream<Holding> holdings(Cut cut) {
        return cut.holdings().stream();
    }

    private static boolean allWithin(List<String> parts, List<String> larger) {
        return parts.stream().allMatch(part -> larger.stream().anyMatch(other -> within(part, other)));
    }

    /** Whether one is the other, or a half of it: a name is a bone and the halves a saw made, {@code T7.left.far}. */
    static boolean within(String part, String other) {
        List<String> names = Arrays.asList(part.split("\\."));
        List<String> others = Arrays.asList(other.split("\\."));
        return names.get(0).equals(others.get(0)) && names.containsAll(others);
    }
}
