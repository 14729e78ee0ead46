package ribmark.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Flaw;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.CsvRows;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.TextFile;

/** Builds the skeleton from its two tables and points at every row that does not fit. */
public final class SkeletonRows {

    private static final String BONES = "content/%s/skeleton.csv";
    private static final String JOINTS = "content/%s/joints.csv";

    private final Node bones;
    private final Node joints;
    private final Findings found;

    private SkeletonRows(Node bones, Node joints, Findings found) {
        this.bones = bones;
        this.joints = joints;
        this.found = found;
    }

    /** The usual animal of this name, whatever else may be wrong with the files; refuses a name or a table that is not sound. */
    public static Skeleton named(String name, ContentFiles files) {
        if (files.bytes(BONES.formatted(name)).isEmpty()) {
            throw new Refused("There is no skeleton “" + name + "”: name one of the folders in content that hold one.");
        }
        Findings found = new Findings();
        return read(table(BONES.formatted(name), files, found), table(JOINTS.formatted(name), files, found), found)
                .orElseThrow(
                        () -> new Refused("The skeleton “" + name + "” is not sound: run check and mend its rows."));
    }

    private static Node table(String path, ContentFiles files, Findings found) {
        return files.bytes(path)
                .flatMap(bytes -> TextFile.of(path, bytes, found))
                .map(text -> CsvRows.read(text, found))
                .orElseGet(() -> Node.nothingIn(path));
    }

    /** The usual animal, or nothing when a row is wrong. */
    static Optional<Skeleton> read(Node bones, Node joints, Findings found) {
        return new SkeletonRows(bones, joints, found).read();
    }

    private Optional<Skeleton> read() {
        List<Bone> boneRows = new ArrayList<>();
        List<Joint> jointRows = new ArrayList<>();
        bones.items().forEach(row -> orFault(row, () -> boneRows.add(bone(row))));
        joints.items().forEach(row -> orFault(row, () -> jointRows.add(joint(row))));
        boolean whole = joints.isThere()
                && !found.any(List.of("C022"), List.of(bones, joints))
                && !boneRows.isEmpty()
                && boneRows.size() == bones.items().size()
                && jointRows.size() == joints.items().size();
        if (!whole) {
            return Optional.empty();
        }
        List<Flaw> flaws = Flaw.in(boneRows, jointRows);
        flaws.forEach(flaw -> Saying.of(flaw.sentence()).add("C022", culprit(row(flaw), flaw.sentence()), found));
        return flaws.isEmpty() ? Optional.of(Skeleton.of(boneRows, jointRows)) : Optional.empty();
    }

    private Node row(Flaw flaw) {
        Node table = flaw.list() == Flaw.Rows.BONES ? bones : joints;
        return table.items().isEmpty() ? table : table.items().get(flaw.row());
    }

    private void orFault(Node row, Runnable reading) {
        try {
            reading.run();
        } catch (Refused e) {
            Saying.of(e.getMessage()).add("C022", culprit(row, e.getMessage()), found);
        }
    }

    /** The last value of the row that the sentence quotes: the first is its id. */
    private static Node culprit(Node row, String sentence) {
        return row.children().values().stream()
                .filter(value -> sentence.contains("“" + value.text() + "”"))
                .reduce((first, last) -> last)
                .orElse(row);
    }

    private static Bone bone(Node row) {
        return Bone.of(
                row.get("id").text(),
                row.get("name_en").text(),
                row.get("name_la").text(),
                row.get("side").text(),
                row.get("region").text(),
                row.get("uberon").text(),
                row.get("source").text());
    }

    private static Joint joint(Node row) {
        return Joint.of(
                row.get("id").text(),
                row.get("name_en").text(),
                row.get("type").text(),
                row.get("bone_a").text(),
                row.get("bone_b").text(),
                row.get("source").text(),
                row.get("end_a").text(),
                row.get("end_b").text());
    }
}
