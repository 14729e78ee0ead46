package ribmark.contentfiles;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ribmark.basics.Suggest;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem.Place;

/** Says in plain words how one value differs from what its schema asks for. */
final class SchemaFault {

    private final Error error;
    private final List<JsonNode> meanings;
    private final List<Node> path;
    private final Findings found;
    private final Node value;

    SchemaFault(Error error, List<JsonNode> meanings, List<Node> path, Findings found) {
        this.error = error;
        this.meanings = meanings;
        this.path = path;
        this.found = found;
        this.value = path.get(path.size() - 1);
    }

    void say() {
        switch (error.getKeyword()) {
            case "additionalProperties" -> unknownName();
            case "required" -> missing(error.getProperty());
            case "dependentRequired" -> missingCompanion();
            case "type" -> wrongKind();
            case "enum" -> notAllowed();
            case "minItems", "minProperties" -> tooFew();
            case "uniqueItems" -> repeated();
            case "oneOf" -> notOneOf();
            default -> wrongShape();
        }
    }

    private void unknownName() {
        List<String> known = new ArrayList<>();
        owner().path("properties").fieldNames().forEachRemaining(known::add);
        String name = error.getProperty();
        String help = Suggest.nearest(name, known)
                .map(near -> "Did you mean “" + near + "”?")
                .orElse("Take it out. Names known here: " + String.join(", ", known) + ".");
        found.add("C010", value.key(name), quoted(name) + " is not a name that " + ownerTitle() + " has.", help);
    }

    private void missing(String name) {
        if (isMisspelt(name)) {
            return;
        }
        String headline = capital(ownerTitle()) + " has no " + quoted(name) + ".";
        found.add(
                "C011",
                value,
                headline,
                "Add it. " + about(owner().path("properties").path(name)));
    }

    /** A name nobody knows that reads much like this one is told by itself. */
    private boolean isMisspelt(String name) {
        JsonNode known = owner().path("properties");
        return value.children().keySet().stream()
                .filter(written -> !known.has(written))
                .anyMatch(written -> Suggest.nearest(written, List.of(name)).isPresent());
    }

    private void missingCompanion() {
        for (String name : List.of("plane", "saw")) {
            if (!value.get(name).isThere()) {
                missing(name);
            }
        }
    }

    private void wrongKind() {
        String headline = capital(name()) + " needs " + kindsWanted() + ", and this is " + kindOf(value.json()) + ".";
        found.add("C012", value, headline, about(meaning()));
    }

    private void notAllowed() {
        List<String> allowed = new ArrayList<>();
        lastMet().path("enum").forEach(word -> allowed.add(word.asText()));
        String help = Suggest.nearest(value.text(), allowed)
                .map(near -> "Did you mean “" + near + "”? ")
                .orElse("");
        found.add(
                "C013",
                value,
                quoted(value.text()) + " is not one of the words allowed for " + name() + ".",
                help + "Allowed: " + String.join(", ", allowed) + ".");
    }

    private void tooFew() {
        int least = lastMet().path("minItems").asInt(1);
        String what = least > 1 ? " needs at least " + Words.count(least) + " entries." : " must not be empty.";
        found.add("C014", value.key("-"), capital(name()) + what, about(meaning()));
    }

    private void repeated() {
        Set<JsonNode> seen = new HashSet<>();
        Node second = value.items().stream()
                .filter(item -> !seen.add(item.json()))
                .findFirst()
                .orElse(value);
        found.add("C014", second, capital(name()) + " names one thing twice.", "Keep one of the two.");
    }

    private void notOneOf() {
        found.add(
                "C014",
                value,
                "An operation needs exactly one deed.",
                "Keep one of sever, saw and lift, and begin another operation for the next deed.");
    }

    private void wrongShape() {
        String shown =
                value.text().length() > 40 ? value.text().substring(0, 38).strip() + "…" : value.text();
        String headline = shown.isBlank()
                ? capital(name()) + " holds no words."
                : quoted(shown) + " does not fit " + name() + ".";
        found.add("C014", pointed(), headline, limits() + about(meaning()));
    }

    private Place pointed() {
        return value.place();
    }

    private String limits() {
        return switch (error.getKeyword()) {
            case "maximum" -> "At most " + lastMet().get("maximum") + ". ";
            case "minimum" -> "At least " + lastMet().get("minimum") + ". ";
            case "exclusiveMinimum" -> "More than " + lastMet().get("exclusiveMinimum") + ". ";
            case "maxLength" -> "At most " + lastMet().get("maxLength") + " letters. ";
            default -> "";
        };
    }

    private JsonNode lastMet() {
        return meanings.get(meanings.size() - 1);
    }

    /** The object the broken rule belongs to. */
    private JsonNode owner() {
        return lastMet();
    }

    private String ownerTitle() {
        String title = owner().path("title").asText("entry");
        return "this " + title.toLowerCase(Locale.ROOT);
    }

    /** What the author meant to write here: the nearest description, the one beside a reference first. */
    private JsonNode meaning() {
        JsonNode best = lastMet();
        boolean byReference = false;
        for (JsonNode met : meanings) {
            if (met.has("description") && !byReference) {
                best = met;
            }
            byReference = met.has("$ref") && met.has("description");
        }
        return best;
    }

    private static String about(JsonNode meaning) {
        String text = meaning.path("description").asText("");
        JsonNode example = meaning.path("examples").path(0);
        boolean showable =
                example.isValueNode() || example.isArray() && example.path(0).isValueNode();
        return showable ? text + " Example: " + example.toString().replace(",", ", ") : text;
    }

    private String name() {
        for (int i = error.getInstanceLocation().getNameCount() - 1; i >= 0; i--) {
            if (error.getInstanceLocation().getElement(i) instanceof String name) {
                return quoted(name);
            }
        }
        return "this file";
    }

    private String kindsWanted() {
        JsonNode type = lastMet().path("type");
        List<String> kinds = new ArrayList<>();
        if (type.isArray()) {
            type.forEach(each -> kinds.add(word(each.asText())));
        } else {
            kinds.add(word(type.asText()));
        }
        return String.join(" or ", kinds);
    }

    private static String word(String type) {
        return switch (type) {
            case "string" -> "a text";
            case "number" -> "a number";
            case "integer" -> "a whole number";
            case "boolean" -> "true or false";
            case "array" -> "a list";
            case "null" -> "null";
            default -> "named values";
        };
    }

    private static String kindOf(JsonNode json) {
        return switch (json.getNodeType()) {
            case STRING -> "a text";
            case NUMBER -> "a number";
            case BOOLEAN -> "true or false";
            case ARRAY -> "a list";
            case NULL, MISSING -> "empty";
            default -> "a set of named values";
        };
    }

    private static String quoted(String words) {
        return "“" + words + "”";
    }

    private static String capital(String words) {
        return Words.capital(words);
    }
}
