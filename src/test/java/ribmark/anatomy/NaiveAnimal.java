package ribmark.anatomy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A second, slow working of the same question, told from the result: which parts a joint holds together is read off the
 * names of the parts alone, each time anew. It shares no code with the engine but the rows of the skeleton.
 */
public final class NaiveAnimal {

    private final Skeleton skeleton;
    final Set<String> parts = new LinkedHashSet<>();
    private final List<String> severed = new ArrayList<>();

    public NaiveAnimal(Skeleton skeleton) {
        this.skeleton = skeleton;
        skeleton.bones().forEach(bone -> parts.add(bone.id()));
    }

    public void saw(String part, boolean across) {
        parts.remove(part);
        int point = part.indexOf('.') < 0 ? part.length() : part.indexOf('.');
        for (String half : across ? List.of(".near", ".far") : List.of(".left", ".right")) {
            parts.add(across ? part + half : part.substring(0, point) + half + part.substring(point));
        }
    }

    public void sever(String share) {
        severed.add(share);
    }

    public void lift(Set<String> out) {
        for (String[] held : holds()) {
            if (out.contains(held[1]) != out.contains(held[2])) {
                severed.add(held[0]);
            }
        }
    }

    /** The name of each share that holds, and the two parts it holds. */
    public List<String[]> holds() {
        List<String[]> holds = new ArrayList<>();
        Map<String, List<String>> partsOf = parts.stream().collect(Collectors.groupingBy(NaiveAnimal::id));
        for (Joint joint : skeleton.joints()) {
            for (String p : partsOf.get(joint.boneA())) {
                for (String q : partsOf.get(joint.boneB())) {
                    String share = share(joint, p, q);
                    if (meet(joint, p, q) && severed.stream().noneMatch(cut -> isCutFrom(share, cut))) {
                        holds.add(new String[] {share, p, q});
                    }
                }
            }
        }
        return holds;
    }

    public Set<Set<String>> pieces() {
        List<Set<String>> pieces = new ArrayList<>();
        parts.forEach(part -> pieces.add(new TreeSet<>(Set.of(part))));
        for (String[] held : holds()) {
            Set<String> one = pieceWith(pieces, held[1]);
            Set<String> other = pieceWith(pieces, held[2]);
            if (one != other) {
                pieces.removeIf(piece -> piece == other);
                one.addAll(other);
            }
        }
        return Set.copyOf(pieces);
    }

    private static Set<String> pieceWith(List<Set<String>> pieces, String part) {
        return pieces.stream().filter(piece -> piece.contains(part)).findFirst().orElseThrow();
    }

    private boolean meet(Joint joint, String p, String q) {
        boolean atEnds = onlyAt(joint.endA(), ends(p)) && onlyAt(joint.endB(), ends(q));
        boolean acrossTheMidline = !isMidline(joint.boneA()) && !isMidline(joint.boneB());
        boolean sameSide = acrossTheMidline || side(p).isEmpty() || side(q).isEmpty() || side(p).equals(side(q));
        boolean alongside = joint.endA() != End.BOTH
                || joint.endB() != End.BOTH
                || ends(p).startsWith(ends(q))
                || ends(q).startsWith(ends(p));
        return atEnds && sameSide && alongside;
    }

    private static boolean onlyAt(End end, String ends) {
        return end == End.BOTH || ends.replace("." + end.word(), "").isEmpty();
    }

    private String share(Joint joint, String p, String q) {
        boolean midline = isMidline(joint.boneA()) && isMidline(joint.boneB());
        String side = !midline ? "" : side(p).isEmpty() ? side(q) : side(p);
        String a = joint.endA() == End.BOTH ? ends(p) : "";
        String b = joint.endB() == End.BOTH ? ends(q) : "";
        return joint.id() + side + (a.length() > b.length() ? a : b);
    }

    /** Whether a share is the one severed or was cut from it. */
    private static boolean isCutFrom(String share, String cut) {
        String side = sideWritten(cut);
        return id(share).equals(id(cut))
                && (side.isEmpty() || side.equals(sideWritten(share)))
                && ends(share).startsWith(ends(cut));
    }

    private boolean isMidline(String bone) {
        return "ONCE".equals(skeleton.bone(bone).orElseThrow().side().name());
    }

    private String side(String part) {
        return isMidline(id(part))
                ? sideWritten(part)
                : "." + skeleton.bone(id(part)).orElseThrow().side().name().toLowerCase(java.util.Locale.ROOT);
    }

    private static String sideWritten(String name) {
        return name.contains(".left") ? ".left" : name.contains(".right") ? ".right" : "";
    }

    private static String ends(String name) {
        return name.substring(id(name).length() + sideWritten(name).length());
    }

    private static String id(String name) {
        return name.contains(".") ? name.substring(0, name.indexOf('.')) : name;
    }
}
