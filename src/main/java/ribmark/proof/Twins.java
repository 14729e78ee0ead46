package ribmark.proof;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;

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
            if (!found.any(List.of("C022"), List.of(bones))) {
                twins.joints();
            }
        }
        animal.joints().forEach(twins::holdsItsName);
    }

    private boolean has(Side side) {
        return animal.bones().stream().anyMatch(bone -> bone.side() == side);
    }

    private void bones() {
        for (Bone bone : animal.bones()) {
            if (!bone.isMidline() && twin(bone.id()).isEmpty()) {
                alone(bone.id());
            }
        }
    }

    /** The bone on the other side, called the same but for the last letter; one of the midline is its own twin. */
    private Optional<String> twin(String id) {
        Bone bone = animal.bone(id).orElseThrow();
        if (bone.isMidline()) {
            return Optional.of(id);
        }
        String letter = bone.side() == Side.LEFT ? "L" : "R";
        String other = bone.side() == Side.LEFT ? "R" : "L";
        return Optional.of(id)
                .filter(one -> one.endsWith(letter))
                .map(one -> one.substring(0, one.length() - 1) + other)
                .filter(two -> animal.bone(two)
                        .filter(found -> !found.isMidline() && found.side() != bone.side())
                        .isPresent());
    }

    private void joints() {
        Set<String> met = new HashSet<>();
        for (Joint joint : animal.joints()) {
            if (isSided(joint) && met.add(joint.id())) {
                Optional<Joint> other = partner(joint.id());
                other.ifPresent(two -> met.add(two.id()));
                if (other.isEmpty()) {
                    alone(joint.id());
                } else {
                    difference(joint, other.get()).ifPresent(column -> differ(joint, other.get(), column));
                }
            }
        }
    }

    /** A joint of one side: a bone of that side and none of the other. */
    private boolean isSided(Joint joint) {
        Set<Side> sides = EnumSet.of(side(joint.boneA()), side(joint.boneB()));
        return sides.contains(Side.LEFT) != sides.contains(Side.RIGHT);
    }

    private Side side(String bone) {
        return animal.bone(bone).orElseThrow().side();
    }

    /** The joint whose id differs in one letter alone, L for R or R for L. */
    private Optional<Joint> partner(String id) {
        return IntStream.range(0, id.length())
                .filter(at -> id.charAt(at) == 'L' || id.charAt(at) == 'R')
                .mapToObj(at -> id.substring(0, at) + (id.charAt(at) == 'L' ? 'R' : 'L') + id.substring(at + 1))
                .flatMap(other -> animal.joint(other).stream())
                .findFirst();
    }

    /** The first column in which two joints do not mirror each other. */
    private Optional<String> difference(Joint one, Joint other) {
        if (twin(one.boneA()).filter(other.boneA()::equals).isEmpty()) {
            return Optional.of("bone_a");
        }
        if (twin(one.boneB()).filter(other.boneB()::equals).isEmpty()) {
            return Optional.of("bone_b");
        }
        if (one.endA() != other.endA()) {
            return Optional.of("end_a");
        }
        if (one.endB() != other.endB()) {
            return Optional.of("end_b");
        }
        return one.type().equals(other.type()) ? Optional.empty() : Optional.of("type");
    }

    private void alone(String id) {
        found.add(
                "C022",
                rows.get(id).get(animal.bone(id).isPresent() ? "side" : "id"),
                "“" + id + "” has no twin on the other side.",
                "Compare it with its neighbours: its side, and the letter its id ends with.");
    }

    private void differ(Joint one, Joint other, String column) {
        found.add(
                "C022",
                rows.get(one.id()).get(column),
                "“" + one.id() + "” and “" + other.id() + "” do not mirror each other.",
                "Compare the two rows: bones, kind and ends must be alike.",
                new Also("The other stands in", rows.get(other.id()).get(column).place()));
    }

    private void holdsItsName(Joint joint) {
        List<String> named = Stream.of(joint.id().split("-"))
                .filter(word -> animal.bone(word).isPresent())
                .toList();
        for (String word : named) {
            if (!joint.holds(word)) {
                found.add(
                        "C022",
                        rows.get(joint.id()).get(named.contains(joint.boneA()) ? "bone_b" : "bone_a"),
                        "“" + joint.id() + "” is named for " + word + " and does not hold it.",
                        "Mend the id, or the two bones of this row.");
            }
        }
    }
}
