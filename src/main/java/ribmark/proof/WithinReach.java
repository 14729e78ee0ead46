package ribmark.proof;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Part;
import ribmark.anatomy.Piece;
import ribmark.anatomy.Skeleton;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks that every bone a step shows lies on the pieces it works on, as they are when the advised order comes to it. */
final class WithinReach {

    private final Shown shown;
    private final Findings found;

    private WithinReach(Skeleton animal, Findings found) {
        this.shown = new Shown(animal);
        this.found = found;
    }

    static void check(Shelf shelf, Deeds deeds, Findings found) {
        WithinReach reach = new WithinReach(deeds.skeleton(), found);
        Animal now = Animal.whole(deeds.skeleton());
        for (Node step : shelf.steps()) {
            if (!step.get("operations").items().isEmpty()) {
                reach.check(step, now);
                now = deeds.after(now, step, (culprit, refused) -> {}).orElse(now);
            }
        }
    }

    private void check(Node step, Animal animal) {
        List<Node> written = step.get("operations").items().stream()
                .flatMap(operation -> Deeds.written(operation).stream())
                .toList();
        Set<String> within = within(shown.touched(written), animal);
        for (Node entry : step.get("landmark").get("bones").items()) {
            shown.ends(entry.text()).stream()
                    .filter(bone -> !within.contains(bone))
                    .findFirst()
                    .ifPresent(bone -> found.add(
                            "C026",
                            entry,
                            bone + " is not on the piece this step works on.",
                            "Mend it, or name the bone where it can still be seen and felt.",
                            new Also("The step works in", written.get(0).place())));
        }
    }

    /** The bones of every piece that one of these bones, or a part of it, belongs to. */
    private static Set<String> within(Set<String> touched, Animal animal) {
        Set<String> within = new HashSet<>();
        for (Piece piece : animal.pieces()) {
            List<String> bones = piece.parts().stream()
                    .map(Part::bone)
                    .map(bone -> bone.id())
                    .toList();
            if (bones.stream().anyMatch(touched::contains)) {
                within.addAll(bones);
            }
        }
        return within;
    }
}
