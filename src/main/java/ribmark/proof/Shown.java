package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.contentfiles.Node;

/** Which bones of one animal written ids stand for, show and touch. */
final class Shown {

    private final Skeleton animal;
    private final Ids ids;

    Shown(Skeleton animal) {
        this.animal = animal;
        this.ids = Ids.of(animal);
    }

    /** The bones a list names. */
    Set<String> bones(Node list) {
        Set<String> bones = new HashSet<>();
        ids.expandAll(list.texts()).forEach(id -> bones.add(whole(id)));
        return bones;
    }

    /** The bones themselves, and of a joint the two it holds. */
    Set<String> touched(List<Node> written) {
        Set<String> bones = new HashSet<>();
        written.forEach(id -> touched(id.text()).forEach(bones::add));
        return bones;
    }

    private Stream<String> touched(String written) {
        return ids.expand(written).stream()
                .map(Shown::whole)
                .flatMap(id -> animal.joint(id)
                        .map(joint -> Stream.of(joint.boneA(), joint.boneB()))
                        .orElse(Stream.of(id)));
    }

    /** By bone, what touches it though the list does not name it. */
    Map<String, List<Node>> missing(List<Node> written, Node list) {
        Set<String> named = bones(list);
        Map<String, List<Node>> missing = new LinkedHashMap<>();
        for (Node id : written) {
            touched(id.text())
                    .filter(bone -> !named.contains(bone))
                    .findFirst()
                    .ifPresent(bone -> missing.computeIfAbsent(bone, any -> new ArrayList<>())
                            .add(id));
        }
        return missing;
    }

    /** Of a run the first and the last on each side: what lies between them needs no words. */
    Set<String> ends(String written) {
        Set<String> ends = new HashSet<>();
        for (Side side : Ids.isSided(written) ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.LEFT)) {
            List<String> run = ids.expand(written, side);
            if (!run.isEmpty()) {
                ends.add(whole(run.get(0)));
                ends.add(whole(run.get(run.size() - 1)));
            }
        }
        return ends;
    }

    /** The entry that names bones of the same kind, where an author would look; the whole list if there is none. */
    Node like(String bone, Node list) {
        return list.items().stream()
                .filter(entry -> ids.expand(entry.text()).stream()
                        .anyMatch(id -> kind(whole(id)).equals(kind(bone))))
                .findFirst()
                .orElse(list);
    }

    /** The id without its number and side, so that neighbours and twins are alike. */
    static String kind(String part) {
        return part.replaceAll("[0-9]", "").replaceAll("[LR](\\.|$)", "$1").replaceAll("\\.(left|right)", "");
    }

    private static String whole(String part) {
        return part.replaceAll("\\..*", "");
    }
}
