package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.basics.Suggest;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks that every id is given once and that everything that points with an id finds it. */
final class References {

    /** Without these the steps cannot be worked through. */
    private static final List<String> WORK = List.of("step", "cut");

    private final Shelf shelf;
    private final Findings found;
    private final Map<String, Map<String, Node>> known = new LinkedHashMap<>();
    private final List<String> incomplete = new ArrayList<>();
    private final Map<List<String>, List<Node>> dangling = new LinkedHashMap<>();
    private final Map<String, Integer> twice = new LinkedHashMap<>();
    private final Map<String, Set<String>> pointedAt = new LinkedHashMap<>();

    private References(Shelf shelf, Findings found) {
        this.shelf = shelf;
        this.found = found;
    }

    static void check(Shelf shelf, Findings found) {
        References references = new References(shelf, found);
        references.collect();
        references.resolve();
        references.tellDangling();
        references.rowsMeetCuts();
    }

    private void collect() {
        learn("source", "key", shelf.sources(), "sources[]");
        learn("landmark", "id", shelf.landmarks(), "landmarks[]");
        learn("cut", "id", shelf.cuts(), "cuts[]");
        learn("tool", "id", shelf.breakdown(), "tools[]");
        learn("caution", "id", shelf.breakdown(), "cautions[]");
        learn("assumption", "id", shelf.breakdown(), "assumptions[]");
        learn("criterion", "id", shelf.criteria(), "criteria[]");
        learn("question", "id", shelf.questions(), "questions[]");
        learn("trim measure", "id", shelf.trim(), "measures[]");
        unique(of("line"), "line", "line", shelf.weighing().all("lines[]"));
        unique(of("line"), "split", "split", shelf.weighing().all("splits[]"));
        unique(new LinkedHashMap<>(), "line", "id", shelf.lines().all("lines[]"));
        learn("mark", "id", shelf.marks(), "marks[]");
        learn("scale", "id", shelf.scales(), "scales[]");
        if (!shelf.hasAllStages()) {
            incomplete.add("step");
        }
        shelf.stages().forEach(stage -> learn("step", "id", stage, "steps[]"));
        shelf.steps().forEach(step -> unique(new LinkedHashMap<>(), "fault", "id", step.all("faults[]")));
        if (!shelf.tables().stream().allMatch(Node::isThere)) {
            incomplete.add("row");
        }
        shelf.tables().forEach(table -> {
            unique(new LinkedHashMap<>(), "row", "cut", table.all("rows[]"));
            table.all("rows[]")
                    .forEach(row -> of("row").putIfAbsent(row.get("cut").text(), row.get("cut")));
        });
    }

    private Map<String, Node> of(String kind) {
        return known.computeIfAbsent(kind, k -> new LinkedHashMap<>());
    }

    private void learn(String kind, String name, Node file, String path) {
        List<Node> entries = file.all(path);
        if (entries.isEmpty()
                || entries.stream().anyMatch(entry -> entry.get(name).text().isEmpty())) {
            incomplete.add(kind);
        }
        unique(of(kind), kind, name, entries);
    }

    private void unique(Map<String, Node> ids, String kind, String name, List<Node> entries) {
        for (Node entry : entries) {
            Node id = entry.get(name);
            Node earlier = id.isThere() ? ids.putIfAbsent(id.text(), id) : null;
            if (earlier != null) {
                twice.merge(kind, 1, Integer::sum);
                found.add(
                        "C020",
                        id,
                        "Two entries have the " + name + " “" + id.text() + "”: each " + kind + " needs its own.",
                        "Rename this one or take it out, and mend whatever points at it.",
                        new Also("First used in", earlier.place()));
            }
        }
    }

    private void sources() {
        shelf.all()
                .forEach(file -> file.anywhere("rests-on")
                        .forEach(list -> list.all("[].source").forEach(at -> point("source", at))));
        list(shelf.cuts(), "source", "cuts[].same-as[].source");
        list(shelf.cuts(), "source", "cuts[].same-as[].read-in");
    }

    private void resolve() {
        sources();
        shelf.stages().forEach(stage -> {
            list(stage, "step", "steps[].needs[]");
            list(stage, "landmark", "steps[].landmark.uses[]");
            list(stage, "tool", "steps[].tools[]");
            list(stage, "caution", "steps[].also-mind[]");
            list(stage, "cut", "steps[].frees[]");
            list(stage, "cut", "steps[].leaves[]");
        });
        list(shelf.lines(), "step", "lines[].steps[]");
        list(shelf.cuts(), "row", "cuts[].rows[]");
        list(shelf.breakdown(), "step", "assumptions[].steps[]");
        list(shelf.criteria(), "step", "criteria[].step");
        list(shelf.questions(), "step", "questions[].step");
        list(shelf.trim(), "step", "measures[].step");
        list(shelf.weighing(), "row", "lines[].moves[].points[].row");
        list(shelf.weighing(), "row", "splits[].rows[]");
        list(shelf.prices(), "row", "prices[].row");
        shelf.tables().forEach(table -> {
            list(table, "row", "kidneys-out.leaves-out[]");
            list(table, "row", "pairs.tolerances[].row");
            list(table, "row", "other-counts.regions[].points[].row");
            list(table, "row", "rows[].part-of[]");
        });
    }

    private void list(Node file, String kind, String path) {
        file.all(path).forEach(at -> point(kind, at));
    }

    private void point(String kind, Node at) {
        if (at.text().isEmpty() || incomplete.contains(kind)) {
            return;
        }
        if (of(kind).containsKey(at.text())) {
            pointedAt.computeIfAbsent(kind, k -> new HashSet<>()).add(at.text());
        } else {
            dangling.computeIfAbsent(List.of(kind, at.text()), what -> new ArrayList<>())
                    .add(at);
        }
    }

    /** The likeliest meant; of two equally like, the one that nothing points at. */
    private Optional<Node> near(String kind, String written) {
        List<String> lonely = of(kind).keySet().stream()
                .filter(id -> !pointedAt.getOrDefault(kind, Set.of()).contains(id))
                .toList();
        Optional<String> best = Suggest.nearest(written, of(kind).keySet());
        return Suggest.nearest(written, lonely)
                .filter(id -> Suggest.slips(written, id) <= Suggest.slips(written, best.orElse(id)))
                .or(() -> best)
                .map(of(kind)::get);
    }

    /** One message for each id that is not there, however many point at it; one lost to an id given twice is told there. */
    private void tellDangling() {
        dangling.forEach((what, pointers) -> {
            String kind = what.get(0);
            Optional<Node> meant = near(kind, what.get(1));
            if (meant.isEmpty() && twice.merge(kind, -1, Integer::sum) >= 0) {
                return;
            }
            List<Also> also = new ArrayList<>();
            meant.ifPresent(node -> also.add(new Also("Its nearest stands in", node.place())));
            pointers.stream().skip(1).forEach(other -> also.add(new Also("Also named in", other.place())));
            found.add(
                    WORK.contains(kind) ? "C021" : "C025",
                    pointers.get(0),
                    "There is no " + kind + " “" + what.get(1) + "”.",
                    meant.map(node -> "Did you mean “" + node.text() + "”?")
                            .orElse("Add it, or name one that is there."),
                    also.toArray(Also[]::new));
        });
    }

    /** A row nobody weighs would wait for a weight for ever. */
    private void rowsMeetCuts() {
        List<String> weighed =
                shelf.cuts().all("cuts[].rows[]").stream().map(Node::text).toList();
        for (Node table : shelf.tables()) {
            for (Node cut : table.all("rows[].cut")) {
                if (!weighed.contains(cut.text()) && !incomplete.contains("cut")) {
                    found.add(
                            "C025",
                            cut,
                            "No cut says that it is weighed by the row “" + cut.text() + "”.",
                            Suggest.nearest(cut.text(), weighed)
                                    .map(near -> "Did you mean “" + near + "”?")
                                    .orElse("Name this row under the rows of its cut in "
                                            + shelf.cuts().file() + "."));
                }
            }
        }
    }
}
