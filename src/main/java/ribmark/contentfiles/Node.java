package ribmark.contentfiles;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.contentfiles.ContentProblem.Place;

/**
 * One value of a content file and the place it stands at. Asking for what is not there gives an empty value at the place
 * of its owner, so that reading can go on and every fault is found in one run.
 */
public final class Node {

    private final Place place;
    private final JsonNode value;
    private final Map<String, Node> children;
    private final Map<String, Node> keys;
    private final List<Node> items;

    private Node(Place place, JsonNode value, Map<String, Node> children, Map<String, Node> keys, List<Node> items) {
        this.place = place;
        this.value = value;
        this.children = children;
        this.keys = keys;
        this.items = items;
    }

    static Node scalar(Place place, JsonNode value) {
        return new Node(place, value, Map.of(), Map.of(), List.of());
    }

    static Node list(Place place, List<Node> items) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        items.forEach(item -> array.add(item.value));
        return new Node(place, array, Map.of(), Map.of(), List.copyOf(items));
    }

    /** The keys come as nodes too, so that a wrong word can be pointed at. */
    static Node map(Place place, List<Node> keys, List<Node> values) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        Map<String, Node> children = new LinkedHashMap<>();
        Map<String, Node> names = new LinkedHashMap<>();
        for (int i = 0; i < keys.size(); i++) {
            String name = keys.get(i).text();
            object.set(name, values.get(i).value);
            children.put(name, values.get(i));
            names.put(name, keys.get(i));
        }
        return new Node(place, object, children, names, List.of());
    }

    /** A file in which nothing could be read. */
    public static Node nothingIn(String file) {
        return scalar(new Place(file, 1, 1, 1, ""), MissingNode.getInstance());
    }

    /** Where it stands. */
    public Place place() {
        return place;
    }

    /** The path of the file it stands in. */
    public String file() {
        return place.file();
    }

    JsonNode json() {
        return value;
    }

    /** Whether anything is written here, and not null. */
    public boolean isThere() {
        return !value.isMissingNode() && !value.isNull();
    }

    /** The value under this name, or an empty one. */
    public Node get(String name) {
        Node child = children.get(name);
        return child == null ? scalar(place, MissingNode.getInstance()) : child;
    }

    /** The name itself as it is written, to point at. */
    public Node key(String name) {
        return keys.getOrDefault(name, this);
    }

    /** The values by their names, in the order written; none for everything but named values. */
    public Map<String, Node> children() {
        return children;
    }

    /** The entries of a list in the order written; none for everything else. */
    public List<Node> items() {
        return items;
    }

    /** The text of a text, a number or a yes or no; empty for everything else. */
    public String text() {
        return value.isValueNode() && isThere() ? value.asText() : "";
    }

    /** The text, or nothing when nothing is written here. */
    public Optional<String> maybeText() {
        return isThere() ? Optional.of(text()) : Optional.empty();
    }

    /** The number in the unit the schema names; zero when it is none. */
    public double number() {
        return value.asDouble();
    }

    /** The number, or nothing when this is none. */
    public Optional<Double> maybeNumber() {
        return value.isNumber() ? Optional.of(value.asDouble()) : Optional.empty();
    }

    /** Whether this says true; what is not there does not. */
    public boolean yes() {
        return value.isBoolean() && value.asBoolean();
    }

    /** The texts of the entries of a list. */
    public List<String> texts() {
        return items.stream().map(Node::text).toList();
    }

    /** Every value reached by a path such as {@code steps[].landmark.uses[]}. */
    public List<Node> all(String path) {
        List<Node> reached = List.of(this);
        for (String name : path.split("\\.")) {
            boolean each = name.endsWith("[]");
            String plain = each ? name.substring(0, name.length() - 2) : name;
            List<Node> next = new ArrayList<>();
            for (Node node : reached) {
                Node child = plain.isEmpty() ? node : node.get(plain);
                next.addAll(each ? child.items : List.of(child));
            }
            reached = next;
        }
        return reached.stream().filter(Node::isThere).toList();
    }

    /** Every value under this name, at any depth. */
    public List<Node> anywhere(String name) {
        List<Node> found = new ArrayList<>();
        children.forEach((key, child) -> {
            if (key.equals(name)) {
                found.add(child);
            } else {
                found.addAll(child.anywhere(name));
            }
        });
        items.forEach(item -> found.addAll(item.anywhere(name)));
        return found;
    }
}
