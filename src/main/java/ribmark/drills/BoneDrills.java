package ribmark.drills;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Words;
import ribmark.curriculum.Step;

/** Name this bone, from where it lies and what it is joined to. */
final class BoneDrills implements DrillMaker {

    /** What is said of a bone: region, side, and bones it is joined to; enough to fit one bone only. */
    private record Clue(Bone bone, List<String> joinedTo) {}

    private final Worked worked;
    private final Skeleton skeleton;
    private final InWords words;
    private final Map<String, Set<String>> joined = new LinkedHashMap<>();

    BoneDrills(Worked worked, Skeleton skeleton, InWords words) {
        this.worked = worked;
        this.skeleton = skeleton;
        this.words = words;
        skeleton.bones().forEach(bone -> joined.put(bone.id(), joinedTo(bone.id())));
    }

    private Set<String> joinedTo(String bone) {
        Set<String> bones = new LinkedHashSet<>();
        for (Joint joint : skeleton.joints()) {
            if (joint.holds(bone) && !joint.isSoft()) {
                bones.add(joint.boneA().equals(bone) ? joint.boneB() : joint.boneA());
            }
        }
        return bones;
    }

    @Override
    public DrillKind kind() {
        return DrillKind.NAME_BONE;
    }

    @Override
    public List<Subject> subjects() {
        return worked.steps().stream()
                .filter(step -> !askable(step).isEmpty())
                .map(step -> new Subject(step.id(), step.id(), step.title()))
                .toList();
    }

    private List<Bone> askable(Step step) {
        return step.landmark().bones().stream()
                .distinct()
                .flatMap(id -> skeleton.bone(id).stream())
                .filter(bone -> fits(bone, List.copyOf(joined.get(bone.id()))).count() == 1)
                .toList();
    }

    /** The bones that lie where this one lies and are joined to all of these. */
    private Stream<Bone> fits(Bone like, List<String> joinedTo) {
        return skeleton.bones().stream()
                .filter(bone -> liesLike(like, bone) && joined.get(bone.id()).containsAll(joinedTo));
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Clue clue = clue(Drill.oneOf(askable(worked.step(subject.id())), random), random);
        Bone bone = clue.bone();
        String ask = "Which bone is this? It lies " + words.lies(bone) + ", and is joined to "
                + words.each(clue.joinedTo()) + ".";
        List<String> given = new ArrayList<>(List.of(bone.region(), bone.side().word()));
        given.addAll(clue.joinedTo());
        Drill.About about = new Drill.About(kind(), List.copyOf(given), ask, List.of(bone.id()));
        Drill.Choice right = new Drill.Choice(bone.id(), words.bone(bone.id()), whole(bone));
        return about.with(right, wrong(clue, random), random);
    }

    /** One neighbour more until only one bone fits; whatever is joined to most says least, so a rib’s own cartilage comes last. */
    private Clue clue(Bone bone, Random random) {
        List<String> all = Drill.shuffled(List.copyOf(joined.get(bone.id())), random).stream()
                .sorted(Comparator.comparing(other -> -joined.get(other).size()))
                .toList();
        int needed = 1;
        while (fits(bone, all.subList(0, needed)).count() > 1) {
            needed++;
        }
        return new Clue(bone, all.subList(0, needed));
    }

    /** First bones of the same region, then those joined to the same bones, then any. */
    private Stream<Drill.Choice> wrong(Clue clue, Random random) {
        List<Bone> all = Drill.shuffled(skeleton.bones(), random);
        Stream<Bone> near = all.stream().filter(bone -> sameSide(bone, clue) && sameRegion(bone, clue));
        Stream<Bone> touching = all.stream()
                .filter(bone -> clue.joinedTo().stream()
                        .anyMatch(other -> joined.get(other).contains(bone.id())));
        return Stream.of(near, touching, all.stream())
                .flatMap(bones -> bones)
                .filter(bone -> !clue.joinedTo().contains(bone.id()))
                .flatMap(bone -> fault(clue.bone(), clue.joinedTo(), bone)
                        .map(fault -> new Drill.Choice(bone.id(), words.bone(bone.id()), fault))
                        .stream());
    }

    private static boolean liesLike(Bone one, Bone other) {
        return one.region().equals(other.region()) && one.side() == other.side();
    }

    private static boolean sameSide(Bone bone, Clue clue) {
        return bone.side() == clue.bone().side();
    }

    private static boolean sameRegion(Bone bone, Clue clue) {
        return bone.region().equals(clue.bone().region());
    }

    /** Why a bone is not the one described; nothing when it fits. */
    private Optional<String> fault(Bone described, List<String> joinedTo, Bone bone) {
        return !liesLike(described, bone)
                ? Optional.of(whole(bone))
                : joinedTo.stream()
                        .filter(other -> !joined.get(bone.id()).contains(other))
                        .findFirst()
                        .map(other -> whole(bone) + " It is not joined to " + words.bone(other) + ".");
    }

    private String whole(Bone bone) {
        String lies = Words.capital(words.bone(bone.id())) + " lies in the " + bone.region();
        List<String> others = List.copyOf(joined.get(bone.id()));
        return others.isEmpty() ? lies + "." : lies + " and is joined to " + words.each(others) + ".";
    }
}
