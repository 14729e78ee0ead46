package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.proof.ContentProblem.Also;

/**
 * Checks that a step works where its landmark says: every bone an operation touches is shown, and every bone shown is
 * explained by a landmark or touched.
 */
final class Touched {

    private final Skeleton animal;
    private final Ids ids;
    private final Findings found;
    private final Map<String, Node> landmarks = new LinkedHashMap<>();
    private final Map<String, List<Node>> unexplained = new LinkedHashMap<>();
    private final Map<Node, Node> stepOf = new LinkedHashMap<>();

    private Touched(Shelf shelf, Skeleton animal, Findings found) {
        this.animal = animal;
        this.ids = Ids.of(animal);
        this.found = found;
        shelf.landmarks()
                .all("landmarks[]")
                .forEach(mark -> landmarks.put(mark.get("id").text(), mark));
    }

    static void check(Shelf shelf, Skeleton animal, Findings found) {
        Touched touched = new Touched(shelf, animal, found);
        touched.landmarks.values().forEach(touched::joinsItsBones);
        shelf.steps().forEach(touched::check);
        touched.tellUnexplained();
    }

    private void joinsItsBones(Node landmark) {
        Set<String> bones = bones(landmark.get("bones").texts());
        for (Node joint : landmark.get("joints").items()) {
            touchedBy(joint.text()).filter(bone -> !bones.contains(bone)).findFirst().ifPresent(bone -> found.add(
                    "C026",
                    joint,
                    "“" + joint.text() + "” holds " + bone + ", which is not among the bones of this landmark.",
                    "Add that bone, or name another joint.",
                    new Also("The bones stand in", landmark.get("bones").place())));
        }
    }

    private void check(Node step) {
        List<Node> written = step.get("operations").items().stream()
                .flatMap(operation -> Deeds.written(operation).stream())
                .toList();
        Set<String> touched = new HashSet<>();
        written.forEach(id -> touchedBy(id.text()).forEach(touched::add));
        Set<String> explained = explained(step);
        List<Node> uses = step.get("landmark").get("uses").items();
        Node bones = step.get("landmark").get("bones");
        boolean sound = true;
        for (Node entry : bones.items()) {
            for (String end : ends(entry.text())) {
                if (!uses.isEmpty() && !explained.contains(end) && !touched.contains(end)) {
                    unexplained.computeIfAbsent(end, bone -> new ArrayList<>()).add(entry);
                    stepOf.put(entry, step);
                    sound = false;
                }
            }
        }
        if (sound) {
            notShown(written, bones);
        }
    }

    /** One message for each bone that is not shown, however many operations touch it. */
    private void notShown(List<Node> written, Node bones) {
        Set<String> shown = bones(bones.texts());
        Map<String, List<Node>> missing = new LinkedHashMap<>();
        for (Node id : written) {
            touchedBy(id.text()).filter(bone -> !shown.contains(bone)).findFirst().ifPresent(bone -> missing
                    .computeIfAbsent(bone, any -> new ArrayList<>())
                    .add(id));
        }
        missing.forEach((bone, ids) -> found.add(
                "C026",
                ids.get(0),
                "“" + ids.get(0).text() + "” touches " + bone + ", which the landmark of this step does not show.",
                "Add that bone to the landmark, or mend the operation.",
                new Also("The landmark shows", bones.place())));
    }

    private Set<String> explained(Node step) {
        Set<String> explained = new HashSet<>();
        for (Node use : step.get("landmark").get("uses").items()) {
            Node landmark = landmarks.get(use.text());
            if (landmark != null) {
                explained.addAll(bones(landmark.get("bones").texts()));
                landmark.get("joints").texts().forEach(joint -> touchedBy(joint).forEach(explained::add));
            }
        }
        return explained;
    }

    /** One message for each entry that nothing explains, however many steps show it. */
    private void tellUnexplained() {
        Map<Node, String> first = new LinkedHashMap<>();
        unexplained.forEach((bone, entries) -> first.putIfAbsent(entries.get(0), bone));
        first.forEach((entry, bone) -> {
            List<Also> also = new ArrayList<>();
            stepOf.get(entry).get("landmark").get("uses").items().stream()
                    .map(use -> landmarks.get(use.text()))
                    .forEach(mark -> also.add(
                            new Also("A landmark it uses has", mark.get("bones").place())));
            found.add(
                    "C026",
                    entry,
                    "No landmark of this step, and nothing it does, explains " + bone + ".",
                    "Take it out, mend it, or name a landmark that lies on it under uses.",
                    also.toArray(Also[]::new));
        });
    }

    private Set<String> bones(List<String> written) {
        Set<String> bones = new HashSet<>();
        ids.expandAll(written).forEach(id -> bones.add(whole(id)));
        return bones;
    }

    /** The bones themselves, and of a joint the two it holds. */
    private Stream<String> touchedBy(String written) {
        return ids.expand(written).stream().map(Touched::whole).flatMap(id -> animal.joint(id)
                .map(joint -> Stream.of(joint.boneA(), joint.boneB()))
                .orElse(Stream.of(id)));
    }

    /** Of a run the first and the last on each side: what lies between them needs no words. */
    private Set<String> ends(String written) {
        Set<String> ends = new HashSet<>();
        for (Side side : Ids.isSided(written) ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.LEFT)) {
            List<String> run = ids.expand(written, side);
            if (!run.isEmpty()) {
                ends.add(whole(run.get(0)));
                ends.add(whole(run.get(run.size() - 1)));
            }
        }
        return ends;
    }

    private static String whole(String part) {
        return part.replaceAll("\\..*", "");
    }
}
