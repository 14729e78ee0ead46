package ribmark.drills;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Part;
import ribmark.anatomy.Piece;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Step;

/** The usual animal worked through every step once: what each of them opened and what came free there. */
final class Worked {

    /** The joints that held before a step and nowhere after it, and the pieces that are new after it. */
    private record Done(Step step, List<String> opened, List<Set<String>> freed) {}

    private final Curriculum curriculum;
    private final Map<String, Done> done = new LinkedHashMap<>();

    Worked(Curriculum curriculum) {
        this.curriculum = curriculum;
        Animal now = Animal.whole(curriculum.skeleton());
        Set<String> holding = holding(now);
        for (Step step : steps()) {
            Animal after = step.operations().isEmpty() ? now : now.after(step.operations());
            Set<String> left = after == now ? holding : holding(after);
            done.put(step.id(), new Done(step, without(holding, left), fresh(now, after)));
            now = after;
            holding = left;
        }
    }

    /** The ids of joints of which a share still holds; each is found from the parts it holds. */
    private static Set<String> holding(Animal animal) {
        return animal.parts().stream()
                .flatMap(part -> animal.heldBy(List.of(part.name())).stream())
                .map(contact -> contact.replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> without(Set<String> before, Set<String> after) {
        return before.stream().filter(id -> !after.contains(id)).toList();
    }

    private static List<Set<String>> fresh(Animal before, Animal after) {
        List<Piece> pieces = new ArrayList<>(after.pieces());
        pieces.removeAll(before.pieces());
        return pieces.stream().map(Worked::names).toList();
    }

    private static Set<String> names(Piece piece) {
        return piece.parts().stream().map(Part::name).collect(Collectors.toSet());
    }

    List<Step> steps() {
        return curriculum.breakdown().steps();
    }

    Step step(String id) {
        return curriculum.breakdown().step(id).orElseThrow();
    }

    /** The ids of the joints that a step opens for good. */
    List<String> opened(String step) {
        return done.get(step).opened();
    }

    /** The step that opens this joint, if any does. */
    Optional<Step> opens(String joint) {
        return done.values().stream()
                .filter(one -> one.opened().contains(joint))
                .map(Done::step)
                .findFirst();
    }

    /** Whether the engine finds this very piece new after the step. */
    boolean isNew(String step, Cut cut) {
        return cut.holdings().stream()
                .map(holding -> Set.copyOf(holding.parts()))
                .anyMatch(parts -> done.get(step).freed().contains(parts));
    }

    /** The cuts that come free or are left over at a step. */
    List<Cut> named(Step step) {
        return Stream.concat(step.frees().stream(), step.leaves().stream())
                .flatMap(id -> curriculum.cut(id).stream())
                .toList();
    }

    /** The cuts that some step frees or leaves. */
    List<Cut> cuts() {
        return curriculum.cuts().stream()
                .filter(cut -> curriculum.stepThatFrees(cut.id()).isPresent())
                .toList();
    }

    /** The step that frees or leaves a cut. */
    Step frees(Cut cut) {
        return curriculum.stepThatFrees(cut.id()).orElseThrow();
    }

    /** A step with its number, for a sentence. */
    static String said(Step step) {
        return "step " + step.number() + ", " + step.title();
    }
}
