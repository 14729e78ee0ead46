package ribmark.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Suggest;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.curriculum.MapRow;
import ribmark.curriculum.MapRow.Role;

/** Checks that the bone map draws every bone of the usual animal, and nothing that is no bone of it. */
final class MapCheck {

    private final Map<Node, MapRow> rows;
    private final Skeleton animal;
    private final Set<String> bones;
    private final Set<String> undrawn;
    private final Findings found;

    private MapCheck(Map<Node, MapRow> rows, Skeleton animal, Findings found) {
        this.rows = rows;
        this.animal = animal;
        this.bones = animal.bones().stream().map(Bone::id).collect(Collectors.toSet());
        this.undrawn = new TreeSet<>(bones);
        rows.values().stream().filter(row -> row.role() == Role.BONE).forEach(row -> undrawn.remove(row.id()));
        this.found = found;
    }

    static void check(Shelf shelf, Skeleton animal, Findings found) {
        if (!shelf.map().isThere() || found.any(List.of("C00", "C022"), List.of(shelf.map()))) {
            return;
        }
        Map<Node, MapRow> rows = MapRows.read(shelf.map(), found);
        MapCheck check = new MapCheck(rows, animal, found);
        check.noStrangers();
        check.landmarks(shelf.landmarks());
        check.movedLines(shelf.lines());
        if (rows.size() == shelf.map().items().size()) {
            check.everyBone(shelf.bones());
        }
    }

    private void noStrangers() {
        rows.forEach((node, row) -> {
            if (row.isOfBone()) {
                isBone(node.get("id"));
            } else if (Set.of(Role.DETAIL, Role.LANDMARK, Role.SHIFT, Role.BOW).contains(row.role())) {
                isBone(node.get("of"));
            } else if (Set.of(Role.WITH, Role.LINE_WITH, Role.END).contains(row.role())) {
                goesSomewhere(node, row);
            }
        });
    }

    private void isBone(Node at) {
        if (!bones.contains(at.text())) {
            Optional<String> near = Suggest.nearest(at.text(), List.copyOf(undrawn))
                    .or(() -> Suggest.nearest(at.text(), List.copyOf(bones)));
            near.ifPresent(undrawn::remove);
            found.add(
                    "C061",
                    at,
                    "This animal has no bone “" + at.text() + "” to draw.",
                    near.map(id -> "Did you mean “" + id + "”?").orElse("Take an id from the skeleton file."));
        }
    }

    /** What moves with something else must in the end move with a bone. */
    private void goesSomewhere(Node node, MapRow row) {
        String goesWith = row.of();
        for (int hops = 0; hops < rows.size() && !bones.contains(goesWith); hops++) {
            goesWith = next(row.view(), goesWith);
        }
        if (!bones.contains(goesWith)) {
            found.add(
                    "C062",
                    node.get("of"),
                    "“" + row.of() + "” leads to no bone.",
                    "Name a vertebra, or something that moves with one.");
        }
    }

    private String next(String view, String goesWith) {
        return rows.values().stream()
                .filter(row -> row.role() == Role.WITH
                        && row.view().equals(view)
                        && row.id().equals(goesWith))
                .map(MapRow::of)
                .findFirst()
                .orElse(goesWith);
    }

    private void landmarks(Node file) {
        List<String> ids = file.all("landmarks[].id").stream().map(Node::text).toList();
        rows.forEach((node, row) -> {
            if (row.role() == Role.LINE && !row.of().isEmpty() && !ids.contains(row.of())) {
                found.add(
                        "C025",
                        node.get("of"),
                        "There is no landmark “" + row.of() + "”.",
                        Suggest.nearest(row.of(), ids)
                                .map(near -> "Did you mean “" + near + "”?")
                                .orElse("Take an id from landmarks.yaml."));
            }
        });
    }

    /** A line drawn where it can run belongs to one that is drawn, and is called after the line, the end and the places. */
    private void movedLines(Node file) {
        Map<String, Node> known = new LinkedHashMap<>();
        for (Node line : file.all("lines[]")) {
            line.all("runs[]")
                    .forEach(run -> known.put(
                            String.join(
                                    "-",
                                    line.get("id").text(),
                                    run.get("towards").text(),
                                    run.get("by").text()),
                            line.get("id")));
        }
        Map<Node, List<Node>> astray = new LinkedHashMap<>();
        rows.forEach((node, row) -> {
            String run = row.id().replaceAll("-[LR]$", "");
            if (row.role() == Role.MOVED && !known.containsKey(run)) {
                Node near = Suggest.nearest(run, known.keySet()).map(known::get).orElse(file);
                astray.computeIfAbsent(near, line -> new ArrayList<>()).add(node.get("id"));
            } else if (row.role() == Role.MOVED && !drawn(row.view()).contains(row.of())) {
                stray(node.get("of"), "This view draws no line “" + row.of() + "”.", drawn(row.view()));
            }
        });
        astray.forEach(this::astray);
    }

    /** One message for all drawings that one line has lost. */
    private void astray(Node line, List<Node> drawings) {
        List<Also> also = new ArrayList<>();
        also.add(new Also("The nearest stands in", line.place()));
        drawings.stream().skip(1).forEach(other -> also.add(new Also("Nor as another says in", other.place())));
        found.add(
                "C062",
                drawings.get(0),
                "Nothing in lines.yaml runs as “" + drawings.get(0).text() + "” says.",
                "Compare the name of the line, the end and the number, or take the row out.",
                also.toArray(Also[]::new));
    }

    private List<String> drawn(String view) {
        return rows.values().stream()
                .filter(row -> row.role() == Role.LINE && row.view().equals(view))
                .map(MapRow::id)
                .toList();
    }

    private void stray(Node at, String headline, List<String> known) {
        found.add(
                "C062",
                at,
                headline,
                Suggest.nearest(at.text(), known)
                        .map(near -> "Did you mean “" + near + "”?")
                        .orElse("Name one that is there, or take the row out."));
    }

    private void everyBone(Node file) {
        for (Node row : file.items()) {
            String id = row.get("id").text();
            if (undrawn.contains(id) && animal.bone(id).isPresent()) {
                found.add(
                        "C060",
                        row.get("id"),
                        "“" + id + "” has no shape on the bone map.",
                        "Add a row of the role bone for it to bone-map.csv.");
            }
        }
    }
}
