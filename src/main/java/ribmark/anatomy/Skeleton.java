package ribmark.anatomy;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.anatomy.Spine.Region;
import ribmark.basics.Refused;
import ribmark.basics.Side;

/** The bones of one kind of animal and what joins them, in the order of their files. */
public final class Skeleton {

    private final Map<String, Bone> bones;
    private final Map<String, Joint> joints;
    private final Map<String, Integer> order = new LinkedHashMap<>();
    private final Map<String, Integer> lasts = new HashMap<>();
    private final Skeleton base;
    private final Spine spine;
    private final Formula formula;

    private Skeleton(List<Bone> bones, List<Joint> joints, Skeleton base, Formula formula) {
        this.bones = byId(bones, Bone::id);
        this.joints = byId(joints, Joint::id);
        this.bones.keySet().forEach(id -> order.put(id, order.size()));
        this.bones.keySet().stream()
                .flatMap(id -> Ident.numbered(id).stream())
                .forEach(id -> lasts.merge(id.letters(), id.number(), Math::max));
        this.base = base == null ? this : base;
        this.spine = base == null ? Spine.of(bones, joints) : base.spine;
        this.formula = formula == null ? ownFormula() : formula;
    }

    private static <T> Map<String, T> byId(List<T> rows, Function<T, String> id) {
        return rows.stream().collect(Collectors.toMap(id, row -> row, (one, two) -> one, LinkedHashMap::new));
    }

    private Formula ownFormula() {
        return new Formula(spine.regions().stream().map(Region::count).toList());
    }

    /** Builds the usual animal; refuses rows that do not fit together, with the first sentence of {@link Flaw#in}. */
    public static Skeleton of(List<Bone> bones, List<Joint> joints) {
        return checked(bones, joints, null, null);
    }

    private static Skeleton checked(List<Bone> bones, List<Joint> joints, Skeleton base, Formula formula) {
        Flaw.in(bones, joints).stream().findFirst().ifPresent(flaw -> {
            throw new Refused(flaw.sentence());
        });
        return new Skeleton(bones, joints, base, formula);
    }

    /** The same kind of animal with these numbers of vertebrae; refuses numbers that leave a muscle or joint without its bone. */
    public Skeleton withFormula(Formula wanted) {
        return wanted.equals(base.formula) ? base : Variant.of(base, wanted);
    }

    Skeleton varied(List<Bone> otherBones, List<Joint> otherJoints, Formula wanted) {
        return checked(otherBones, otherJoints, base, wanted);
    }

    /** How many vertebrae this animal has in each region. */
    public Formula formula() {
        return formula;
    }

    /** The letters of the regions of the spine, head to tail, as the formula counts them. */
    public List<String> regions() {
        return spine.regions().stream().map(Region::letters).toList();
    }

    /** All bones in the order of the file. */
    public List<Bone> bones() {
        return List.copyOf(bones.values());
    }

    /** All joints and soft edges in the order of the file. */
    public List<Joint> joints() {
        return List.copyOf(joints.values());
    }

    /** The bone of this id, if this animal has it. */
    public Optional<Bone> bone(String id) {
        return Optional.ofNullable(bones.get(id));
    }

    /** The joint of this id, if this animal has it. */
    public Optional<Joint> joint(String id) {
        return Optional.ofNullable(joints.get(id));
    }

    /** The side on which a bone, a joint or a part lies; once on the midline, and for what reaches from left to right. */
    public Side sideOf(String name) {
        Ident ident = Ident.read(name);
        if (ident.halves().isSided()) {
            return ident.halves().side();
        }
        Joint joint = joints.get(ident.id());
        Stream<String> held = joint == null ? Stream.of(ident.id()) : Stream.of(joint.boneA(), joint.boneB());
        List<Side> sides = held.flatMap(id -> bone(id).stream())
                .map(Bone::side)
                .filter(side -> side != Side.ONCE)
                .distinct()
                .toList();
        return sides.size() == 1 ? sides.get(0) : Side.ONCE;
    }

    /** The highest number among bones of these letters: none when no bone of this kind of animal ever has them. */
    public OptionalInt last(String letters) {
        int highest = lasts.getOrDefault(letters, 0);
        return highest > 0 || regions().contains(letters) ? OptionalInt.of(highest) : OptionalInt.empty();
    }

    Spine spine() {
        return spine;
    }

    int position(Bone bone) {
        return order.get(bone.id());
    }

    Collection<String> boneIds() {
        return bones.keySet();
    }

    Collection<String> jointIds() {
        return joints.keySet();
    }
}
