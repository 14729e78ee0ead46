package ribmark.evidence;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Something that happened, before it is written down. Facts are ids, codes and numbers and stand in the chained text; words are
 * what a person wrote or is called, and only their salted digest stands there, so that they can be erased and the chain still holds.
 */
public record Entry(String kind, Map<String, String> facts, Map<String, String> words, Optional<Instant> observedAt) {

    /** Copies and sorts, so that the text is always the same. */
    public Entry {
        facts = new TreeMap<>(facts);
        words = new TreeMap<>(words);
    }

    /** A happening of this kind, named in the past tense: {@code step-marked}. */
    public static Entry of(String kind) {
        return new Entry(kind, Map.of(), Map.of(), Optional.empty());
    }

    /** With one more fact; nothing is written for nothing. */
    public Entry fact(String name, Object value) {
        return value == null ? this : new Entry(kind, with(facts, name, value.toString()), words, observedAt);
    }

    /** With words of a person; empty words are left out. */
    public Entry words(String name, String text) {
        return text == null || text.isEmpty() ? this : new Entry(kind, facts, with(words, name, text), observedAt);
    }

    /** When it was seen, by the clock of the device, where that differs from when it reached us. */
    public Entry observedAt(Instant moment) {
        return new Entry(kind, facts, words, Optional.of(moment));
    }

    private static Map<String, String> with(Map<String, String> before, String name, String value) {
        Map<String, String> after = new TreeMap<>(before);
        after.put(name, value);
        return after;
    }
}
