package ribmark.contentfiles;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The JSON Schemas (draft 2020-12) of the content files, and what they say about one file. */
final class Schemas {

    private static final String FOLDER = "content/schemas/";

    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final ObjectMapper json = new ObjectMapper();
    private final Map<String, Schema> compiled = new HashMap<>();
    private final Map<String, JsonNode> documents = new HashMap<>();

    /** Checks one file against the schema of its kind, such as {@code stage}. */
    void check(String kind, Node file, Findings found) {
        Schema schema = compiled.computeIfAbsent(
                kind, name -> registry.getSchema(SchemaLocation.of("classpath:" + FOLDER + name + ".json")));
        List<Error> errors = schema.validate(file.json());
        for (Error error : errors) {
            if (!insideChoice(error)) {
                new SchemaFault(error, meanings(kind, error.getEvaluationPath()), nodes(file, error), found).say();
            }
        }
    }

    /** What each branch of a choice lacks is noise: the choice itself is reported. */
    private static boolean insideChoice(Error error) {
        return error.getEvaluationPath().contains("oneOf")
                && !error.getKeyword().equals("oneOf");
    }

    /** The values from the whole file down to the one that does not fit. */
    private static List<Node> nodes(Node file, Error error) {
        List<Node> path = new ArrayList<>(List.of(file));
        NodePath at = error.getInstanceLocation();
        for (int i = 0; i < at.getNameCount(); i++) {
            Node last = path.get(path.size() - 1);
            Object step = at.getElement(i);
            path.add(step instanceof Integer index ? last.items().get(index) : last.get(step.toString()));
        }
        return path;
    }

    /** The schemas met on the way to the rule that was broken, outermost first. */
    private List<JsonNode> meanings(String kind, NodePath evaluation) {
        String document = kind + ".json";
        JsonNode at = document(document);
        List<JsonNode> met = new ArrayList<>(List.of(at));
        for (int i = 0; i < evaluation.getNameCount() - 1; i++) {
            String step = evaluation.getElement(i).toString();
            if (step.equals("$ref")) {
                String target = at.get("$ref").asText();
                document = target.startsWith("#") ? document : target.substring(0, target.indexOf('#'));
                at = document(document).at(target.substring(target.indexOf('#') + 1));
            } else {
                at = at.isArray() ? at.get(Integer.parseInt(step)) : at.path(step);
            }
            met.add(at);
        }
        return met;
    }

    private JsonNode document(String name) {
        return documents.computeIfAbsent(name, this::load);
    }

    private JsonNode load(String name) {
        try (InputStream in = Schemas.class.getResourceAsStream("/" + FOLDER + name)) {
            return json.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
