package ribmark.drills;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Joint;
import ribmark.anatomy.NaiveAnimal;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Plane;
import ribmark.anatomy.Skeleton;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Line;
import ribmark.curriculum.Step;
import ribmark.curriculum.Term;
import ribmark.moved.Way;

/**
 * Says of each choice of a made question whether it is right, by another way than the one it was made in: with the slow
 * animal of the tests, from the rows of the files, and from the numbers in the names of bones.
 */
final class Reproof {

    private record Seen(Set<String> opened, Set<Set<String>> freed) {}

    private final Curriculum curriculum;
    private final Map<String, Seen> seen = new LinkedHashMap<>();
    private final Map<String, Term> terms;
    private final Map<List<String>, Set<Set<String>>> ran = new LinkedHashMap<>();
    private final Map<Formula, Skeleton> animals = new LinkedHashMap<>();

    Reproof(Curriculum curriculum) {
        this.curriculum = curriculum;
        this.terms = new TermPlaces(curriculum).terms();
        NaiveAnimal animal = new NaiveAnimal(curriculum.skeleton());
        for (Step step : curriculum.breakdown().steps()) {
            Set<String> opened = held(animal);
            Set<Set<String>> before = animal.pieces();
            step.operations().forEach(operation -> work(animal, operation));
            Set<Set<String>> freed = new HashSet<>(animal.pieces());
            freed.removeAll(before);
            opened.removeAll(held(animal));
            seen.put(step.id(), new Seen(opened, freed));
        }
    }

    private static Set<String> held(NaiveAnimal animal) {
        return animal.holds().stream()
                .map(held -> held[0].replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void work(NaiveAnimal animal, Operation operation) {
        if (operation instanceof Operation.Sever) {
            operation.ids().forEach(animal::sever);
        } else if (operation instanceof Operation.Saw saw) {
            saw.ids().forEach(id -> animal.saw(id, saw.plane() == Plane.ACROSS));
        } else {
            animal.lift(Set.copyOf(operation.ids()));
        }
    }

    boolean isRight(Drill drill, Drill.Choice choice) {
        return switch (drill.kind()) {
            case NAME_BONE -> isTheBone(drill.given(), choice.id());
            case RIBS -> isTheCount(drill.given(), Integer.parseInt(choice.id()));
            case JOINT -> seen.get(drill.given().get(0)).opened().contains(choice.id());
            case ORDER -> canBeWorked(drill.given(), List.of(choice.id().split(" ")));
            case FREE -> comesFree(step(drill.given().get(0)), choice.id());
            case CUT -> isTheCut(drill.given(), cut(choice.id()));
            case MOVED ->
                drill.given().size() > 4 ? isThere(drill.given(), choice.id()) : wentOver(drill.given(), choice.id());
            case WORD ->
                Set.copyOf(terms.get(drill.given().get(0)).bones())
                        .equals(Set.copyOf(terms.get(choice.id()).bones()));
        };
    }

    /** How many bones of the whole animal fit what is said. */
    long fitting(Drill drill) {
        return curriculum.skeleton().bones().stream()
                .filter(bone -> isTheBone(drill.given(), bone.id()))
                .count();
    }

    private boolean isTheBone(List<String> given, String id) {
        var bone = curriculum.skeleton().bone(id).orElseThrow();
        return bone.region().equals(given.get(0))
                && bone.side().word().equals(given.get(1))
                && given.subList(2, given.size()).stream().allMatch(other -> meet(id, other));
    }

    private boolean meet(String one, String other) {
        return curriculum.skeleton().joints().stream()
                .anyMatch(joint -> !joint.type().startsWith("soft:")
                        && (joint.boneA() + " " + joint.boneB()).matches(one + " " + other + "|" + other + " " + one));
    }

    /** From the names alone: a thoracic vertebra and its rib have the same number, neck has none before it, loin has all. */
    private boolean isTheCount(List<String> given, int count) {
        Formula formula = Formula.parse(given.get(0));
        Skeleton animal = animals.computeIfAbsent(formula, curriculum.skeleton()::withFormula);
        Joint line = animal.joint(given.get(1)).orElseThrow();
        int pairs = formula.counts().get(1);
        String before = line.boneA();
        int number = Integer.parseInt(before.replaceAll("[^0-9]", ""));
        int inFront = before.startsWith("C") ? 0 : before.startsWith("T") || before.startsWith("R") ? number : pairs;
        return count == (given.get(2).equals("behind") ? pairs - inFront : inFront);
    }

    private boolean canBeWorked(List<String> done, List<String> order) {
        Set<String> ready = new HashSet<>(done);
        if (order.size() == 1) {
            return ready.containsAll(step(order.get(0)).needs()) && !ready.contains(order.get(0));
        }
        for (int at = 0; at < order.size(); at++) {
            Set<String> before = allBefore(order.get(at), new HashSet<>());
            if (order.subList(at + 1, order.size()).stream().anyMatch(before::contains)) {
                return false;
            }
        }
        return true;
    }

    private Set<String> allBefore(String id, Set<String> all) {
        step(id).needs().stream().filter(all::add).forEach(need -> allBefore(need, all));
        return all;
    }

    private boolean comesFree(Step step, String id) {
        List<String> named = new ArrayList<>(step.frees());
        named.addAll(step.leaves());
        Set<Set<String>> freed = seen.get(step.id()).freed();
        if (id.isEmpty()) {
            return freed.isEmpty() && named.isEmpty();
        }
        return cut(id).isBoneless() || step.operations().isEmpty()
                ? named.contains(id)
                : cut(id).holdings().stream().anyMatch(holding -> freed.contains(Set.copyOf(holding.parts())));
    }

    /** The piece the bone is in holds this part; nothing else is in it when it is said to lie by itself. */
    private boolean isThere(List<String> given, String part) {
        Set<String> piece = pieceWith(moved(given), given.get(4));
        return part.isEmpty() ? piece.size() == 1 : piece.contains(part);
    }

    /** It went over when most of what lies around it as it should does not lie around it now. */
    private boolean wentOver(List<String> given, String bone) {
        Set<String> is = pieceWith(moved(given), bone);
        Set<String> should = pieceWith(ran.computeIfAbsent(given.subList(0, 1), line -> asItShould(line(given))), bone);
        Set<String> same = new HashSet<>(is);
        same.retainAll(should);
        return 2 * same.size() < should.size();
    }

    private Set<Set<String>> moved(List<String> given) {
        return ran.computeIfAbsent(given.subList(0, 4), words -> {
            NaiveAnimal animal = beforeLine(line(given));
            Way.of(curriculum.breakdown(), words)
                    .map(way -> way.run().operations().get(way.side()))
                    .orElseThrow()
                    .forEach(operation -> work(animal, operation));
            return animal.pieces();
        });
    }

    private Set<Set<String>> asItShould(Line line) {
        NaiveAnimal animal = beforeLine(line);
        curriculum.breakdown().steps().stream()
                .filter(line::isCutAt)
                .forEach(step -> step.operations().forEach(operation -> work(animal, operation)));
        return animal.pieces();
    }

    private NaiveAnimal beforeLine(Line line) {
        NaiveAnimal animal = new NaiveAnimal(curriculum.skeleton());
        curriculum.breakdown().steps().stream()
                .takeWhile(step -> !line.isCutAt(step))
                .forEach(step -> step.operations().forEach(operation -> work(animal, operation)));
        return animal;
    }

    private Line line(List<String> given) {
        return curriculum.breakdown().line(given.get(0)).orElseThrow();
    }

    private static Set<String> pieceWith(Set<Set<String>> pieces, String part) {
        return pieces.stream().filter(piece -> piece.contains(part)).findFirst().orElseThrow();
    }

    /** Any piece of this name may be meant, the left one or the right one. */
    private static boolean isTheCut(List<String> given, Cut cut) {
        return cut.holdings().stream()
                .map(holding -> holding.parts().stream()
                        .map(part -> part.contains(".") ? part.substring(0, part.indexOf('.')) : part)
                        .collect(Collectors.toSet()))
                .anyMatch(bones -> given.stream()
                        .allMatch(bone ->
                                bone.startsWith("not ") ? !bones.contains(bone.substring(4)) : bones.contains(bone)));
    }

    private Step step(String id) {
        return curriculum.breakdown().step(id).orElseThrow();
    }

    private Cut cut(String id) {
        return curriculum.cut(id).orElseThrow();
    }
}
