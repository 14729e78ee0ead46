package ribmark.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Piece;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
import ribmark.curriculum.Cut.Holding;

/** Works one carcase through the steps on the skeleton and checks what each of them frees. */
final class Working {

    private final Skeleton skeleton;
    private final CutBook cuts;
    private final List<Node> steps;
    private final Findings found;
    private final Map<List<String>, Freed> names = new LinkedHashMap<>();

    Working(Shelf shelf, Skeleton skeleton, CutBook cuts, Set<String> leftOut, Findings found) {
        this.skeleton = skeleton;
        this.cuts = cuts;
        this.found = found;
        this.steps = shelf.steps().stream()
                .filter(step -> !leftOut.contains(step.get("id").text()))
                .toList();
    }

    /** The pieces that are left, or nothing when a step cannot be done or frees something else than it says. */
    Optional<List<Freed>> done() {
        Animal now = Animal.whole(skeleton);
        boolean sound = true;
        for (Node step : steps) {
            Optional<Animal> after = afterOperations(now, step);
            if (after.isEmpty()) {
                return Optional.empty();
            }
            sound &= new FreedHere(step, cuts, names, found)
                    .check(now.pieces(), after.get().pieces());
            now = after.get();
        }
        return sound ? named(now.pieces()) : Optional.empty();
    }

    private Optional<Animal> afterOperations(Animal before, Node step) {
        return after(before, step, (culprit, refused) -> Saying.of(refused).add("C032", culprit, found));
    }

    /** The animal after a step, or nothing when an operation is refused; then the one told learns which id is to blame. */
    static Optional<Animal> after(Animal before, Node step, BiConsumer<Node, Refused> told) {
        Animal now = before;
        Ids ids = Ids.of(before.skeleton());
        for (Node written : step.get("operations").items()) {
            try {
                now = now.after(operations(written, ids));
            } catch (Refused e) {
                told.accept(culprit(written, e.getMessage(), ids), e);
                return Optional.empty();
            }
        }
        return Optional.of(now);
    }

    /** The operations one written entry stands for in this animal. */
    static List<Operation> operations(Node written, Ids ids) {
        return ids.operations(Operation.of(
                texts(written, "sever"),
                texts(written, "saw"),
                written.get("plane").maybeText().orElse(null),
                texts(written, "lift")));
    }

    private static List<String> texts(Node written, String verb) {
        return written.get(verb).isThere() ? written.get(verb).texts() : null;
    }

    /** The written id the refusal speaks of: the one that stands for the id it quotes. */
    private static Node culprit(Node written, String sentence, Ids ids) {
        for (String verb : List.of("sever", "saw", "lift")) {
            for (Node id : written.get(verb).items()) {
                if (standsFor(id.text(), ids).stream().anyMatch(each -> sentence.contains("“" + each + "”"))) {
                    return id;
                }
            }
        }
        return written;
    }

    private static List<String> standsFor(String expression, Ids ids) {
        try {
            return ids.expand(expression);
        } catch (Refused e) {
            return List.of(expression);
        }
    }

    private Optional<List<Freed>> named(List<Piece> pieces) {
        List<Freed> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Freed freed = names.get(piece.names());
            if (freed == null || cuts.isParted(freed.cut())) {
                unfinished(piece, Optional.ofNullable(freed));
            } else {
                all.add(freed);
            }
        }
        return all.size() == pieces.size() ? Optional.of(List.copyOf(all)) : Optional.empty();
    }

    private void unfinished(Piece piece, Optional<Freed> freed) {
        Node at = freed.map(f -> cuts.node(f.cut()).get("becomes"))
                .orElseGet(() -> steps.get(steps.size() - 1).get("id"));
        String what = freed.map(f -> "“" + f.cut() + "” is to be parted further, but no step parts it.")
                .orElse("When all is done, " + FreedHere.bones(piece.names()) + " still hang together without a name.");
        found.add(
                "C035",
                at,
                what,
                freed.isPresent()
                        ? "Write what becomes of it, saleable, bone or offcut, or add the step that parts it."
                        : "They are " + FreedHere.some(piece.names()) + ". Name the cut where it comes free.");
    }

    /** The side of a piece as it is told: left, right, or once. */
    static Freed freed(String cut, Holding holding, List<String> parts) {
        return new Freed(cut, holding.side(), parts);
    }
}
