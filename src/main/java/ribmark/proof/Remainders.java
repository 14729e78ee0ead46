package ribmark.proof;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks that what comes free and what is left over are not exchanged: the rest keeps its name, its bones and its work. */
final class Remainders {

    private final Map<String, Node> cuts = new HashMap<>();
    private final Set<String> before = new HashSet<>();
    private final Findings found;

    private Remainders(Shelf shelf, Findings found) {
        shelf.cuts().all("cuts[]").forEach(cut -> cuts.put(cut.get("id").text(), cut));
        this.found = found;
    }

    static void check(Shelf shelf, Findings found) {
        Remainders remainders = new Remainders(shelf, found);
        shelf.steps().forEach(remainders::check);
    }

    private void check(Node step) {
        List<Node> frees = known(step.get("frees"));
        List<Node> leaves = known(step.get("leaves"));
        boolean exchanged = keepsItsName(step, frees) || hasNoBones(step, leaves) || isDone(step, frees, leaves);
        if (!exchanged) {
            frees.forEach(cut -> before.add(cut.text()));
            leaves.forEach(cut -> before.add(cut.text()));
        }
    }

    private List<Node> known(Node list) {
        return list.items().stream().filter(cut -> cuts.containsKey(cut.text())).toList();
    }

    private boolean keepsItsName(Node step, List<Node> frees) {
        return frees.stream()
                .filter(cut -> before.contains(cut.text()) && !isBoneless(cut))
                .findFirst()
                .map(cut -> tell(
                        step,
                        cut,
                        "“" + cut.text() + "” was freed before, so here it can only be what is left.",
                        "leaves"))
                .isPresent();
    }

    private boolean hasNoBones(Node step, List<Node> leaves) {
        return leaves.stream()
                .filter(this::isBoneless)
                .findFirst()
                .map(cut -> tell(
                        step, cut, "“" + cut.text() + "” has no bones, so it comes free and is not left.", "frees"))
                .isPresent();
    }

    private boolean isDone(Node step, List<Node> frees, List<Node> leaves) {
        boolean allParted = !frees.isEmpty() && frees.stream().allMatch(this::isParted);
        return leaves.stream()
                .filter(cut -> allParted && !isParted(cut))
                .findFirst()
                .map(cut -> tell(
                        step,
                        cut,
                        "“" + cut.text() + "” is finished, and what is said to come free is parted further.",
                        "frees"))
                .isPresent();
    }

    private boolean tell(Node step, Node cut, String headline, String belongs) {
        found.add(
                "C047",
                cut,
                headline,
                "Name it under " + belongs + ", and see whether frees and leaves are exchanged.",
                new Also("The step begins in", step.get("id").place()));
        return true;
    }

    private boolean isBoneless(Node cut) {
        return cuts.get(cut.text()).get("bones").items().isEmpty();
    }

    private boolean isParted(Node cut) {
        return cuts.get(cut.text()).get("becomes").text().equals("parted");
    }
}
