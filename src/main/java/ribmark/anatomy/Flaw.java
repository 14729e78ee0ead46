package ribmark.anatomy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import ribmark.basics.Suggest;

/** What is wrong with one row of a skeleton: which list, which row of it counted from nought, and a sentence. */
public record Flaw(Rows list, int row, String sentence) {

    /** The two lists a skeleton is made of. */
    public enum Rows {
        BONES,
        JOINTS
    }

    /** Every flaw of these rows, bones first. */
    public static List<Flaw> in(List<Bone> bones, List<Joint> joints) {
        List<Flaw> flaws = new ArrayList<>();
        Set<String> boneIds = new LinkedHashSet<>();
        for (int row = 0; row < bones.size(); row++) {
            String id = bones.get(row).id();
            if (!boneIds.add(id)) {
                flaws.add(new Flaw(Rows.BONES, row, "There are two bones “" + id + "”: give each its own id."));
            }
        }
        if (bones.isEmpty()) {
            flaws.add(new Flaw(Rows.BONES, 0, "The skeleton has no bones: write at least one row."));
        }
        addJointFlaws(flaws, boneIds, joints);
        return List.copyOf(flaws);
    }

    private static void addJointFlaws(List<Flaw> flaws, Set<String> boneIds, List<Joint> joints) {
        Set<String> jointIds = new HashSet<>();
        for (int at = 0; at < joints.size(); at++) {
            int row = at;
            Joint joint = joints.get(at);
            if (!jointIds.add(joint.id())) {
                flaws.add(
                        new Flaw(Rows.JOINTS, row, "There are two joints “" + joint.id() + "”: give each its own id."));
            }
            sentences(joint, boneIds).forEach(sentence -> flaws.add(new Flaw(Rows.JOINTS, row, sentence)));
        }
    }

    private static List<String> sentences(Joint joint, Set<String> boneIds) {
        List<String> sentences = new ArrayList<>();
        if (boneIds.contains(joint.id())) {
            sentences.add("“" + joint.id() + "” is the id of a bone too: give the joint another.");
        }
        if (joint.boneA().equals(joint.boneB())) {
            sentences.add("“" + joint.id() + "” joins “" + joint.boneA() + "” to itself: name two bones.");
        }
        Stream.of(joint.boneA(), joint.boneB())
                .distinct()
                .filter(bone -> !boneIds.contains(bone))
                .forEach(bone -> sentences.add("“" + joint.id() + "” names the bone “" + bone
                        + "”, which is not in the skeleton" + Suggest.orNothing(bone, boneIds)
                        + ": add the bone or correct the id."));
        return sentences;
    }
}
