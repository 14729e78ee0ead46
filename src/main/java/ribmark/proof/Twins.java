package ribmark.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.proof.ContentProblem.Also;

/** Checks that the left of an animal with two sides mirrors its right, and that a joint named for a bone holds it. */
final class Twins {

    private final Skeleton animal;
    private final Findings found;
    private final Map<String, Node> rows = new HashMap<>();

    private Twins(Skeleton animal, Node bones, Node joints, Findings found) {
        this.animal = animal;
        this.found = found;
        Stream.of(bones, joints)
                .flatMap(table -> table.items().stream())
                .forEach(row -> rows.put(row.get("id").text(), row));
    }

    static void check(Skeleton animal, Node bones, Node joints, Findings found) {
        Twins twins = new Twins(animal, bones, joints, found);
        if (Stream.of(Side.LEFT, Side.RIGHT).allMatch(twins::has)) {
            twins.bones();
            twins.joints();
        }
        animal.joints().forEach(twins::holdsItsName);
    }

    private boolean has(Side side) {
        return animal.bones().stream().anyMatch(bone -> bone.side() == side);
    }

    private void bones() {
        List<String> odd = animal.bones().stream()
                .filter(bone -> !bone.isMidline())
                .filter(bone -> !mirrors(bone))
                .map(Bone::id)
                .toList();
        tell(odd);
    }

    private boolean mirrors(Bone bone) {
        Optional<Bone> twin = animal.bone(mirrored(bone.id()));
        return twin.isPresent() && !twin.get().isMidline() && twin.get().side() != bone.side();
    }

    /** The id of the bone on the other side; a bone of the midline is its own twin. */
    private String mirrored(String id) {
        boolean sided =
                animal.bone(id).filter(bone -> !bone.isMidline()).isPresent();
        if (!sided) {
            return id;
        }
        String stem = id.substring(0, id.length() - 1);
        return id.endsWith("L") ? stem + "R" : id.endsWith("R") ? stem + "L" : id;
    }

    private void joints() {
        Map<List<String>, Integer> balance = new HashMap<>();
        animal.joints().forEach(joint -> balance.merge(key(joint, Function.identity()), 1, Integer::sum));
        animal.joints().forEach(joint -> balance.merge(key(joint, this::mirrored), -1, Integer::sum));
        tell(animal.joints().stream()
                .filter(joint -> balance.getOrDefault(key(joint, Function.identity()), 0) != 0)
                .map(Joint::id)
                .toList());
    }

    /** What a joint does, whatever it is called and whichever of its bones is written first. */
    private static List<String> key(Joint joint, Function<String, String> named) {
        String a = named.apply(joint.boneA()) + "@" + joint.endA();
        String b = named.apply(joint.boneB()) + "@" + joint.endB();
        return a.compareTo(b) < 0 ? List.of(joint.type(), a, b) : List.of(joint.type(), b, a);
    }

    /** Two odd ones whose ids differ in the side letter alone are one cause. */
    private void tell(List<String> odd) {
        List<String> left = new ArrayList<>(odd);
        while (!left.isEmpty()) {
            String one = left.remove(0);
            Optional<String> other =
                    left.stream().filter(id -> unsided(id).equals(unsided(one))).findFirst();
            other.ifPresent(left::remove);
            found.add(
                    "C022",
                    rows.get(one),
                    other.map(id -> "“" + one + "” and “" + id + "” do not mirror each other.")
                            .orElse("“" + one + "” has no twin on the other side."),
                    "Compare the two rows: side, bones, kind and ends must be alike.",
                    other.map(id -> new Also[] {
                                new Also("The other stands in", rows.get(id).place())
                            })
                            .orElse(new Also[0]));
        }
    }

    private static String unsided(String id) {
        return id.replaceAll("[LR]", "*");
    }

    private void holdsItsName(Joint joint) {
        for (String word : joint.id().split("-")) {
            if (animal.bone(word).isPresent() && !joint.holds(word)) {
                found.add(
                        "C022",
                        rows.get(joint.id()),
                        "“" + joint.id() + "” is named for " + word + " and does not hold it.",
                        "Mend the id, or the two bones of this row.");
            }
        }
    }
}
