package ribmark.anatomy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ribmark.basics.Refused;
import ribmark.basics.Words;

/** One thing done to the carcase with knife or saw: sever what holds, saw a bone, or lift bones out. */
public sealed interface Operation {

    /** What it is done to, one after the other. */
    List<String> ids();

    /** The same deed on other ids. */
    Operation on(List<String> ids);

    /** The animal after it. */
    Animal doneTo(Animal animal);

    /** Cut joints or soft edges, or what is left of them. */
    record Sever(List<String> ids) implements Operation {
        public Sever {
            ids = checked("sever", ids);
        }

        @Override
        public Operation on(List<String> others) {
            return new Sever(others);
        }

        @Override
        public Animal doneTo(Animal animal) {
            return animal.severed(ids);
        }
    }

    /** Saw bones in two. */
    record Saw(List<String> ids, Plane plane) implements Operation {
        public Saw {
            ids = checked("saw", ids);
        }

        @Override
        public Operation on(List<String> others) {
            return new Saw(others, plane);
        }

        @Override
        public Animal doneTo(Animal animal) {
            return animal.sawn(ids, plane);
        }
    }

    /** Take parts out together, cutting all that holds them to the rest. */
    record Lift(List<String> ids) implements Operation {
        public Lift {
            ids = checked("lift", ids);
        }

        @Override
        public Operation on(List<String> others) {
            return new Lift(others);
        }

        @Override
        public Animal doneTo(Animal animal) {
            return animal.lifted(ids);
        }
    }

    /** Reads an operation as written in a file: what is not written is null. Says no in one sentence. */
    static Operation of(List<String> sever, List<String> saw, String plane, List<String> lift) {
        oneVerb(sever, saw, lift);
        if (saw == null && plane != null) {
            throw new Refused("The plane “" + plane + "” stands beside no saw: take it out, or saw instead.");
        }
        if (saw != null) {
            return new Saw(saw, plane(plane));
        }
        return sever != null ? new Sever(sever) : new Lift(lift);
    }

    private static void oneVerb(List<String> sever, List<String> saw, List<String> lift) {
        List<String> verbs = new ArrayList<>();
        List<List<String>> lists = Arrays.asList(sever, saw, lift);
        List<String> words = List.of("sever", "saw", "lift");
        for (int at = 0; at < words.size(); at++) {
            if (lists.get(at) != null) {
                verbs.add(words.get(at));
            }
        }
        if (verbs.size() != 1) {
            throw new Refused(
                    verbs.isEmpty()
                            ? "An operation says what to do: write sever, saw or lift and the ids it is done to."
                            : "One operation says " + Words.list(verbs) + " at once: write one operation for each.");
        }
    }

    private static Plane plane(String word) {
        if (word == null) {
            throw new Refused("A saw needs its plane: write across or midline.");
        }
        return Plane.of(word)
                .orElseThrow(() -> new Refused("A saw has no plane “" + word + "”: write across or midline."));
    }

    private static List<String> checked(String verb, List<String> ids) {
        if (ids == null || ids.isEmpty()) {
            throw new Refused("An operation to " + verb + " names nothing: name at least one id.");
        }
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (id == null || id.isBlank()) {
                throw new Refused("An operation to " + verb + " holds an empty id: take it out or fill it in.");
            }
            if (!seen.add(id)) {
                throw new Refused("“" + id + "” is named twice in one operation to " + verb + ": name it once.");
            }
        }
        return List.copyOf(ids);
    }
}
