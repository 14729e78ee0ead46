package ribmark.drills;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Landmark;
import ribmark.curriculum.Step;

/** How many ribs lie in front of a line, or behind it; on the usual animal and on animals with more or fewer. */
final class RibDrills implements DrillMaker {

    /** How far from the usual count animals are asked about: one pair more or fewer, which are seen in most flocks (ours). */
    private static final int VARIED = 1;

    private final Curriculum curriculum;
    private final List<RibCage> animals;

    RibDrills(Curriculum curriculum) {
        this.curriculum = curriculum;
        this.animals = animals(curriculum.skeleton());
    }

    /** The usual animal first, then those whose region of the ribs is longer or shorter. */
    private static List<RibCage> animals(Skeleton usual) {
        RibCage cage = RibCage.of(usual);
        return Stream.of(0, -VARIED, VARIED)
                .flatMap(more -> varied(usual, cage.region(), more).stream())
                .map(RibCage::of)
                .toList();
    }

    private static Optional<Skeleton> varied(Skeleton usual, int region, int more) {
        List<Integer> counts = new ArrayList<>(usual.formula().counts());
        if (region < 0 || more == 0) {
            return more == 0 ? Optional.of(usual) : Optional.empty();
        }
        counts.set(region, counts.get(region) + more);
        try {
            return Optional.of(usual.withFormula(new Formula(counts)));
        } catch (Refused noSuchAnimal) {
            return Optional.empty();
        }
    }

    @Override
    public DrillKind kind() {
        return DrillKind.RIBS;
    }

    @Override
    public List<Subject> subjects() {
        return curriculum.breakdown().steps().stream()
                .filter(step -> !lines(step).isEmpty())
                .map(step -> new Subject(step.id(), step.id(), step.title()))
                .toList();
    }

    /** The lines a step cuts or looks for: spaces between ribs, and discs of the backbone. */
    private List<Joint> lines(Step step) {
        Stream<String> severed = step.operations().stream()
                .filter(Operation.Sever.class::isInstance)
                .flatMap(operation -> operation.ids().stream());
        Stream<String> looked = step.landmark().uses().stream()
                .flatMap(id -> curriculum.landmark(id).stream())
                .map(Landmark::joints)
                .flatMap(List::stream);
        return Stream.concat(severed, looked)
                .map(id -> id.replaceAll("\\..*", ""))
                .distinct()
                .flatMap(id -> curriculum.skeleton().joint(id).stream())
                .filter(animals.get(0)::isLine)
                .toList();
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Joint line = Drill.oneOf(lines(curriculum.breakdown().step(subject.id()).orElseThrow()), random);
        RibCage cage =
                Drill.oneOf(animals.stream().filter(animal -> animal.has(line)).toList(), random);
        boolean behind = random.nextBoolean();
        int pairs = cage.pairs();
        int inFront = cage.inFront(line);
        String ask = "This animal has " + pairs + " pairs of ribs. A line runs " + cage.said(line)
                + ". How many pairs lie " + (behind ? "behind it" : "in front of it, towards the neck") + "?";
        Drill.About about = new Drill.About(
                kind(),
                List.of(cage.formula(), line.id(), behind ? "behind" : "in front"),
                ask,
                List.of(line.boneA(), line.boneB()));
        int right = behind ? pairs - inFront : inFront;
        Stream<Drill.Choice> wrong = counts(right, pairs, random)
                .mapToObj(count -> new Drill.Choice(
                        "" + count, RibCage.count(count), cage.wouldBe(behind ? pairs - count : count)));
        return about.with(new Drill.Choice("" + right, RibCage.count(right), cage.why(line, behind)), wrong, random);
    }

    /** Counts near the right one first: those are the slips made. */
    private static IntStream counts(int right, int pairs, Random random) {
        List<Integer> order = Drill.shuffled(
                IntStream.rangeClosed(0, pairs).filter(n -> n != right).boxed().toList(), random);
        return order.stream()
                .sorted(Comparator.comparing(n -> Math.abs(n - right)))
                .mapToInt(n -> n);
    }
}
