package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribmark.anatomy.Skeleton;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/**
 * Checks that a step works where its landmark says: every bone an operation touches is shown, every bone shown is explained
 * by a landmark or touched, and every landmark is shown where it is used.
 */
final class Touched {

    private final Shelf shelf;
    private final Shown shown;
    private final Findings found;
    private final Map<String, Node> landmarks = new LinkedHashMap<>();
    private final Map<String, List<Node>> unexplained = new LinkedHashMap<>();
    private final Map<Node, Node> stepOf = new LinkedHashMap<>();
    private final Set<Node> blamed = new HashSet<>();

    private Touched(Shelf shelf, Skeleton animal, Findings found) {
        this.shelf = shelf;
        this.shown = new Shown(animal);
        this.found = found;
        shelf.landmarks()
                .all("landmarks[]")
                .forEach(mark -> landmarks.put(mark.get("id").text(), mark));
    }

    static void check(Shelf shelf, Skeleton animal, Findings found) {
        Touched touched = new Touched(shelf, animal, found);
        touched.landmarks.values().forEach(touched::holdsItsBones);
        shelf.steps().forEach(touched::step);
        touched.tellUnexplained();
        touched.landmarks.values().stream()
                .filter(mark -> !touched.blamed.contains(mark))
                .forEach(touched::isShown);
    }

    private void holdsItsBones(Node landmark) {
        Node bones = landmark.get("bones");
        shown.missing(landmark.get("joints").items(), bones).forEach((bone, joints) -> {
            blamed.add(landmark);
            found.add(
                    "C026",
                    joints.get(0),
                    "“" + joints.get(0).text() + "” holds " + bone + ", which is not among the bones of this landmark.",
                    "Add that bone, or name another joint.",
                    new Also("The bones stand in", shown.like(bone, bones).place()));
        });
    }

    private void step(Node step) {
        List<Node> written = written(step);
        Set<String> known = shown.touched(written);
        uses(step).forEach(landmark -> known.addAll(explainedBy(landmark)));
        Node bones = step.get("landmark").get("bones");
        boolean sound = true;
        for (Node entry : uses(step).isEmpty() ? List.<Node>of() : bones.items()) {
            for (String end : shown.ends(entry.text())) {
                if (!known.contains(end)) {
                    unexplained.computeIfAbsent(end, bone -> new ArrayList<>()).add(entry);
                    stepOf.put(entry, step);
                    sound = false;
                }
            }
        }
        if (sound) {
            shown.missing(written, bones).forEach((bone, ids) -> notShown(step, ids.get(0), bone));
        } else {
            blamed.addAll(uses(step));
        }
    }

    private static List<Node> written(Node step) {
        return step.get("operations").items().stream()
                .flatMap(operation -> Deeds.written(operation).stream())
                .toList();
    }

    private List<Node> uses(Node step) {
        return step.get("landmark").get("uses").texts().stream()
                .filter(landmarks::containsKey)
                .map(landmarks::get)
                .toList();
    }

    private Set<String> explainedBy(Node landmark) {
        Set<String> bones = shown.bones(landmark.get("bones"));
        bones.addAll(shown.touched(landmark.get("joints").items()));
        return bones;
    }

    private void notShown(Node step, Node id, String bone) {
        blamed.addAll(uses(step));
        Node bones = step.get("landmark").get("bones");
        found.add(
                "C026",
                id,
                "“" + id.text() + "” touches " + bone + ", which the landmark of this step does not show.",
                "Add that bone to the landmark, or mend the operation.",
                new Also("The landmark shows", shown.like(bone, bones).place()));
    }

    /** One message for each entry that nothing explains, however many steps show it. */
    private void tellUnexplained() {
        Map<Node, String> first = new LinkedHashMap<>();
        unexplained.forEach((bone, entries) -> first.putIfAbsent(entries.get(0), bone));
        first.forEach((entry, bone) -> found.add(
                "C026",
                entry,
                "No landmark of this step, and nothing it does, explains " + bone + ".",
                "Take it out, mend it, or name a landmark that lies on it under uses.",
                uses(stepOf.get(entry)).stream()
                        .map(mark -> new Also(
                                "A landmark it uses has",
                                shown.like(bone, mark.get("bones")).place()))
                        .toArray(Also[]::new)));
    }

    /** Whether the steps that use a landmark show it, each end of each run. */
    private void isShown(Node landmark) {
        List<Node> users = shelf.steps().stream()
                .filter(step -> uses(step).contains(landmark))
                .toList();
        if (users.isEmpty()) {
            return;
        }
        Set<String> seen = shown.touched(landmark.get("joints").items());
        users.forEach(step -> {
            seen.addAll(shown.bones(step.get("landmark").get("bones")));
            seen.addAll(shown.touched(written(step)));
        });
        landmark.get("bones").items().stream()
                .filter(entry -> !seen.containsAll(shown.ends(entry.text())))
                .findFirst()
                .ifPresent(entry -> found.add(
                        "C026",
                        entry,
                        "No step that uses this landmark shows the whole of “" + entry.text() + "”.",
                        "Mend it, or add the bones to the landmark of such a step.",
                        users.stream()
                                .map(step -> new Also(
                                        "Such a step shows",
                                        step.get("landmark").get("bones").place()))
                                .toArray(Also[]::new)));
    }
}
