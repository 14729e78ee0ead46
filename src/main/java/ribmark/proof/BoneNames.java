package ribmark.proof;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
import ribmark.basics.Suggest;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks that every bone and joint named in content is one of this animal's. */
final class BoneNames {

    private final Ids ids;
    private final List<String> bones;
    private final List<String> joints;
    private final Set<String> boneSet;
    private final Set<String> jointSet;
    private final Findings found;

    private BoneNames(Skeleton animal, Findings found) {
        this.ids = Ids.of(animal);
        this.bones = animal.bones().stream().map(Bone::id).toList();
        this.joints = animal.joints().stream().map(Joint::id).toList();
        this.boneSet = new HashSet<>(bones);
        this.jointSet = new HashSet<>(joints);
        this.found = found;
    }

    /** What teaches: it is written for the usual animal. */
    static void checkTeaching(Shelf shelf, Skeleton usual, Findings found) {
        BoneNames names = new BoneNames(usual, found);
        names.areBones(shelf.landmarks(), "landmarks[].bones[]");
        names.areJoints(shelf.landmarks(), "landmarks[].joints[]");
        names.areBones(shelf.terms(), "terms[].bones[]");
        names.areBones(shelf.cuts(), "cuts[].same-as[].bones[]");
        names.areBones(shelf.cuts(), "cuts[].same-as[].differs[]");
        shelf.stages().forEach(stage -> names.areBones(stage, "steps[].landmark.bones[]"));
    }

    /** What is proven: it must hold for this very animal. */
    static void checkWork(Shelf shelf, Skeleton animal, Findings found) {
        BoneNames names = new BoneNames(animal, found);
        names.areBones(shelf.cuts(), "cuts[].bones[]");
        names.areBones(shelf.cuts(), "cuts[].or[]");
        for (String way : List.of("both-sides", "one-side")) {
            String done = "lines[].runs[]." + way + ".operations[].";
            names.areJoints(shelf.lines(), done + "sever[]");
            names.areBones(shelf.lines(), done + "saw[]");
            names.areBones(shelf.lines(), done + "lift[]");
            names.areBones(shelf.lines(), "lines[].runs[]." + way + ".go-over[]");
        }
        shelf.stages().forEach(stage -> {
            names.areJoints(stage, "steps[].operations[].sever[]");
            names.areBones(stage, "steps[].operations[].saw[]");
            names.areBones(stage, "steps[].operations[].lift[]");
        });
    }

    private void areBones(Node file, String path) {
        file.all(path).forEach(at -> check(at, "bone", bones, boneSet::contains, jointSet::contains));
    }

    private void areJoints(Node file, String path) {
        file.all(path).forEach(at -> check(at, "joint", joints, jointSet::contains, boneSet::contains));
    }

    private void check(Node at, String kind, List<String> all, Predicate<String> is, Predicate<String> isOther) {
        try {
            ids.expand(at.text()).stream()
                    .map(id -> id.contains(".") ? id.substring(0, id.indexOf('.')) : id)
                    .filter(is.negate())
                    .findFirst()
                    .ifPresent(id -> unknown(at, kind, id, all, isOther.test(id)));
        } catch (Refused e) {
            Saying.of(e).add("C023", at, found);
        }
    }

    private void unknown(Node at, String kind, String id, List<String> all, boolean other) {
        String help = other
                ? "“" + id + "” is a " + (kind.equals("bone") ? "joint" : "bone") + ". Name a " + kind + " here."
                : Suggest.nearest(id, all)
                        .map(near -> "Did you mean “" + near + "”?")
                        .orElse("Take an id from the skeleton files.");
        found.add("C023", at, "This animal has no " + kind + " “" + id + "”.", help);
    }
}
