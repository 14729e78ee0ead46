package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Piece;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.curriculum.Cut.Holding;

/** Works one carcase through the steps on the skeleton and checks what each of them frees. */
final class Working {

    private final Deeds deeds;
    private final CutBook cuts;
    private final List<Node> steps;
    private final Findings found;
    private final Map<List<String>, Freed> names = new LinkedHashMap<>();
    private final Set<String> spoiled = new HashSet<>();

    Working(Shelf shelf, Deeds deeds, CutBook cuts, Set<String> leftOut, Findings found) {
        this.deeds = deeds;
        this.cuts = cuts;
        this.found = found;
        this.steps = shelf.steps().stream()
                .filter(step -> !leftOut.contains(step.get("id").text()))
                .toList();
    }

    /** The pieces that are left, or nothing when a step cannot be done or frees something else than it says. */
    Optional<List<Freed>> done() {
        Animal now = Animal.whole(deeds.skeleton());
        List<Piece> pieces = now.pieces();
        List<Piece> before = pieces;
        for (Node step : steps) {
            Optional<Animal> after = isSpoiled(step) ? Optional.empty() : work(now, step);
            if (after.isPresent() && after.get() != now) {
                pieces = after.get().pieces();
            }
            now = after.orElse(now);
            if (after.isPresent() && !isSound(step, before, pieces, now)) {
                spoiled.add(step.get("id").text());
            }
            before = pieces;
        }
        return spoiled.isEmpty() ? named(pieces) : Optional.empty();
    }

    private boolean isSound(Node step, List<Piece> before, List<Piece> pieces, Animal animal) {
        return new FreedHere(step, cuts, names, found).check(before, pieces, animal);
    }

    private Optional<Animal> work(Animal before, Node step) {
        return deeds.after(before, step, (culprit, refused) -> {
            spoiled.add(step.get("id").text());
            Node plane = step.all("operations[].plane").stream().findFirst().orElse(culprit);
            Saying.of(refused).add("C032", culprit, found, new Also("The step does it in", plane.place()));
        });
    }

    /** What follows from a step that went wrong would only echo it. */
    private boolean isSpoiled(Node step) {
        boolean spoilt = step.get("needs").texts().stream().anyMatch(spoiled::contains);
        if (spoilt) {
            spoiled.add(step.get("id").text());
        }
        return spoilt;
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
