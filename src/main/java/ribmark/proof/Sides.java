package ribmark.proof;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribmark.anatomy.Ids;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks that what is said to be done once or on each side agrees with the sides that are named. */
final class Sides {

    private final Shelf shelf;
    private final Findings found;
    private final Set<String> boneless = new HashSet<>();
    private final Set<String> freedOnEachSide = new HashSet<>();

    private Sides(Shelf shelf, Findings found) {
        this.shelf = shelf;
        this.found = found;
        shelf.cuts().all("cuts[]").stream()
                .filter(cut -> cut.get("bones").items().isEmpty())
                .forEach(cut -> boneless.add(cut.get("id").text()));
    }

    static void check(Shelf shelf, Findings found) {
        Sides sides = new Sides(shelf, found);
        shelf.steps().forEach(sides::step);
        sides.cuts();
    }

    private void step(Node step) {
        boolean each = isEach(step.get("sides"));
        List<Node> done = step.get("operations").items().stream()
                .flatMap(operation -> Deeds.written(operation).stream())
                .toList();
        Node bones = step.get("landmark").get("bones");
        List<Node> named = done.isEmpty() ? bones.items() : done;
        List<Node> sided = named.stream().filter(id -> Ids.isSided(id.text())).toList();
        boolean freesFlesh = step.get("frees").texts().stream().anyMatch(boneless::contains);
        if (each) {
            freedOnEachSide.addAll(step.get("frees").texts());
            freedOnEachSide.addAll(step.get("leaves").texts());
        }
        if (!each && !sided.isEmpty()) {
            tell(step, "once", "“" + sided.get(0).text() + "” stands for left and right", sided.get(0));
        } else if (each && sided.isEmpty() && !(done.isEmpty() && freesFlesh)) {
            Node where = done.isEmpty() ? bones : done.get(0);
            tell(step, "each", "nothing " + (done.isEmpty() ? "shown" : "done") + " here has a side", where);
        }
    }

    private static boolean isEach(Node word) {
        return word.text().equals("each");
    }

    private void tell(Node step, String sides, String but, Node where) {
        found.add(
                "C046",
                step.get("sides"),
                "This step is said to be done " + (sides.equals("each") ? "on each side" : sides) + ", but " + but
                        + ".",
                sides.equals("each")
                        ? "Write sides: once, or name what is done with (s) for the left and the right."
                        : "Write sides: each, or name the bones and joints of both sides one by one.",
                new Also("The other half stands in", where.place()));
    }

    private void cuts() {
        shelf.cuts().all("cuts[]").stream()
                .filter(cut -> isEach(cut.get("comes")))
                .forEach(cut -> cut(cut, cut.get("bones"), cut.get("id").text()));
    }

    private void cut(Node cut, Node bones, String id) {
        String comes = "“" + id + "” is said to come from each side, but ";
        if (!bones.items().isEmpty() && bones.items().stream().noneMatch(bone -> Ids.isSided(bone.text()))) {
            found.add(
                    "C046",
                    cut.get("comes"),
                    comes + "none of its bones has a side.",
                    "Write comes: once, or name its bones with (s) for the left and the right.",
                    new Also("Its bones stand in", bones.place()));
        }
        single(cut)
                .ifPresent(pair -> found.add(
                        "C046",
                        cut.get("comes"),
                        comes + "the table weighs it as one.",
                        "Write comes: once, or pair: true in the table.",
                        new Also("The table has it in", pair.place())));
        if (boneless.contains(id) && !freedOnEachSide.contains(id)) {
            found.add(
                    "C046",
                    cut.get("comes"),
                    comes + "no step done on each side frees it.",
                    "Write comes: once, or free it in a step done on each side.");
        }
    }

    /** What says of a row that weighs this cut that it has no left and right. */
    private Optional<Node> single(Node cut) {
        List<String> rows = cut.get("rows").texts();
        return shelf.tables().stream()
                .flatMap(table -> table.all("rows[]").stream())
                .filter(row -> rows.contains(row.get("cut").text()))
                .map(row -> row.get("pair"))
                .filter(pair -> pair.text().equals("false"))
                .findFirst();
    }
}
