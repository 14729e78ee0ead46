package ribmark.weighupfile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.basics.FileProblem;
import ribmark.basics.Weight;

/** The fields of one object in a weigh-up file: each is asked for by name, and whatever is wrong is kept with its path. */
final class Fields {

    private static final int LONGEST_QUOTE = 60;

    private final JsonNode node;
    private final String path;
    private final List<FileProblem> problems;

    Fields(JsonNode node, String path, List<FileProblem> problems) {
        this.node = node;
        this.path = path;
        this.problems = problems;
    }

    /** Refuses every field that is not one of these. */
    Fields only(String... known) {
        List<String> names = List.of(known);
        node.fieldNames().forEachRemaining(name -> {
            if (!names.contains(name)) {
                refuse(
                        name,
                        "There is no field " + quoted(name) + " here",
                        "Known here: " + String.join(", ", names) + ".");
            }
        });
        return this;
    }

    boolean has(String name) {
        return node.has(name);
    }

    boolean isEmptyList(String name) {
        return node.path(name).isArray() && node.path(name).isEmpty();
    }

    /** Whether every object under these names, alone or in a list, has such a field. */
    boolean allHave(String field, String... names) {
        for (String name : names) {
            JsonNode under = node.path(name);
            Iterable<JsonNode> objects = under.isArray() ? under : List.of(under);
            for (JsonNode object : objects) {
                if (object.isObject() && !object.has(field)) {
                    return false;
                }
            }
        }
        return true;
    }

    String at(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    void refuse(String name, String headline, String help) {
        problems.add(new FileProblem(at(name), headline, help));
    }

    /** A text that must be there. */
    Optional<String> text(String name, String help) {
        Optional<JsonNode> value = value(name, help);
        if (value.isPresent() && !value.get().isTextual()) {
            refuse(name, quoted(name) + " must be text in quotes", help);
            return Optional.empty();
        }
        return value.map(JsonNode::textValue);
    }

    /** One of these words, which must be there. */
    Optional<String> word(String name, List<String> words) {
        String help = "Write one of: " + String.join(", ", words) + ".";
        Optional<String> word = text(name, help);
        if (word.isPresent() && !words.contains(word.get())) {
            refuse(name, quoted(word.get()) + " is not a word for " + quoted(name), help);
            return Optional.empty();
        }
        return word;
    }

    /** Kilograms as typed, more than nothing. */
    Optional<Weight> weight(String name) {
        Optional<String> typed = text(name, "Write kilograms in quotes, for example \"7.310\".");
        Optional<String> whyNot = typed.flatMap(Weight::whyNot);
        whyNot.ifPresent(why -> {
            int advice = Math.max(why.lastIndexOf(" Type "), 0);
            String what = advice == 0 ? why : why.substring(0, advice);
            refuse(name, "Weight: " + shortened(what), why.substring(advice).strip());
        });
        Optional<Weight> weight = typed.filter(t -> whyNot.isEmpty()).map(Weight::ofKilograms);
        if (weight.filter(Weight.NONE::equals).isPresent()) {
            refuse(name, "Weight: nothing weighs 0\u00a0kg", "Leave out what was not weighed.");
            return Optional.empty();
        }
        return weight;
    }

    /** A text as it stands, nothing when there is none. */
    String typed(String name) {
        return node.path(name).asText().strip();
    }

    /** A number that must be there, more than {@code above} and at most {@code most}. */
    Optional<Double> number(String name, double above, double most, String help) {
        Optional<JsonNode> value = value(name, help);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        double number = value.get().isNumber() ? value.get().doubleValue() : Double.NaN;
        if (!(number > above && number <= most)) {
            refuse(name, quoted(value.get().toString()) + " cannot be " + quoted(name), help);
            return Optional.empty();
        }
        return Optional.of(number);
    }

    /** An object that must be there. */
    Optional<Fields> object(String name, String help) {
        Optional<JsonNode> value = value(name, help);
        if (value.isPresent() && !value.get().isObject()) {
            refuse(name, quoted(name) + " must hold fields of its own", help);
            return Optional.empty();
        }
        return value.map(object -> new Fields(object, at(name), problems));
    }

    /** The objects of a list; what is no object is refused where it stands. */
    List<Fields> objects(String name, String help) {
        JsonNode list = node.path(name);
        if (!list.isArray()) {
            refuse(name, quoted(name) + (has(name) ? " must be a list" : " is missing"), help);
            return List.of();
        }
        List<Fields> objects = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String at = name + "[" + i + "]";
            if (list.get(i).isObject()) {
                objects.add(new Fields(list.get(i), at(at), problems));
            } else {
                refuse(at, "This must hold fields of its own", help);
            }
        }
        return objects;
    }

    /** The value as it stands, which must be there. */
    Optional<JsonNode> value(String name, String help) {
        if (!node.hasNonNull(name)) {
            refuse(name, quoted(name) + (has(name) ? " is empty" : " is missing"), help);
            return Optional.empty();
        }
        return Optional.of(node.get(name));
    }

    static String quoted(String text) {
        return "“" + shortened(text) + "”";
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }
}
