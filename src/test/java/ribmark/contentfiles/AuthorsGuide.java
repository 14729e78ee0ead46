package ribmark.contentfiles;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Writes the guide for authors from the schemas and the codes of the check, so that it cannot drift from them. */
final class AuthorsGuide {

    static final String BEGINS = "<!-- the author's guide begins: written from the schemas, mvn test -Dguide=write -->";
    static final String ENDS = "<!-- the author's guide ends -->";

    private static final Path SCHEMAS = Path.of("content/schemas");
    private static final List<String> ORDER = List.of(
            "breakdown",
            "stage",
            "lines",
            "cuts",
            "landmarks",
            "terms",
            "criteria",
            "questions",
            "evidence",
            "trim",
            "reference",
            "prices",
            "weighing-model",
            "marks",
            "scales",
            "sources");

    private final ObjectMapper json = new ObjectMapper();
    private final Map<String, JsonNode> schemas = new LinkedHashMap<>();
    private final StringBuilder text = new StringBuilder();

    /** The whole section, both marks included. */
    static String written() throws IOException {
        return new AuthorsGuide().write();
    }

    private String write() throws IOException {
        for (String name : ORDER) {
            schemas.put(name, json.readTree(SCHEMAS.resolve(name + ".json").toFile()));
        }
        schemas.put("common", json.readTree(SCHEMAS.resolve("common.json").toFile()));
        line(BEGINS);
        line("");
        line(
                "What can be written in each file. A name with a star may be left out. `check` proves the files, `check DIR` a"
                        + " folder of your own, `check --explain CODE` explains a message.");
        for (String name : ORDER) {
            file(name, schemas.get(name));
        }
        shared();
        codes();
        line(ENDS);
        return text.toString();
    }

    static List<String> kinds() throws IOException {
        try (var files = Files.list(SCHEMAS)) {
            return files.map(file -> file.getFileName().toString().replace(".json", ""))
                    .filter(name -> !name.equals("common"))
                    .sorted()
                    .toList();
        }
    }

    static List<String> told() {
        return ORDER.stream().sorted().toList();
    }

    private void line(String words) {
        text.append(words).append('\n');
    }

    private void file(String name, JsonNode schema) {
        line("");
        line("### " + schema.path("title").asText());
        line("");
        line(schema.path("description").asText() + " " + where(name));
        line("");
        line("| name | what it is | example |");
        line("|---|---|---|");
        properties("", schema, name);
        line("");
        line("```yaml");
        line("# yaml-language-server: $schema=content/schemas/" + name + ".json");
        text.append(new Example().of(example(schema, name)));
        line("```");
    }

    private static String where(String name) {
        TreeSet<String> paths = new TreeSet<>(ContentFiles.ours().paths().stream()
                .filter(path -> path.endsWith(".yaml") && Library.schemaOf(path).equals(name))
                .toList());
        String own = "assessments/lamb/" + name + ".yaml";
        return paths.isEmpty()
                ? "A college may add it as `" + own + "`; none comes with the program."
                : "Such as `" + paths.first() + "`.";
    }

    private void properties(String path, JsonNode owner, String document) {
        List<String> required = words(owner.path("required"));
        owner.path("properties").properties().forEach(property -> {
            String name = path + property.getKey();
            JsonNode target = resolved(property.getValue(), document);
            row(name + (required.contains(property.getKey()) ? "" : "*"), property.getValue(), target);
            if (!property.getKey().equals("rests-on")) {
                inside(name, target, document);
            }
        });
    }

    private void inside(String name, JsonNode target, String document) {
        JsonNode items = resolved(target.path("items"), document);
        if (items.has("properties")) {
            properties(name + "[].", items, document);
        } else if (target.has("properties")) {
            properties(name + ".", target, document);
        }
    }

    private JsonNode resolved(JsonNode node, String document) {
        if (!node.has("$ref")) {
            return node;
        }
        String ref = node.path("$ref").asText();
        String file = ref.startsWith("#") ? document : ref.substring(0, ref.indexOf(".json"));
        return schemas.get(file).at(ref.substring(ref.indexOf('#') + 1));
    }

    private void row(String name, JsonNode property, JsonNode target) {
        String what =
                property.path("description").asText(target.path("description").asText());
        JsonNode allowed = target.path("enum");
        String one = allowed.isArray() ? " One of: " + String.join(", ", words(allowed)) + "." : "";
        JsonNode example = property.path("examples").path(0);
        boolean showable = example.isValueNode()
                || example.isArray()
                        && StreamSupport.stream(example.spliterator(), false).allMatch(JsonNode::isValueNode);
        line("| `" + name + "` | " + (what + one).replace("|", "\\|") + " | "
                + (showable ? "`" + Example.flow(example).replace("|", "\\|") + "`" : "") + " |");
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.isNull() ? "null" : word.asText()));
        return words;
    }

    /** One of everything that must be there. */
    private JsonNode example(JsonNode schema, String document) {
        var root = json.createObjectNode();
        List<String> required = words(schema.path("required"));
        schema.path("properties").properties().forEach(property -> {
            if (required.contains(property.getKey())) {
                JsonNode given = property.getValue().path("examples").path(0);
                root.set(
                        property.getKey(),
                        given.isMissingNode() ? example(resolved(property.getValue(), document), document) : given);
            }
        });
        return root;
    }

    private void shared() {
        line("");
        line("### Shapes used in several files");
        line("");
        line("| shape | what it is | example |");
        line("|---|---|---|");
        schemas.get("common").path("$defs").properties().forEach(shape -> {
            row(shape.getKey(), shape.getValue(), shape.getValue());
            inside(shape.getKey(), shape.getValue(), "common");
        });
    }

    private void codes() {
        line("");
        line("### Codes of the check");
        line("");
        line("| code | what it is about | why it matters at the block |");
        line("|---|---|---|");
        Codes.all().forEach(code -> line("| " + code.code() + " | " + code.about() + " | " + code.why() + " |"));
        line("");
    }

    /** YAML as an author would lay it out: entries under each other, what is small in one line. */
    private static final class Example {

        private final StringBuilder yaml = new StringBuilder();

        String of(JsonNode root) {
            root.properties().forEach(property -> named("", property.getKey(), property.getValue()));
            return yaml.toString();
        }

        private void named(String indent, String name, JsonNode value) {
            boolean entries = value.isArray() && value.path(0).isObject();
            if (entries) {
                yaml.append(indent).append(name).append(":\n");
                value.forEach(entry -> entry(indent + "  ", entry));
            } else if (value.isObject()) {
                yaml.append(indent).append(name).append(":\n");
                value.properties().forEach(inner -> named(indent + "  ", inner.getKey(), inner.getValue()));
            } else {
                yaml.append(indent)
                        .append(name)
                        .append(": ")
                        .append(flow(value))
                        .append('\n');
            }
        }

        private void entry(String indent, JsonNode entry) {
            int before = yaml.length();
            entry.properties().forEach(inner -> named(indent + "  ", inner.getKey(), inner.getValue()));
            yaml.replace(before, before + indent.length() + 2, indent + "- ");
        }

        private static String flow(JsonNode value) {
            return value.isArray()
                    ? "["
                            + StreamSupport.stream(value.spliterator(), false)
                                    .map(Example::flow)
                                    .collect(Collectors.joining(", "))
                            + "]"
                    : value.toString();
        }
    }
}
