package ribmark.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow;
import ribmark.curriculum.MapRow.Role;

/** Reads the rows of the bone map and points at every one that cannot be drawn. */
final class MapRows {

    private static final Pattern POINT =
            Pattern.compile("(-?[0-9]{1,5}(?:\\.[0-9]{1,3})?),(-?[0-9]{1,5}(?:\\.[0-9]{1,3})?)(!?)");
    private static final Pattern ORDER = Pattern.compile("[0-9]{1,6}");
    private static final Pattern STROKE = Pattern.compile("[0-9]{1,2}(?:\\.[0-9]{1,2})?");
    private static final int CORNERS = 2;
    private static final int FEWEST_OF_OUTLINE = 3;

    private final Findings found;

    private MapRows(Findings found) {
        this.found = found;
    }

    /** The rows that can be drawn; those that cannot are among the findings. */
    static Map<Node, MapRow> read(Node map, Findings found) {
        MapRows rows = new MapRows(found);
        Map<Node, MapRow> read = new java.util.LinkedHashMap<>();
        map.items().forEach(row -> rows.row(row).ifPresent(sound -> read.put(row, sound)));
        rows.once(read);
        return read;
    }

    /** The rows of a map found sound before. */
    static List<MapRow> read(Node map) {
        return List.copyOf(read(map, new Findings()).values());
    }

    private Optional<MapRow> row(Node row) {
        Optional<Role> role = Role.of(row.get("role").text());
        Optional<List<MapPoint>> points = points(row.get("points"));
        Optional<MapPoint> label = points(row.get("label")).map(all -> all.get(0));
        if (role.isEmpty()) {
            not(row.get("role"), "A row of the bone map has no role “%s”.", "Write bone, detail, line or landmark.");
        }
        boolean number = fits(row.get("order"), ORDER, "The order “%s” is not a whole number.", "Write digits alone.")
                & fits(row.get("stroke"), STROKE, "The stroke “%s” is not a number.", "Write it as 2.0.");
        boolean sound = number && role.isPresent() && points.isPresent() && label.isPresent();
        return sound && enough(row, role.get(), points.get())
                ? Optional.of(row(row, role.get(), points.get(), label.get()))
                : Optional.empty();
    }

    private static MapRow row(Node row, Role role, List<MapPoint> points, MapPoint label) {
        return new MapRow(
                row.get("view").text(),
                role,
                row.get("id").text(),
                row.get("of").text(),
                Integer.parseInt(row.get("order").text()),
                row.get("shape").text().equals("closed"),
                Double.parseDouble(row.get("stroke").text()),
                points,
                label);
    }

    private boolean enough(Node row, Role role, List<MapPoint> points) {
        int fewest = switch (role) {
            case BONE, CONTEXT -> FEWEST_OF_OUTLINE;
            case DETAIL, LINE, MOVED, FIELD, CROP -> CORNERS;
            default -> 1;
        };
        if (points.size() < fewest) {
            not(
                    row.get("points"),
                    "A " + role.word() + " needs at least " + Words.count(fewest) + " points.",
                    "Write its points as x,y with spaces between them.");
        }
        return points.size() >= fewest;
    }

    private boolean fits(Node at, Pattern pattern, String headline, String help) {
        boolean fits = pattern.matcher(at.text()).matches();
        if (!fits) {
            not(at, headline, help);
        }
        return fits;
    }

    private void not(Node at, String headline, String help) {
        found.add("C062", at, headline.formatted(at.text()), help);
    }

    private Optional<List<MapPoint>> points(Node at) {
        List<MapPoint> points = new ArrayList<>();
        for (String written : at.text().split(" ")) {
            Matcher point = POINT.matcher(written);
            if (!point.matches()) {
                String shown = written.length() > 20 ? written.substring(0, 20) + "…" : written;
                found.add(
                        "C062",
                        at,
                        "“" + shown + "” is not a point.",
                        "Write x and y with a comma between them, for example 65.3,71.9.");
                return Optional.empty();
            }
            points.add(new MapPoint(
                    Double.parseDouble(point.group(1)),
                    Double.parseDouble(point.group(2)),
                    !point.group(3).isEmpty()));
        }
        return Optional.of(List.copyOf(points));
    }

    /** A bone has one outline in one view. */
    private void once(Map<Node, MapRow> rows) {
        Map<String, Node> seen = new HashMap<>();
        rows.forEach((node, row) -> {
            Node before = row.isOfBone() ? seen.putIfAbsent(row.view() + " " + row.id(), node) : null;
            if (before != null) {
                found.add(
                        "C062",
                        node.get("id"),
                        "“" + row.id() + "” is drawn twice in the " + row.view() + " view.",
                        "Take one of the two rows out.",
                        new ContentProblem.Also(
                                "The first stands in", before.get("id").place()));
            }
        });
    }
}
