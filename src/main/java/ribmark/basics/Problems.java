package ribmark.basics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong with what was typed: a sentence for each field, in the order of the page. */
public final class Problems {

    /** One field and what to do about it. */
    public record Problem(String field, String sentence) {}

    private final List<Problem> all = new ArrayList<>();

    /** Adds a sentence beside a field; only the first one for a field is kept. */
    public Problems add(String field, String sentence) {
        if (at(field).isEmpty()) {
            all.add(new Problem(field, sentence));
        }
        return this;
    }

    /** Whether anything is wrong. */
    public boolean any() {
        return !all.isEmpty();
    }

    /** The sentence beside this field, if there is one. */
    public Optional<String> at(String field) {
        return all.stream()
                .filter(p -> p.field().equals(field))
                .map(Problem::sentence)
                .findFirst();
    }

    /** All of them, in order. */
    public List<Problem> list() {
        return List.copyOf(all);
    }
}
