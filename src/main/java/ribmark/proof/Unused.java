package ribmark.proof;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Finds what is written and never named by any step: a landmark, a tool, a caution. */
final class Unused {

    private final List<Shelf> shelves;
    private final Findings found;

    private Unused(List<Shelf> shelves, Findings found) {
        this.shelves = shelves;
        this.found = found;
    }

    /** Several breakdowns may share the landmarks of one kind of animal. */
    static void check(List<Shelf> shelves, Findings found) {
        Unused unused = new Unused(shelves, found);
        Set<String> told = new HashSet<>();
        for (Shelf shelf : shelves) {
            if (told.add(shelf.landmarks().file())) {
                unused.landmarks(shelf.landmarks());
            }
            unused.check("tool", shelf.breakdown().all("tools[].id"), named(shelf, "steps[].tools[]"));
            unused.check("caution", shelf.breakdown().all("cautions[].id"), named(shelf, "steps[].also-mind[]"));
        }
    }

    private void landmarks(Node file) {
        Set<String> named = new HashSet<>();
        shelves.stream()
                .filter(shelf -> shelf.landmarks().file().equals(file.file()))
                .forEach(shelf -> named.addAll(named(shelf, "steps[].landmark.uses[]")));
        check("landmark", file.all("landmarks[].id"), named);
    }

    private static Set<String> named(Shelf shelf, String path) {
        Set<String> named = new HashSet<>();
        shelf.stages().forEach(stage -> stage.all(path).forEach(node -> named.add(node.text())));
        return named;
    }

    private void check(String kind, List<Node> ids, Set<String> named) {
        ids.stream()
                .filter(id -> !named.contains(id.text()))
                .forEach(id -> found.add(
                        "C027",
                        id,
                        "No step names the " + kind + " “" + id.text() + "”.",
                        "Name it in the step it belongs to, or take it out."));
    }
}
