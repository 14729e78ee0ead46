package ribmark.drills;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.curriculum.Term;

/** An id for each word of the trade, and the step where it is learned: where it is said, or where its bones are looked for. */
public final class TermPlaces {

    private final Map<String, Term> terms = new LinkedHashMap<>();
    private final Map<String, String> steps = new LinkedHashMap<>();

    /** Finds a place for each. */
    public TermPlaces(Curriculum curriculum) {
        for (Term term : curriculum.terms()) {
            String id = freeId(slug(term.trade()));
            terms.put(id, term);
            steps.put(id, place(term, curriculum.breakdown()).id());
        }
    }

    private static String slug(String trade) {
        return trade.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }

    /** The same word said elsewhere for something else gets a number. */
    private String freeId(String slug) {
        int number = 1;
        String id = slug;
        while (terms.containsKey(id)) {
            number++;
            id = slug + "-" + number;
        }
        return id;
    }

    private static Step place(Term term, Breakdown breakdown) {
        List<Step> all = breakdown.steps();
        String trade = term.trade().toLowerCase(Locale.ROOT);
        return first(all, step -> text(step).contains(trade))
                .or(() ->
                        first(all, step -> !Collections.disjoint(step.landmark().bones(), term.bones())))
                .orElse(all.get(all.size() - 1));
    }

    private static Optional<Step> first(List<Step> steps, Predicate<Step> holds) {
        return steps.stream().filter(holds).findFirst();
    }

    private static String text(Step step) {
        return String.join(" ", step.title(), step.whatFor(), step.landmark().text(), step.how())
                .toLowerCase(Locale.ROOT);
    }

    /** The words of the trade by their ids, in the order of the file. */
    public Map<String, Term> terms() {
        return Collections.unmodifiableMap(terms);
    }

    /** The id of the step where this word is learned. */
    public String step(String id) {
        return steps.get(id);
    }

    String id(Term term) {
        return terms.entrySet().stream()
                .filter(each -> each.getValue().equals(term))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }
}
