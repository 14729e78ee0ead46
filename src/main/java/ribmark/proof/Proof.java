package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.anatomy.Skeleton;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.proof.EveryOrder.Orders;

/**
 * What was shown of one breakdown on one animal: the pieces it ends in, how many when an optional step is left out, in how many
 * orders it holds when that was tried, and other animals it holds on too.
 */
public record Proof(
        String breakdown,
        String formula,
        int stages,
        int steps,
        int bones,
        int joints,
        List<Freed> pieces,
        Map<String, Integer> piecesWithout,
        Optional<Orders> orders,
        List<String> alsoOn) {

    /** The same, known to hold on animals with these numbers of vertebrae as well. */
    Proof alsoOn(List<String> formulas) {
        return new Proof(
                breakdown, formula, stages, steps, bones, joints, pieces, piecesWithout, orders, List.copyOf(formulas));
    }

    private Proof inOrders(Orders held) {
        return new Proof(
                breakdown, formula, stages, steps, bones, joints, pieces, piecesWithout, Optional.of(held), alsoOn);
    }

    /** Works the breakdown with every optional step done, with none, and with each of them alone left out, then in every other order. */
    static Optional<Proof> of(Shelf shelf, Skeleton animal, Findings found) {
        Optional<Proof> proof = inAdvisedOrder(shelf, animal, found);
        CutBook cuts = new CutBook(shelf, animal);
        Deeds deeds = new Deeds(animal);
        return proof.filter(sound -> new Soonest(shelf, deeds, cuts, found).check())
                .flatMap(sound ->
                        new EveryOrder(shelf, deeds, cuts, found).check().map(sound::inOrders));
    }

    /** The same for the advised order alone: which orders the needs allow does not hang on the number of ribs. */
    static Optional<Proof> inAdvisedOrder(Shelf shelf, Skeleton animal, Findings found) {
        CutBook cuts = new CutBook(shelf, animal);
        Deeds deeds = new Deeds(animal);
        Optional<List<Freed>> all = new Working(shelf, deeds, cuts, Set.of(), found).done();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<String> optional = optional(shelf);
        Map<String, Integer> without = new LinkedHashMap<>();
        for (String step : optional) {
            new Working(shelf, deeds, cuts, with(step, shelf), found)
                    .done()
                    .ifPresent(pieces -> without.put(step, pieces.size()));
        }
        boolean soundWithout = optional.size() < 2
                || new Working(shelf, deeds, cuts, new HashSet<>(optional), found)
                        .done()
                        .isPresent();
        everyCutIsFreed(shelf, cuts, all.get(), found);
        LineCheck.check(shelf, deeds, found);
        return soundWithout && without.size() == optional.size()
                ? Optional.of(told(shelf, animal, all.get(), without))
                : Optional.empty();
    }

    /** A step left out, and what cannot be done without it. */
    static Set<String> with(String leftOut, Shelf shelf) {
        Set<String> all = new HashSet<>(Set.of(leftOut));
        for (Node step : shelf.steps()) {
            if (step.get("needs").texts().stream().anyMatch(all::contains)) {
                all.add(step.get("id").text());
            }
        }
        return all;
    }

    static List<String> optional(Shelf shelf) {
        return shelf.steps().stream()
                .filter(step -> step.get("optional").yes())
                .map(step -> step.get("id").text())
                .toList();
    }

    private static Proof told(Shelf shelf, Skeleton animal, List<Freed> pieces, Map<String, Integer> without) {
        return new Proof(
                shelf.id(),
                animal.formula().toString(),
                shelf.stages().size(),
                shelf.steps().size(),
                animal.bones().size(),
                animal.joints().size(),
                pieces,
                without,
                Optional.empty(),
                List.of());
    }

    private static void everyCutIsFreed(Shelf shelf, CutBook cuts, List<Freed> pieces, Findings found) {
        List<String> named = new ArrayList<>();
        shelf.steps().forEach(step -> {
            named.addAll(step.get("frees").texts());
            named.addAll(step.get("leaves").texts());
        });
        Set<String> left = new HashSet<>(pieces.stream().map(Freed::cut).toList());
        for (String cut : cuts.ids()) {
            boolean lost = cuts.hasBones(cut) && !cuts.isParted(cut) && !left.contains(cut);
            boolean gathered = !cuts.hasBones(cut) && cuts.isLeftOver(cut);
            Node other = cuts.node(cut).get("or");
            if (other.isThere() && optional(shelf).isEmpty()) {
                found.add(
                        "C036",
                        other,
                        "The other bones of “" + cut + "” never come, because no step may be left out.",
                        "Take them out, or write optional: true at the step that may be left out.");
            }
            if (!named.contains(cut) && !gathered || lost) {
                found.add(
                        "C036",
                        cuts.node(cut).get(named.contains(cut) ? "becomes" : "id"),
                        "“" + cut + "” is "
                                + (named.contains(cut) ? "not there when all is done." : "freed by no step."),
                        named.contains(cut)
                                ? "A later step parts it: write parted, or take that step's operation out."
                                : "Name it in frees or leaves of the step that frees it, or take it out.");
            }
        }
    }
}
