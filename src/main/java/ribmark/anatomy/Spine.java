package ribmark.anatomy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the data say about the backbone: the first run of midline bones each joined to the next, in regions that share
 * their letters, and the rows of sided bones (ribs, their cartilages) that go along with a region number by number.
 */
record Spine(List<Region> regions) {

    /** A run of vertebrae; its kin are the letters of the region itself and of what goes along with it. */
    record Region(String letters, int count, Set<String> kin) {

        boolean has(String bone) {
            return Ident.numbered(bone).filter(id -> kin.contains(id.letters())).isPresent();
        }

        boolean has(String bone, int number) {
            return Ident.numbered(bone)
                    .filter(id -> kin.contains(id.letters()) && id.number() == number)
                    .isPresent();
        }

        Region counting(int other) {
            return new Region(letters, other, kin);
        }

        String vertebra(int number) {
            return letters + number;
        }
    }

    static Spine of(List<Bone> bones, List<Joint> joints) {
        Map<String, Integer> counts = runs(bones, new Joined(joints));
        List<Region> regions = new ArrayList<>();
        counts.forEach((letters, count) -> regions.add(new Region(letters, count, kin(letters, count, bones, joints))));
        return new Spine(regions);
    }

    boolean has(String bone) {
        return regions.stream().anyMatch(region -> region.has(bone));
    }

    private static Map<String, Integer> runs(List<Bone> bones, Joined joined) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        String before = null;
        for (Bone bone : bones) {
            var id = Ident.numbered(bone.id());
            boolean goesOn = before == null || joined.are(before, bone.id());
            if (!bone.isMidline() || id.isEmpty() || !goesOn) {
                return counts;
            }
            if (counts.merge(id.get().letters(), 1, Integer::sum) != id.get().number()) {
                return Map.of();
            }
            before = bone.id();
        }
        return counts;
    }

    private static Set<String> kin(String letters, int count, List<Bone> bones, List<Joint> joints) {
        Set<String> kin = new TreeSet<>(Set.of(letters));
        Map<String, Set<String>> rows = sidedRows(bones);
        boolean grew = true;
        while (grew) {
            Set<String> holders = goingAlong(kin, joints);
            grew = kin.addAll(rows.keySet().stream()
                    .filter(row -> rows.get(row).size() == 2 * count && holders.containsAll(rows.get(row)))
                    .toList());
        }
        return kin;
    }

    /** The sided bones with a number, by their letters. */
    private static Map<String, Set<String>> sidedRows(List<Bone> bones) {
        Map<String, Set<String>> rows = new HashMap<>();
        bones.stream()
                .filter(bone -> !bone.isMidline())
                .forEach(bone -> Ident.numbered(bone.id())
                        .ifPresent(id -> rows.computeIfAbsent(id.letters(), row -> new HashSet<>())
                                .add(bone.id())));
        return rows;
    }

    /** Every bone that is joined to one of the kin with the same number. */
    private static Set<String> goingAlong(Set<String> kin, List<Joint> joints) {
        Set<String> along = new HashSet<>();
        for (Joint joint : joints) {
            var a = Ident.numbered(joint.boneA());
            var b = Ident.numbered(joint.boneB());
            if (a.isPresent() && b.isPresent() && a.get().number() == b.get().number()) {
                addWhenKin(along, joint.boneA(), b.get(), kin);
                addWhenKin(along, joint.boneB(), a.get(), kin);
            }
        }
        return along;
    }

    private static void addWhenKin(Set<String> along, String bone, Ident.Numbered other, Set<String> kin) {
        if (kin.contains(other.letters())) {
            along.add(bone);
        }
    }

    /** Which bones are joined to which. */
    private static final class Joined {
        private final Set<List<String>> pairs = new HashSet<>();

        Joined(List<Joint> joints) {
            joints.forEach(joint -> pairs.add(List.of(joint.boneA(), joint.boneB())));
        }

        boolean are(String one, String other) {
            return pairs.contains(List.of(one, other)) || pairs.contains(List.of(other, one));
        }
    }
}
