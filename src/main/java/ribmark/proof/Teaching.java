package ribmark.proof;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Suggest;
import ribmark.competence.Mark;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks what a schema cannot: that each step is asked about and watched, and that names agree with their files. */
final class Teaching {

    private final Shelf shelf;
    private final Findings found;

    private Teaching(Shelf shelf, Findings found) {
        this.shelf = shelf;
        this.found = found;
    }

    static void check(Shelf shelf, Findings found) {
        Teaching teaching = new Teaching(shelf, found);
        teaching.everyStepHas("question", shelf.questions(), "questions[].step");
        teaching.everyStepHas("criterion", shelf.criteria(), "criteria[].step");
        teaching.namesAgree();
        teaching.marksAreTheFour();
    }

    private void everyStepHas(String what, Node file, String path) {
        Set<String> served =
                new HashSet<>(file.all(path).stream().map(Node::text).toList());
        Set<String> steps =
                shelf.steps().stream().map(step -> step.get("id").text()).collect(Collectors.toSet());
        if (served.isEmpty() || !steps.containsAll(served)) {
            return;
        }
        for (Node step : shelf.steps()) {
            Node id = step.get("id");
            if (id.isThere() && !served.contains(id.text())) {
                found.add(
                        "C050",
                        id,
                        "The step “" + id.text() + "” has no " + what + ".",
                        "Write at least one in " + file.file() + ".");
            }
        }
    }

    private void namesAgree() {
        shelf.stages().forEach(stage -> agrees(stage, 1));
        shelf.tables().forEach(table -> agrees(table, 1));
        agrees(shelf.breakdown(), 2);
    }

    /** Counted from the end, which part of the path must be the id. */
    private void agrees(Node file, int fromEnd) {
        List<String> path = List.of(file.file().replace(".yaml", "").split("/"));
        String name = path.get(path.size() - fromEnd);
        Node id = file.get("id");
        if (id.isThere() && !id.text().equals(name)) {
            found.add(
                    "C024",
                    id,
                    "The id “" + id.text() + "” and the name “" + name + "” of its file or folder differ.",
                    "Make them the same.");
        }
    }

    private void marksAreTheFour() {
        Map<String, Node> given = new LinkedHashMap<>();
        shelf.marks().all("marks[].id").forEach(id -> given.put(id.text(), id));
        if (given.isEmpty()) {
            return;
        }
        List<String> missing = Stream.of(Mark.values())
                .map(Mark::code)
                .filter(code -> given.remove(code) == null)
                .toList();
        missing.stream()
                .filter(code -> Suggest.nearest(code, given.keySet()).isEmpty())
                .forEach(code -> found.add(
                        "C043",
                        shelf.marks(),
                        "The mark “" + code + "” is missing.",
                        "Add it with its word, its gloss and its order."));
        given.values()
                .forEach(id -> found.add(
                        "C043",
                        id,
                        "There is no mark “" + id.text() + "” to count by.",
                        Suggest.nearest(id.text(), missing)
                                        .map(code -> "Did you mean “" + code + "”? ")
                                        .orElse("Take it out. ")
                                + "The four marks are fixed, only their words may change.",
                        new Also("The marks begin in", shelf.marks().place())));
    }
}
