package ribmark.proof;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** The slips an author makes with single words and numbers: what is changed still looks like what stood there. */
final class Slips {

    static final String STAGES = "content/lamb/(?!breakdown).*\\.yaml";
    static final String CUTS = "content/ovine/cuts\\.yaml";
    static final String MARKS = "content/ovine/landmarks\\.yaml";
    static final String ANY = ".*\\.yaml";
    static final String DONE = "^ +- (?:sever|saw|lift): (\\[.*\\])$";
    static final String HELD = "^    (?:bones|or): (\\[.*\\])$";
    private static final String TEXTS =
            "title|what-for|text|heading|hands|ask|answer|watch|mend|name|means|where|fact|dressing|others|gloss|word|whose|trade";
    private static final String NUMBERS =
            "expected|sd|division|division-g|repeatability-g|widen|divide-by|multiply-by|standard-uncertainty|lowest-kg"
                    + "|highest-kg|weight|sheets|carcases|assessors|within-days|pair-spread|balanced-to-percent"
                    + "|query-to-percent|order|highest|expected-percent|sd-percent|counts-differ-by";

    private final Pen pen;
    private final Random random;
    private final Map<String, Supplier<Optional<Mutant>>> kinds = new LinkedHashMap<>();

    Slips(Pen pen) {
        this.pen = pen;
        this.random = pen.random();
        bones();
        ids();
        figures();
        words();
        shapes();
    }

    Map<String, Supplier<Optional<Mutant>>> kinds() {
        return kinds;
    }

    private void kind(String name, List<Pen.Spot> spots, UnaryOperator<String> slip) {
        kinds.put(name, () -> pen.change(name, spots, slip));
    }

    private void bones() {
        List<Pen.Spot> done = pen.spots(STAGES, DONE);
        List<Pen.Spot> held = pen.spots(CUTS, HELD);
        List<Pen.Spot> shown = pen.spots(STAGES, "^      bones: (\\[.*\\])$");
        List<Pen.Spot> marked = pen.spots(MARKS, "^    (?:bones|joints): (\\[.*\\])$");
        String number = "(?<=[A-Z])([0-9]+)";
        kind("bone number, operation", pen.within(done, number), this::another);
        kind("bone number, cut", pen.within(held, number), this::another);
        kind(
                "bone number, equivalent",
                pen.within(pen.spots(CUTS, "^        (?:bones|differs): (\\[.*\\])$"), number),
                this::another);
        kind("bone number, step's landmark", pen.within(shown, number), this::another);
        kind("bone number, landmark", pen.within(marked, number), this::another);
        String side = "(?<=[A-Z0-9])([LR])(?=[\",\\].]|[ab]?[,\\]])";
        kind("wrong side, operation", pen.within(done, "(\\(s\\)|\\(side\\))"), this::oneSide);
        kind("wrong side, cut", pen.within(held, "(\\(s\\)|\\(side\\))"), this::oneSide);
        kind("wrong side, letter", pen.within(held, side), Slips::otherSide);
        kind("wrong side, landmark", pen.within(marked, side), Slips::otherSide);
        kind("wrong side, how often", pen.spots(STAGES, "^    sides: (once|each)$"), Slips::otherOften);
        kind("wrong side, cut comes", pen.spots(CUTS, "^    comes: (once|each)$"), Slips::otherOften);
        kind(
                "wrong plane",
                pen.spots(STAGES, "plane: (across|midline)$"),
                word -> word.equals("across") ? "midline" : "across");
        kind(
                "counted by number",
                pen.within(concat(done, held), "(?<![A-Za-z])((?:R|T|L|S|Cd|CC|C)\\(last(?:-1)?\\))"),
                Slips::counted);
    }

    private static List<Pen.Spot> concat(List<Pen.Spot> one, List<Pen.Spot> other) {
        return java.util.stream.Stream.concat(one.stream(), other.stream()).toList();
    }

    private String another(String number) {
        int other = Integer.parseInt(number) + pen.any(List.of(-2, -1, 1, 2));
        return other < 1 ? number : String.valueOf(other);
    }

    private String oneSide(String both) {
        boolean left = random.nextBoolean();
        return both.equals("(s)") ? (left ? "L" : "R") : (left ? "left" : "right");
    }

    private static String otherSide(String letter) {
        return letter.equals("L") ? "R" : "L";
    }

    private static String otherOften(String word) {
        return word.equals("once") ? "each" : "once";
    }

    /** The numbers of the usual animal: seven neck, thirteen rib, six loin, four sacral and three tail vertebrae. */
    private static String counted(String last) {
        String letters = last.substring(0, last.indexOf('('));
        int number = Map.of("C", 7, "T", 13, "R", 13, "CC", 13, "L", 6, "S", 4, "Cd", 3)
                .get(letters);
        return letters + (last.endsWith("-1)") ? number - 1 : number);
    }

    private void ids() {
        String id = "([a-z][a-z0-9-]{2,})";
        kind(
                "id typo, list",
                pen.within(
                        pen.spots(
                                STAGES + "|" + CUTS + "|content/lamb/breakdown\\.yaml",
                                "^ +(?:needs|frees|leaves|uses|tools|also-mind|rows|stages|steps): (\\[.*\\])$"),
                        id),
                pen::typo);
        kind("id typo, step pointed at", pen.spots("assessments/.*", "step: ([a-z0-9-]{3,})"), pen::typo);
        kind("id typo, row", pen.spots("assessments/.*references.*", "\\{cut: ([a-z0-9-]{3,})"), pen::typo);
        kind(
                "id typo, where it is given",
                pen.spots(STAGES + "|" + CUTS + "|" + MARKS, "^  - id: ([a-z0-9-]{3,})$"),
                pen::typo);
        kind("id typo, mark", pen.spots("assessments/marks\\.yaml", "id: ([a-z-]{3,})"), pen::typo);
        kind("source key typo", pen.spots(ANY, "source: ([A-Z][A-Z0-9-]{2,})"), this::unknownKey);
        kind(
                "source that was not read",
                pen.spots(ANY, "source: ([A-Z0-9-]+), basis: published"),
                key -> pen.any(List.of("CP", "OWN", "J", "MOD")));
        kind("bone typo, joint row", pen.spots(".*joints\\.csv", "^[^,]*,[^,]*,[^,]*,([A-Z0-9]{3,}),"), pen::typo);
        kind(
                "wrong side, bone row",
                pen.spots(".*skeleton\\.csv", "^[^,]*,[^,]*,[^,]*,([MLR]),"),
                side -> pen.any(List.of("M", "L", "R", "B")));
        kind(
                "bone number, joint row",
                pen.spots(".*joints\\.csv", "^(?:IV|CH|IS|SC|CO|CT)-[^,]*,[^,]*,[^,]*,[^,]*?([0-9]+)[LR]?,"),
                this::another);
        kind("end typo, joint row", pen.spots(".*joints\\.csv", ",(near|far|both)$"), pen::typo);
    }

    private String unknownKey(String key) {
        String typo = pen.typo(key);
        return pen.text("content/sources.yaml").contains("key: " + typo + ",")
                        || pen.text("content/sources.yaml").contains("key: " + typo + "\n")
                ? key
                : typo;
    }

    private void figures() {
        String figure = "(?<![a-z-])(?:" + NUMBERS + "): ";
        kind("sign", pen.spots(ANY, figure + "([1-9][0-9.]*|0\\.[0-9]*[1-9][0-9]*)"), number -> "-" + number);
        kind(
                "unit beside a figure",
                pen.spots(ANY, figure + "([0-9]+(?:\\.[0-9]+)?)"),
                number -> number + pen.any(List.of(" mm", " kg", " %", "g")));
        kind(
                "unknown unit",
                pen.spots(".*trim\\.yaml", "unit: (mm|count|ratio)$"),
                unit -> pen.any(List.of("cm", "kg", "inch", "MM", "mm.")));
        kinds.put(
                "sum",
                () -> pen.changeNowhere(
                        "sum", pen.spots(".*references.*", "[ {]expected: ([0-9.]+)"), this::otherExpected));
        kind(
                "limits crossed, trim",
                pen.spots(".*trim\\.yaml", "lowest: [1-9][0-9.]*\n +highest: ([0-9.]+)"),
                high -> "0." + (1 + random.nextInt(9)));
        kind(
                "limits crossed, bounds",
                pen.spots(ANY, "lowest-kg: [0-9]+\n +highest-kg: ([0-9]+)"),
                high -> String.valueOf(1 + random.nextInt(4)));
        kind(
                "limits crossed, gap",
                pen.spots(ANY, "balanced-to-percent: [0-9.]+\n +query-to-percent: ([0-9.]+)"),
                high -> "0." + (1 + random.nextInt(9)));
        kind(
                "day",
                pen.spots(ANY, "(?:since|checked): \"([0-9-]+)\""),
                day -> day.replaceAll("-[0-9]{2}-", "-" + (13 + random.nextInt(80)) + "-"));
        kind(
                "formula",
                pen.spots("content/lamb/breakdown\\.yaml", "formula: \"([0-9,]+)\""),
                formula -> pen.any(
                        List.of("7,13,6,4", "7.13.6.4.3", "7,13,6,4,3,1", "4,13,6,4,3", "7,3,6,4,3", "7,13,6,2,3")));
    }

    private String otherExpected(String number) {
        double other = Double.parseDouble(number) + (1 + random.nextInt(50)) / 10.0 * (random.nextBoolean() ? 1 : -1);
        return other <= 0 ? number : String.format(java.util.Locale.ROOT, "%.1f", other);
    }

    private void words() {
        String value = "(?<![a-z-])(?:" + TEXTS + "): (\"[^\"]+\")";
        kind("missing text", pen.spots(ANY, value), text -> pen.any(List.of("\"\"", "\" \"", "null")));
        kind(
                "heading too long",
                pen.spots(ANY, "heading: (\"?[A-Z][^\"\n}]*\"?)$"),
                text -> text.replaceAll("\"$", "") + " and mind what else there is"
                        + (text.endsWith("\"") ? "\"" : ""));
        kind(
                "word not allowed",
                pen.spots(
                        ANY,
                        "(?<![a-z-])(?:basis|how|critical|becomes|sides|plane|seen|unit): ([a-z][a-z -]{2,}[a-z])(?=[,}\n])"),
                pen::typo);
        kind(
                "yes or no",
                pen.spots(STAGES, "optional: (true|false)$"),
                word -> pen.any(List.of("yes", "no", "maybe", "\"true\"", "1")));
        kind("name typo", pen.spots(ANY, "^ *(?:- )?([a-z][a-z-]{2,}): "), pen::typo);
        kind("list for a word", pen.spots(STAGES, "^    title: (.+)$"), title -> "[" + title + "]");
        kind("word for a list", pen.spots(STAGES, "^    (?:needs|tools|good): (\\[.*\\])$"), list -> "none");
    }

    private void shapes() {
        kinds.put("bracket", () -> pen.changeNowhere("bracket", pen.spots(ANY, "(?<=\\w)(\\])$"), bracket -> ""));
        kinds.put("quote", () -> pen.changeNowhere("quote", pen.spots(ANY, ": (\")[A-Z]"), quote -> ""));
        kind("tab", pen.spots(ANY, "^(    )[a-z]"), spaces -> "\t");
        kinds.put(
                "comma, row",
                () -> pen.changeNowhere("comma, row", pen.spots(".*joints\\.csv", "^[^,\"]*(,)"), comma -> ""));
    }
}
