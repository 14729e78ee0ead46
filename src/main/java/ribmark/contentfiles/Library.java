package ribmark.contentfiles;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import ribmark.basics.Suggest;

/** Every content file read and checked against the schema of its kind; a file that could not be read is an empty value. */
public final class Library {

    private static final String BREAKDOWN = "/breakdown.yaml";

    /** Which schema belongs to which file; the first that fits is taken. */
    private static final Map<Pattern, String> KINDS = new LinkedHashMap<>();

    static {
        kind("content/sources\\.yaml", "sources");
        kind("content/[^/]+/landmarks\\.yaml", "landmarks");
        kind("content/[^/]+/cuts\\.yaml", "cuts");
        kind("content/[^/]+/terms\\.yaml", "terms");
        kind("content/[^/]+/breakdown\\.yaml", "breakdown");
        kind("content/[^/]+/lines\\.yaml", "lines");
        kind("content/[^/]+/[^/]+\\.yaml", "stage");
        kind("assessments/marks\\.yaml", "marks");
        kind("assessments/scales\\.yaml", "scales");
        kind("assessments/[^/]+/criteria\\.yaml", "criteria");
        kind("assessments/[^/]+/questions\\.yaml", "questions");
        kind("assessments/[^/]+/evidence\\.yaml", "evidence");
        kind("assessments/[^/]+/trim\\.yaml", "trim");
        kind("assessments/[^/]+/weighing-model\\.yaml", "weighing-model");
        kind("assessments/[^/]+/prices\\.yaml", "prices");
        kind("assessments/[^/]+/references/[^/]+\\.yaml", "reference");
    }

    private final Map<String, Node> files = new LinkedHashMap<>();
    private final Findings found;

    private Library(Findings found) {
        this.found = found;
    }

    private static void kind(String path, String schema) {
        KINDS.put(Pattern.compile(path), schema);
    }

    /** Reads them all; what is wrong with any of them is among the findings. */
    public static Library of(ContentFiles files, Findings found) {
        Library library = new Library(found);
        Schemas schemas = new Schemas();
        files.strange().forEach(library::strange);
        for (String path : files.paths()) {
            byte[] bytes = files.bytes(path).orElseThrow();
            TextFile.of(path, bytes, found)
                    .ifPresentOrElse(
                            text -> library.add(text, schemas), () -> library.files.put(path, Node.nothingIn(path)));
        }
        return library;
    }

    private void add(TextFile text, Schemas schemas) {
        String kind = kindOf(text.name());
        if (kind.isEmpty() && !Columns.has(text.name())) {
            found.add(
                    "C007",
                    text.line(1),
                    "No part of a curriculum has a file of this name here.",
                    "Rename it, or take it away.");
            files.put(text.name(), Node.nothingIn(text.name()));
        } else if (kind.isEmpty()) {
            files.put(text.name(), CsvRows.read(text, found));
        } else {
            Node node = StrictYaml.read(text, found).orElseGet(() -> Node.nothingIn(text.name()));
            files.put(text.name(), node);
            if (node.isThere()) {
                schemas.check(kind, node, found);
            }
        }
    }

    private void strange(String path) {
        boolean rightName = ContentFiles.counts(path);
        found.add(
                rightName ? "C001" : "C007",
                Node.nothingIn(path),
                rightName
                        ? "This is no file, or one that nobody may read."
                        : "The name of a file ends with .yaml or .csv, so this one is not read.",
                rightName ? "Put the file itself here, and let it be read." : "Rename it, or take it away.");
    }

    private static String kindOf(String path) {
        return KINDS.entrySet().stream()
                .filter(kind -> kind.getKey().matcher(path).matches())
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("");
    }

    /** The schema a file is written against, for tests and guides. */
    public static String schemaOf(String path) {
        return kindOf(path);
    }

    List<String> paths() {
        return List.copyOf(files.keySet());
    }

    List<Node> all() {
        return List.copyOf(files.values());
    }

    /** The breakdowns there are, by the names of their folders. */
    public List<String> breakdowns() {
        return files.keySet().stream()
                .filter(path -> path.startsWith("content/") && path.endsWith(BREAKDOWN))
                .map(path -> path.substring("content/".length(), path.length() - BREAKDOWN.length()))
                .toList();
    }

    /** A file that must be there; the one that asks for it is pointed at when it is not. */
    Node need(String path, Node askedBy) {
        Node file = files.get(path);
        if (file == null) {
            found.add(
                    "C008", askedBy, "The file " + path + " is missing.", "Add it, or take out what asks for it here.");
            files.put(path, Node.nothingIn(path));
        }
        return files.get(path);
    }

    /** The folder of a kind of animal; one that is not there is reported once, where it is asked for. */
    boolean hasSpecies(Node asked) {
        String marker = "/skeleton.csv";
        List<String> species = files.keySet().stream()
                .filter(path -> path.startsWith("content/") && path.endsWith(marker))
                .map(path -> path.substring("content/".length(), path.length() - marker.length()))
                .toList();
        boolean there = species.contains(asked.text());
        if (!there && asked.isThere()) {
            found.add(
                    "C008",
                    asked,
                    "There is no folder content/" + asked.text() + " with a skeleton in it.",
                    Suggest.nearest(asked.text(), species)
                            .map(near -> "Did you mean “" + near + "”?")
                            .orElse("Add the folder, or name one that is there."));
        }
        return there;
    }

    /** A file that is asked for only when its folder is there. */
    Node need(boolean folder, String path, Node askedBy) {
        return folder ? need(path, askedBy) : Node.nothingIn(path);
    }

    /** A file that may be there. */
    Node maybe(String path) {
        return files.getOrDefault(path, Node.nothingIn(path));
    }

    /** The files directly in a folder, sorted by name. */
    public List<Node> in(String folder) {
        return files.keySet().stream()
                .filter(path -> path.startsWith(folder) && path.indexOf('/', folder.length()) < 0)
                .map(files::get)
                .toList();
    }
}
