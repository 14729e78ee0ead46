package ribmark.contentfiles;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.ContentProblem.Place;

/**
 * Reads one YAML file strictly: one document, no names given twice, no anchors, aliases or tags. A bare word is text
 * unless it is exactly a number, {@code true}, {@code false} or {@code null} (the JSON schema of YAML 1.2.2, section 10.2), so
 * that {@code NO} stays text.
 */
final class StrictYaml {

    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,14})(\\.[0-9]{1,15})?");

    /** Ours: no file of a curriculum is nested deeper than ten, so twenty is a mistake or mischief. */
    private static final int DEEPEST = 20;

    private final TextFile text;
    private final Findings found;
    private Iterator<Event> events;
    private boolean whole = true;

    private StrictYaml(TextFile text, Findings found) {
        this.text = text;
        this.found = found;
    }

    /** The one value the file holds, or nothing when it cannot be trusted; why is then among the findings. */
    static Optional<Node> read(TextFile text, Findings found) {
        return new StrictYaml(text, found).read();
    }

    private Optional<Node> read() {
        try {
            LoadSettings settings = LoadSettings.builder().setLabel(text.name()).build();
            refuseDirectives();
            events = new Parse(settings).parseString(text.text()).iterator();
            Node root = document();
            return whole ? Optional.of(root) : Optional.empty();
        } catch (MarkedYamlEngineException e) {
            YamlFault.say(e, text, found);
        } catch (YamlEngineException e) {
            found.add(
                    "C002",
                    text.line(1),
                    "This file holds a sign that no text file should hold.",
                    "Save it anew as plain text in UTF-8, without control characters.");
        } catch (Stopped e) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private void refuseDirectives() {
        for (int line = 1; line <= text.lines(); line++) {
            String shown = text.line(line).shown().strip();
            if (shown.startsWith("%")) {
                throw stop(
                        "C005", text.line(line), "A line that begins with % is not meant here.", "Take the line out.");
            }
            if (!shown.isEmpty() && !shown.startsWith("#")) {
                return;
            }
        }
    }

    private Node document() {
        next();
        Event first = next();
        if (first.getEventId() == Event.ID.StreamEnd) {
            throw stop("C001", text.line(1), "This file is empty.", "Write its content, or take the file away.");
        }
        Node root = value(next(), 1);
        if (root.json().isNull()) {
            throw stop("C001", text.line(1), "This file is empty.", "Write its content, or take the file away.");
        }
        next();
        Event after = next();
        if (after.getEventId() != Event.ID.StreamEnd) {
            throw stop(
                    "C006",
                    text.place(after),
                    "A second document begins here, and a file may hold only one.",
                    "Take out the line ---, or move what follows into a file of its own.");
        }
        return root;
    }

    private Event next() {
        return events.next();
    }

    private Node value(Event event, int depth) {
        if (depth > DEEPEST) {
            throw stop(
                    "C002",
                    text.place(event),
                    "This is nested deeper than any file of a curriculum needs.",
                    "Look for a bracket that is opened and never closed.");
        }
        refuseAnchors((NodeEvent) event);
        return switch (event.getEventId()) {
            case Scalar -> Node.scalar(text.place(event), quoted((ScalarEvent) event));
            case SequenceStart -> list(event, depth);
            default -> map(event, depth);
        };
    }

    private void refuseAnchors(NodeEvent event) {
        boolean tagged = event instanceof ScalarEvent scalar && scalar.getTag().isPresent()
                || event instanceof CollectionStartEvent start && start.getTag().isPresent();
        if (event.getEventId() == Event.ID.Alias || event.getAnchor().isPresent() || tagged) {
            throw stop(
                    "C005",
                    text.place(event),
                    "Signs that begin with &, * or ! have a meaning of their own and are not used here.",
                    "Write the value out in full. If the sign is part of a text, put the text in quotes.");
        }
    }

    private Node list(Event start, int depth) {
        List<Node> items = new ArrayList<>();
        for (Event event = next(); event.getEventId() != Event.ID.SequenceEnd; event = next()) {
            items.add(value(event, depth + 1));
        }
        return Node.list(text.place(start), items);
    }

    private Node map(Event start, int depth) {
        List<Node> keys = new ArrayList<>();
        List<Node> values = new ArrayList<>();
        Map<String, Node> seen = new HashMap<>();
        for (Event event = next(); event.getEventId() != Event.ID.MappingEnd; event = next()) {
            Node key = key(event, depth);
            Node earlier = seen.putIfAbsent(key.text(), key);
            if (earlier != null) {
                whole = false;
                found.add(
                        "C004",
                        key,
                        "“" + key.text() + "” is written twice here.",
                        "Keep the one that is right and take the other out.",
                        new Also("First written in", earlier.place()));
            }
            keys.add(key);
            values.add(value(next(), depth + 1));
        }
        return Node.map(text.place(start), keys, values);
    }

    private Node key(Event event, int depth) {
        if (event.getEventId() != Event.ID.Scalar) {
            throw stop(
                    "C002",
                    text.place(event),
                    "A name before a colon must be one plain word.",
                    "Write a word, a colon and a space, then the value.");
        }
        refuseAnchors((NodeEvent) event);
        String name = ((ScalarEvent) event).getValue();
        return Node.scalar(text.place(event), JsonNodeFactory.instance.textNode(name));
    }

    /** A quote at the end of a bare word was opened nowhere. */
    private JsonNode quoted(ScalarEvent event) {
        if (event.getScalarStyle() == ScalarStyle.PLAIN && event.getValue().endsWith("\"")) {
            whole = false;
            found.add(
                    "C002",
                    text.place(event),
                    "This ends with a quote that is opened nowhere.",
                    "Put a quote before its first letter too, or take this one out.");
        }
        return scalar(event);
    }

    private static JsonNode scalar(ScalarEvent event) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        String value = event.getValue();
        if (event.getScalarStyle() != ScalarStyle.PLAIN) {
            return make.textNode(value);
        }
        return switch (value) {
            case "", "null" -> make.nullNode();
            case "true" -> make.booleanNode(true);
            case "false" -> make.booleanNode(false);
            default -> NUMBER.matcher(value).matches() ? number(value) : make.textNode(value);
        };
    }

    private static JsonNode number(String value) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        return value.contains(".") ? make.numberNode(new BigDecimal(value)) : make.numberNode(Long.parseLong(value));
    }

    private Stopped stop(String code, Place at, String headline, String help) {
        found.add(code, at, headline, help);
        return new Stopped();
    }

    /** Ends the reading of one file after its fault was noted. */
    private static final class Stopped extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Stopped() {
            super(null, null, false, false);
        }
    }
}
