package ribmark.drills;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.basics.Words;

/**
 * The ribs of one side and the vertebrae they belong to, found in the graph: a rib is a sided bone joined to the backbone in
 * its own region, and it belongs to the vertebra it has most joints with.
 */
final class RibCage {

    private final Skeleton skeleton;
    private final InWords words;
    private final List<String> spine;
    private final Map<String, Integer> placeByRib = new LinkedHashMap<>();

    private RibCage(Skeleton skeleton) {
        this.skeleton = skeleton;
        this.words = new InWords(skeleton);
        this.spine = skeleton.bones().stream()
                .filter(Bone::isMidline)
                .map(Bone::id)
                .filter(id -> skeleton.regions().contains(letters(id)))
                .toList();
        skeleton.bones()
                .forEach(bone -> vertebra(bone).ifPresent(own -> placeByRib.put(bone.id(), spine.indexOf(own))));
    }

    static RibCage of(Skeleton skeleton) {
        return new RibCage(skeleton);
    }

    private static String letters(String id) {
        return id.replaceAll("[0-9]+$", "");
    }

    private Optional<String> vertebra(Bone rib) {
        Map<String, Long> joints = skeleton.joints().stream()
                .filter(joint -> joint.holds(rib.id()) && !joint.isSoft())
                .map(joint -> joint.boneA().equals(rib.id()) ? joint.boneB() : joint.boneA())
                .filter(spine::contains)
                .collect(Collectors.groupingBy(id -> id, Collectors.counting()));
        return joints.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .filter(own -> !rib.isMidline() && isOfRegion(rib, own));
    }

    private boolean isOfRegion(Bone rib, String vertebra) {
        return skeleton.bone(vertebra).orElseThrow().region().equals(rib.region());
    }

    private List<String> left() {
        return placeByRib.keySet().stream()
                .filter(id -> skeleton.bone(id).orElseThrow().side() == Side.LEFT)
                .toList();
    }

    /** Which number of the formula counts the vertebrae with ribs; below nought when there are none. */
    int region() {
        return placeByRib.values().stream()
                .findFirst()
                .map(place -> skeleton.regions().indexOf(letters(spine.get(place))))
                .orElse(-1);
    }

    String formula() {
        return skeleton.formula().toString();
    }

    int pairs() {
        return left().size();
    }

    boolean has(Joint line) {
        return skeleton.joint(line.id()).isPresent();
    }

    /** Whether it joins two neighbours of the backbone, or two ribs. */
    boolean isLine(Joint joint) {
        boolean ribs = placeByRib.containsKey(joint.boneA()) && placeByRib.containsKey(joint.boneB());
        int a = spine.indexOf(joint.boneA());
        return ribs || a >= 0 && spine.indexOf(joint.boneB()) == a + 1;
    }

    /** How many pairs belong to vertebrae in front of the line. */
    int inFront(Joint line) {
        int last = placeByRib.getOrDefault(line.boneA(), spine.indexOf(line.boneA()));
        return (int) left().stream().filter(rib -> placeByRib.get(rib) <= last).count();
    }

    /** Where the line runs, in words. */
    String said(Joint line) {
        boolean ribs = placeByRib.containsKey(line.boneA());
        String between = words.bothSides(List.of(line.boneA(), line.boneB()));
        return (ribs ? "between " : "through the backbone between ") + between;
    }

    /** A count as an answer. */
    static String count(int pairs) {
        return pairs == 0 ? "none" : Words.count(pairs);
    }

    private static String bare(String bones) {
        return bones.replaceAll("^(left|right) ", "");
    }

    private String rib(int number) {
        return bare(words.bone(left().get(number - 1)));
    }

    /** Where the line would have to run for so many pairs in front. */
    String wouldBe(int pairs) {
        if (pairs == 0 || pairs == pairs()) {
            return pairs == 0
                    ? "Then the line would run in front of " + rib(1) + "."
                    : "Then the line would run behind " + rib(pairs) + ", the last one.";
        }
        return "Then the line would run between " + rib(pairs) + " and " + rib(pairs + 1) + ".";
    }

    /** Which ribs lie next to the line, and the vertebrae that say so. */
    String why(Joint line, boolean behind) {
        int front = inFront(line);
        String before = front == 0
                ? "No rib belongs to a vertebra in front of the line"
                : Words.capital(rib(front)) + " belongs to " + own(front)
                        + ", the last one with a rib in front of the line";
        String after = front == pairs()
                ? "; behind it there is none."
                : "; " + rib(front + 1) + " belongs to " + own(front + 1) + " and lies behind it.";
        String sum = behind ? " " + pairs() + " less " + count(front) + " leaves " + count(pairs() - front) + "." : "";
        return before + after + sum;
    }

    private String own(int number) {
        return words.bone(spine.get(placeByRib.get(left().get(number - 1))));
    }
}
