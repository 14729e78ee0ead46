package ribmark.admin;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.anatomy.Operation;
import ribmark.basics.FileProblem;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.basics.Suggest;
import ribmark.basics.Words;

/** Operations to try on a skeleton, written as a file and read strictly: what is asked, or everything wrong with it. */
record TryFile(
        String skeleton,
        Optional<String> formula,
        List<Operation> operations,
        Optional<Moved> moved,
        List<FileProblem> problems) {

    /** A line of a breakdown that ran elsewhere, in place of operations: the words that name it, the side last. */
    record Moved(String breakdown, List<String> way) {}

    private static final ObjectReader STRICT = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build()
            .reader();
    private static final List<String> OF_FILE = List.of("skeleton", "formula", "operations", "moved");
    private static final List<String> OF_MOVED = List.of("breakdown", "line", "towards", "by", "side");
    private static final List<String> OF_OPERATION = List.of("sever", "saw", "plane", "lift");

    static TryFile read(byte[] bytes) {
        try {
            JsonNode root = STRICT.readTree(bytes);
            return root.isObject()
                    ? new Reading().file(root)
                    : refused("", "A file to try is one object in braces.", "Begin with { and end with }.");
        } catch (JsonProcessingException broken) {
            return refused(where(broken), headline(broken), "Mend the file there; nothing else was read.");
        } catch (IOException unreadable) {
            return refused("", "This file is not UTF-8 text.", "Save it as UTF-8.");
        }
    }

    private static String headline(JsonProcessingException broken) {
        return broken.getOriginalMessage().startsWith("Duplicate field")
                ? "A field stands twice here."
                : "This is not JSON.";
    }

    private static String where(JsonProcessingException broken) {
        var place = broken.getLocation();
        return place == null ? "" : "line " + place.getLineNr() + ", column " + place.getColumnNr();
    }

    static TryFile refused(String at, String headline, String help) {
        return new TryFile(
                "", Optional.empty(), List.of(), Optional.empty(), List.of(new FileProblem(at, headline, help)));
    }

    /** A sentence of the skeleton's own: what is the matter, a colon, and what to do. */
    static FileProblem problem(String at, Refused refused) {
        String sentence = refused.getMessage();
        int colon = sentence.lastIndexOf(": ");
        return colon < 0
                ? new FileProblem(at, sentence, "")
                : new FileProblem(at, sentence.substring(0, colon) + ".", Words.capital(sentence.substring(colon + 2)));
    }

    /** Reads field by field and keeps whatever is wrong. */
    private static final class Reading {

        private final List<FileProblem> problems = new ArrayList<>();

        TryFile file(JsonNode root) {
            only(root, "", OF_FILE);
            String skeleton = text(root, "skeleton", !root.has("moved")).orElse("");
            Optional<String> formula = text(root, "formula", false);
            Optional<Moved> moved = moved(root);
            List<Operation> operations = root.has("moved") ? List.of() : operations(root.path("operations"));
            return new TryFile(skeleton, formula, operations, moved, List.copyOf(problems));
        }

        private Optional<Moved> moved(JsonNode root) {
            JsonNode moved = root.path("moved");
            if (moved.isMissingNode()) {
                return Optional.empty();
            }
            if (root.has("operations")) {
                add("operations", "“operations” and “moved” stand side by side.", "Take one of the two out.");
            }
            if (!moved.isObject()) {
                add("moved", "“moved” is an object in braces.", "Write breakdown, line, towards, by and side.");
                return Optional.empty();
            }
            only(moved, "moved.", OF_MOVED);
            List<String> words = new ArrayList<>();
            OF_MOVED.forEach(name -> words.add(word(moved, name)));
            return Optional.of(new Moved(words.get(0), List.copyOf(words.subList(1, words.size()))));
        }

        /** A word in quotes; how many places is a whole number, and no side means both. */
        private String word(JsonNode moved, String name) {
            JsonNode value = moved.path(name);
            if (value.isMissingNode() && name.equals("side")) {
                return Side.BOTH.word();
            }
            boolean number = name.equals("by");
            if (value.isMissingNode()) {
                add(
                        "moved." + name,
                        "“" + name + "” is missing.",
                        "Every moved line has " + Words.list(OF_MOVED) + ".");
            } else if (number ? !value.isInt() : !value.isTextual()) {
                add(
                        "moved." + name,
                        "“" + name + "” must be " + (number ? "a whole number." : "text in quotes."),
                        number ? "Write how many places, for example 1." : "Put it in quotes.");
            }
            return value.asText();
        }

        private void add(String at, String headline, String help) {
            problems.add(new FileProblem(at, headline, help));
        }

        private void only(JsonNode node, String path, List<String> known) {
            node.fieldNames().forEachRemaining(name -> {
                if (!known.contains(name)) {
                    String help = Suggest.nearest(name, known)
                            .map(near -> "Did you mean “" + near + "”?")
                            .orElse("Known here: " + String.join(", ", known) + ".");
                    add(path + name, "There is no field “" + name + "” here.", help);
                }
            });
        }

        private Optional<String> text(JsonNode root, String name, boolean needed) {
            String help = name.equals("skeleton")
                    ? "Write the name of a skeleton, for example \"ovine\"."
                    : "Write the numbers of vertebrae in quotes, for example \"7,13,6,4,3\".";
            JsonNode value = root.path(name);
            if (value.isMissingNode() && needed) {
                add(name, "“" + name + "” is missing.", help);
            } else if (!value.isMissingNode() && !value.isTextual()) {
                add(name, "“" + name + "” must be text in quotes.", help);
            }
            return value.isTextual() ? Optional.of(value.textValue()) : Optional.empty();
        }

        private List<Operation> operations(JsonNode list) {
            List<Operation> operations = new ArrayList<>();
            if (!list.isArray()) {
                add(
                        "operations",
                        list.isMissingNode() ? "“operations” is missing." : "“operations” must be a list.",
                        "Write a list of operations, each in braces with sever, saw or lift and its ids.");
                return List.of();
            }
            for (int i = 0; i < list.size(); i++) {
                operation(list.get(i), "operations[" + i + "]").ifPresent(operations::add);
            }
            return operations;
        }

        private Optional<Operation> operation(JsonNode node, String at) {
            if (!node.isObject()) {
                add(at, "An operation is an object in braces.", "Write sever, saw or lift and the ids.");
                return Optional.empty();
            }
            int before = problems.size();
            only(node, at + ".", OF_OPERATION);
            List<String> sever = ids(node, "sever", at);
            List<String> saw = ids(node, "saw", at);
            List<String> lift = ids(node, "lift", at);
            String plane = plane(node, at);
            if (problems.size() > before) {
                return Optional.empty();
            }
            try {
                return Optional.of(Operation.of(sever, saw, plane, lift));
            } catch (Refused refused) {
                problems.add(TryFile.problem(at, refused));
                return Optional.empty();
            }
        }

        private String plane(JsonNode node, String at) {
            JsonNode plane = node.path("plane");
            if (!plane.isMissingNode() && !plane.isTextual()) {
                add(at + ".plane", "“plane” must be text in quotes.", "Write across or midline.");
            }
            return plane.isTextual() ? plane.textValue() : null;
        }

        private List<String> ids(JsonNode node, String verb, String at) {
            JsonNode list = node.path(verb);
            if (list.isMissingNode()) {
                return null;
            }
            List<String> ids = new ArrayList<>();
            if (!list.isArray()) {
                add(at + "." + verb, "“" + verb + "” must be a list of ids.", "Write the ids in brackets.");
                return List.of();
            }
            for (int i = 0; i < list.size(); i++) {
                if (list.get(i).isTextual()) {
                    ids.add(list.get(i).textValue());
                } else {
                    add(at + "." + verb + "[" + i + "]", "An id must be text in quotes.", "Put it in quotes.");
                }
            }
            return ids;
        }
    }
}
