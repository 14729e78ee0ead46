package ribmark.anatomy;

import ribmark.basics.Refused;

/** One hold between two bones, a joint or soft tissue, and where on each of them it sits. */
public record Joint(
        String id, String name, String type, String boneA, String boneB, String source, End endA, End endB) {

    private static final String SOFT = "soft:";

    /** Reads one row as it stands in the file. */
    public static Joint of(
            String id, String name, String type, String boneA, String boneB, String source, String endA, String endB) {
        Ident.check(id);
        return new Joint(id, name, type, boneA, boneB, source, end(id, endA), end(id, endB));
    }

    private static End end(String id, String word) {
        return End.of(word)
                .orElseThrow(() -> new Refused(
                        "“" + id + "” has the end “" + word + "”: write near, far or both for each of its two bones."));
    }

    /** Whether it is muscle, ligament or the belly wall and not a joint or union of bones. */
    public boolean isSoft() {
        return type.startsWith(SOFT);
    }

    /** Whether it takes hold of this bone. */
    public boolean holds(String bone) {
        return boneA.equals(bone) || boneB.equals(bone);
    }
}
