package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Piece;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
import ribmark.proof.ContentProblem.Also;

/**
 * Works the steps in the order farthest from the advised one that their needs allow, always the last that is ready, since
 * only needs bind whoever works.
 */
final class OtherOrder {

    private final List<Node> advised;
    private final List<Node> worked = new ArrayList<>();
    private final Findings found;

    private OtherOrder(Shelf shelf, Findings found) {
        this.advised = shelf.steps();
        this.found = found;
    }

    static void check(Shelf shelf, Skeleton skeleton, List<Freed> pieces, Findings found) {
        new OtherOrder(shelf, found).work(skeleton, pieces);
    }

    private void work(Skeleton skeleton, List<Freed> pieces) {
        Optional<Animal> now = Optional.of(Animal.whole(skeleton));
        for (Optional<Node> next = lastReady(); next.isPresent() && now.isPresent(); next = lastReady()) {
            Node step = next.get();
            now = Working.after(now.get(), step, (culprit, refused) -> cannot(step, culprit, refused));
            worked.add(step);
        }
        Set<List<String>> advisedPieces = pieces.stream().map(Freed::holds).collect(Collectors.toSet());
        now.map(animal -> animal.pieces().stream().map(Piece::names).collect(Collectors.toSet()))
                .filter(left -> !left.equals(advisedPieces))
                .ifPresent(left -> others());
    }

    private Optional<Node> lastReady() {
        Set<String> done = new HashSet<>(worked.stream().map(OtherOrder::id).toList());
        return advised.stream()
                .filter(step -> !done.contains(id(step)))
                .filter(step -> done.containsAll(step.get("needs").texts()))
                .reduce((earlier, later) -> later);
    }

    private static String id(Node step) {
        return step.get("id").text();
    }

    private void cannot(Node step, Node culprit, Refused refused) {
        Also[] before = worked.stream()
                .filter(done -> advised.indexOf(done) > advised.indexOf(step))
                .filter(done -> !done.get("operations").items().isEmpty())
                .map(done -> new Also(
                        "Its needs allow it to be done before:", done.get("id").place()))
                .toArray(Also[]::new);
        found.add(
                "C039",
                culprit,
                "In another order that the needs allow, “" + id(step) + "” cannot be done.",
                refused.getMessage() + " Add a need, so that this step comes first.",
                before);
    }

    private void others() {
        found.add(
                "C039",
                advised.get(0),
                "In another order that the needs allow, other pieces are left.",
                "Add needs, so that steps that work on one piece follow each other.");
    }
}
