package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.anatomy.Animal;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks that each step can be done as early as its needs allow and then frees what it says; if not, finds the need that is missing. */
final class Soonest {

    private final Map<String, Node> advised = new LinkedHashMap<>();
    private final Deeds deeds;
    private final CutBook cuts;
    private final Findings found;
    private final Set<String> inTrouble = new HashSet<>();

    Soonest(Shelf shelf, Deeds deeds, CutBook cuts, Findings found) {
        shelf.steps().forEach(step -> advised.put(id(step), step));
        this.deeds = deeds;
        this.cuts = cuts;
        this.found = found;
    }

    /** Whether each step can be done as early as it may come. */
    boolean check() {
        return advised.values().stream()
                .filter(Soonest::worksOnBones)
                .map(this::soonest)
                .reduce(true, Boolean::logicalAnd);
    }

    private static boolean worksOnBones(Node step) {
        return !step.get("operations").items().isEmpty();
    }

    /** What needs a step that is in trouble already would only echo it. */
    private boolean soonest(Node step) {
        Set<String> before = new HashSet<>();
        needed(step, before);
        if (before.stream().anyMatch(inTrouble::contains)) {
            return true;
        }
        Optional<Trouble> trouble = trouble(step, before);
        trouble.ifPresent(t -> inTrouble.add(id(step)));
        trouble.ifPresent(t -> tell(step, t.culprit(), t.sentence(), missing(step, before)));
        return trouble.isEmpty();
    }

    private void needed(Node step, Set<String> all) {
        for (String need : step.get("needs").texts()) {
            if (all.add(need)) {
                needed(advised.get(need), all);
            }
        }
    }

    /** Why a step cannot be done right after these, as it should be. */
    private record Trouble(Node culprit, String sentence) {}

    private Optional<Trouble> trouble(Node step, Set<String> before) {
        Optional<Animal> ready = Optional.of(Animal.whole(deeds.skeleton()));
        for (Node earlier : advised.values()) {
            if (before.contains(id(earlier)) && ready.isPresent()) {
                ready = deeds.after(ready.get(), earlier, (culprit, refused) -> {});
            }
        }
        return ready.flatMap(animal -> trouble(step, animal));
    }

    private Optional<Trouble> trouble(Node step, Animal ready) {
        List<Trouble> troubles = new ArrayList<>();
        Optional<Animal> after = deeds.after(
                ready, step, (culprit, refused) -> troubles.add(new Trouble(culprit, refused.getMessage())));
        after.ifPresent(animal -> {
            Findings quiet = new Findings();
            if (!new FreedHere(step, cuts, new LinkedHashMap<>(), quiet)
                    .check(ready.pieces(), animal.pieces(), animal)) {
                troubles.add(new Trouble(step.get("id"), quiet.list().get(0).headline()));
            }
        });
        return troubles.stream().findFirst();
    }

    /** The first earlier step that, were it needed, would mend it. */
    private Optional<Node> missing(Node step, Set<String> needed) {
        for (Node other : advised.values()) {
            if (other == step) {
                return Optional.empty();
            }
            Set<String> more = new HashSet<>(needed);
            if (more.add(id(other))) {
                needed(other, more);
                if (trouble(step, more).isEmpty()) {
                    return Optional.of(other);
                }
            }
        }
        return Optional.empty();
    }

    private static String id(Node step) {
        return step.get("id").text();
    }

    private void tell(Node step, Node culprit, String sentence, Optional<Node> missing) {
        List<Also> also = new ArrayList<>();
        if (culprit != step.get("id")) {
            also.add(new Also("It is stopped at", culprit.place()));
        }
        missing.ifPresent(other ->
                also.add(new Also("Its needs allow it before:", other.get("id").place())));
        found.add(
                "C039",
                step.get("needs"),
                "In another order that the needs allow, “" + id(step) + "” cannot be done.",
                sentence
                        + missing.map(other -> " Add the need “" + id(other) + "”.")
                                .orElse(" Add a need, so that this step comes first."),
                also.toArray(Also[]::new));
    }
}
