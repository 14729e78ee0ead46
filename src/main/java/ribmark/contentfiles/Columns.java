package ribmark.contentfiles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import ribmark.basics.Suggest;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.ContentProblem.Place;

/** The columns that each kind of table must have, and what is wrong with the first row of one. */
final class Columns {

    private static final Map<Pattern, List<String>> TABLES = new LinkedHashMap<>();

    static {
        table("skeleton", "id", "name_en", "name_la", "side", "region", "uberon", "source");
        table("joints", "id", "name_en", "type", "bone_a", "bone_b", "source", "end_a", "end_b");
        table("bone-map", "view", "role", "id", "of", "order", "shape", "stroke", "points", "label", "basis");
    }

    private final TextFile text;
    private final Findings found;
    private final Map<String, Place> places = new LinkedHashMap<>();

    private Columns(TextFile text, Findings found) {
        this.text = text;
        this.found = found;
    }

    private static void table(String name, String... columns) {
        TABLES.put(Pattern.compile("content/[^/]+/" + name + "\\.csv"), List.of(columns));
    }

    /** Whether a curriculum has a table of this path. */
    static boolean has(String path) {
        return of(path).isPresent();
    }

    private static Optional<List<String>> of(String path) {
        return TABLES.entrySet().stream()
                .filter(table -> table.getKey().matcher(path).matches())
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Whether the first row names every column once and no other. */
    static boolean check(TextFile text, List<String> named, Findings found) {
        return new Columns(text, found).check(named, of(text.name()).orElse(named));
    }

    private boolean check(List<String> named, List<String> wanted) {
        boolean once = place(named);
        List<String> unknown = new ArrayList<>(places.keySet());
        unknown.removeAll(wanted);
        List<String> missing = new ArrayList<>(wanted);
        missing.removeAll(places.keySet());
        if (!once) {
            return false;
        }
        if (!missing.isEmpty() && (unknown.isEmpty() || missing.size() > 1)) {
            tell(
                    "C011",
                    text.line(1),
                    "This table has no column " + Words.list(missing) + ".",
                    "Name " + Words.list(wanted) + " in the first row, with commas between them.");
        } else {
            unknown.forEach(name -> unknown(name, missing, wanted));
        }
        return unknown.isEmpty() && missing.isEmpty();
    }

    private boolean place(List<String> named) {
        String shown = text.line(1).shown();
        boolean once = true;
        int from = 0;
        for (String name : named) {
            int at = Math.max(shown.indexOf(name, from), 0);
            from = at + name.length();
            Place here = text.place(1, at + 1, name.length());
            Place first = places.putIfAbsent(name, here);
            if (first != null) {
                once = false;
                found.add(
                        "C004",
                        here,
                        "“" + name + "” is written twice here.",
                        "Keep the column that is right and take the other out.",
                        new Also("First written in", first));
            }
        }
        return once;
    }

    /** One that stands where another is missing is that one mistyped. */
    private void unknown(String name, List<String> missing, List<String> wanted) {
        Optional<String> meant = missing.stream().findFirst().or(() -> Suggest.nearest(name, wanted));
        tell(
                "C010",
                places.get(name),
                "“" + name + "” is not a column that this table has.",
                meant.map(near -> "Did you mean “" + near + "”?").orElse("Take the column out."));
    }

    private void tell(String code, Place at, String headline, String help) {
        found.add(code, at, headline, help);
    }
}
