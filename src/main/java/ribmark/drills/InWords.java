package ribmark.drills;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.BoneWords;

/** Says bones and joints without their ids. Joints of left and right that are called the same are said once. */
final class InWords {

    private static final Pattern ASIDE = Pattern.compile("\\s*\\((left and right[^)]*|[^)]*,[^)]*)\\)");
    private static final Pattern CODE =
            Pattern.compile(",?\\s*\\(?[A-Z]+[0-9|+].*|,[^,]*[A-Z]{2}.*|,[^,]*[A-Z][0-9].*");

    private final Skeleton skeleton;
    private final BoneWords bones;
    private final Map<String, List<Joint>> called;
    private final Map<String, List<String>> held = new HashMap<>();

    InWords(Skeleton skeleton) {
        this.skeleton = skeleton;
        this.bones = new BoneWords(skeleton);
        this.called = skeleton.joints().stream()
                .collect(Collectors.groupingBy(this::joint, LinkedHashMap::new, Collectors.toList()));
        called.keySet().forEach(said -> held.put(said, findBones(said)));
    }

    /** One bone: {@code left rib 7}. */
    String bone(String id) {
        return bones.inSentence(List.of(id));
    }

    /** Several bones or parts of bones, neighbours as one run. */
    String bones(List<String> ids) {
        return bones.inSentence(ids);
    }

    /** Several bones without their sides, where both are meant. */
    String bothSides(List<String> ids) {
        return Words.list(said(ids)
                .map(said -> said.replaceAll(", (left|right)( and right)?$", ""))
                .toList());
    }

    private Stream<String> said(List<String> ids) {
        return Stream.of(bones.say(ids).split("; "));
    }

    /** Each bone by itself, joined by commas and a last {@code and}. */
    String each(List<String> ids) {
        return Words.list(ids.stream().map(this::bone).toList());
    }

    /** Where a bone lies: {@code in the loin, on the midline}. */
    String lies(Bone bone) {
        String side = bone.side() == Side.ONCE
                ? "on the midline"
                : "on the " + bone.side().word();
        return "in the " + bone.region() + ", " + side;
    }

    /** What a joint or soft edge is called, its bones said in words. */
    String joint(Joint joint) {
        String name = ASIDE.matcher(joint.name()).replaceAll("");
        List<String> both = List.of(joint.boneA(), joint.boneB());
        name = name.replaceAll(
                "\\b" + joint.boneA() + "\\|" + joint.boneB() + "(?![+0-9])", "between " + bothSides(both));
        for (String id : both) {
            name = name.replaceAll("(?<=(with|to) )" + id + "\\b", bone(id));
        }
        name = CODE.matcher(name).replaceAll("").replace("|", " and ");
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** What joints are called, each name once, in the order of the file. */
    List<String> joints() {
        return List.copyOf(called.keySet());
    }

    /** The joints that are called so. */
    List<Joint> joints(String words) {
        return called.getOrDefault(words, List.of());
    }

    /** What the joints called so hold together: {@code rib 7 and thoracic vertebra 7}, {@code left and right pubis}. */
    String holds(String words) {
        List<String> names = said(bonesOf(words))
                .map(name -> name.replaceAll(", (left|right)( and right)?$", ""))
                .toList();
        return (names.size() == 1 && !names.get(0).contains(" and ") ? "left and right " : "") + Words.list(names);
    }

    /** The bones that the joints called so hold, in the order of the skeleton. */
    List<String> bonesOf(String words) {
        return held.get(words);
    }

    private List<String> findBones(String words) {
        List<String> both = joints(words).stream()
                .flatMap(joint -> Stream.of(joint.boneA(), joint.boneB()))
                .toList();
        return skeleton.bones().stream().map(Bone::id).filter(both::contains).toList();
    }
}
