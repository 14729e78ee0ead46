package ribmark.anatomy;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ribmark.anatomy.Spine.Region;
import ribmark.basics.Refused;
import ribmark.basics.Words;

/**
 * The same kind of animal with other numbers of vertebrae. One region grows or shrinks by one vertebra at a time, and
 * all that goes along with it: a modelling choice, ours.
 */
final class Variant {

    private static final Pattern NUMBER = Pattern.compile("[0-9]+");
    private static final Pattern ROMAN = Pattern.compile("\\b[IVXL]+\\b");

    private final Spine spine;
    private List<Bone> bones;
    private List<Joint> joints;

    private Variant(Skeleton base) {
        this.spine = base.spine();
        this.bones = base.bones();
        this.joints = base.joints();
    }

    static Skeleton of(Skeleton base, Formula wanted) {
        List<Region> regions = base.spine().regions();
        if (wanted.counts().size() != regions.size()) {
            throw new Refused("The formula “" + wanted + "” has "
                    + Words.count(wanted.counts().size(), "number", "numbers")
                    + ", and this animal needs one for each of "
                    + Words.list(regions.stream().map(Region::letters).toList()) + ", for example " + base.formula()
                    + ".");
        }
        Variant variant = new Variant(base);
        for (int at = 0; at < regions.size(); at++) {
            variant.bring(at, wanted.counts().get(at));
        }
        return base.varied(variant.bones, variant.joints, wanted);
    }

    private void bring(int at, int wanted) {
        Region region = spine.regions().get(at);
        for (int count = region.count(); count < wanted; count++) {
            grow(region.counting(count), at);
        }
        for (int count = region.count(); count > wanted; count--) {
            shrink(region.counting(count), at);
        }
    }

    /** One more: whatever names the last one is repeated with each number one higher; the next region moves to the new end. */
    private void grow(Region region, int at) {
        int last = region.count();
        bones = bones.stream()
                .flatMap(bone -> region.has(bone.id(), last) ? Stream.of(bone, raised(bone)) : Stream.of(bone))
                .toList();
        joints = joints.stream()
                .flatMap(joint -> {
                    if (meetsNext(joint, region, at)) {
                        return Stream.of(moved(joint, region.vertebra(last), region.vertebra(last + 1)));
                    }
                    return goesAlong(joint, region) ? Stream.of(joint, raised(joint)) : Stream.of(joint);
                })
                .toList();
    }

    /** One fewer: whatever names the last one goes with it; the next region moves to the new end. */
    private void shrink(Region region, int at) {
        int last = region.count();
        boolean lastRegion = at == spine.regions().size() - 1;
        if (last == 1 && !lastRegion) {
            throw tooFew(region, "the spine would come apart there");
        }
        List<Joint> kept = new ArrayList<>();
        for (Joint joint : joints) {
            if (meetsNext(joint, region, at)) {
                kept.add(moved(joint, region.vertebra(last), region.vertebra(last - 1)));
            } else if (!names(joint, region, last)) {
                kept.add(joint);
            } else if (!spine.has(joint.boneA()) || !spine.has(joint.boneB())) {
                throw tooFew(region, "“" + joint.id() + "” takes hold there");
            }
        }
        joints = kept;
        bones = bones.stream().filter(bone -> !region.has(bone.id(), last)).toList();
    }

    private static Refused tooFew(Region region, String why) {
        return new Refused("This animal cannot have fewer than " + region.count() + " " + region.letters()
                + ", because " + why + ": count again.");
    }

    private static boolean names(Joint joint, Region region, int number) {
        return region.has(joint.boneA(), number) || region.has(joint.boneB(), number);
    }

    /** Whether it is repeated when the region grows: the chain itself, and what goes along with the last vertebra. */
    private static boolean goesAlong(Joint joint, Region region) {
        String last = region.vertebra(region.count());
        String beforeLast = region.vertebra(region.count() - 1);
        boolean chain = joint.holds(last) && joint.holds(beforeLast);
        boolean along = names(joint, region, region.count())
                && Stream.of(joint.boneA(), joint.boneB())
                        .anyMatch(bone -> region.has(bone, region.count()) && !bone.equals(last));
        return chain || along;
    }

    /** Whether it joins the last of the region to the first of the next region or of what goes along with that. */
    private boolean meetsNext(Joint joint, Region region, int at) {
        if (at + 1 == spine.regions().size()) {
            return false;
        }
        Region next = spine.regions().get(at + 1);
        return joint.holds(region.vertebra(region.count())) && names(joint, next, 1);
    }

    private static Joint moved(Joint joint, String from, String to) {
        Pattern word = Pattern.compile("\\b" + from + "\\b");
        return new Joint(
                word.matcher(joint.id()).replaceAll(to),
                word.matcher(joint.name()).replaceAll(to),
                joint.type(),
                joint.boneA().equals(from) ? to : joint.boneA(),
                joint.boneB().equals(from) ? to : joint.boneB(),
                joint.source(),
                joint.endA(),
                joint.endB());
    }

    /** The class number in the outside ontology is that of another bone and so is not carried over. */
    private static Bone raised(Bone bone) {
        String latin = ROMAN.matcher(bone.latin()).replaceAll(found -> Roman.next(found.group()));
        return new Bone(raised(bone.id()), raised(bone.name()), latin, bone.side(), bone.region(), "", bone.source());
    }

    private static Joint raised(Joint joint) {
        return new Joint(
                raised(joint.id()),
                raised(joint.name()),
                joint.type(),
                raised(joint.boneA()),
                raised(joint.boneB()),
                joint.source(),
                joint.endA(),
                joint.endB());
    }

    private static String raised(String text) {
        Matcher numbers = NUMBER.matcher(text);
        return numbers.replaceAll(found -> String.valueOf(Integer.parseInt(found.group()) + 1));
    }
}
