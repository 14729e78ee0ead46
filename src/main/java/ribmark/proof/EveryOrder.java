package ribmark.proof;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import ribmark.anatomy.Animal;
import ribmark.contentfiles.ContentProblem;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/**
 * Proves that only needs bind. A carcase that was begun is told by which steps are done; from every such state that the
 * needs allow, each step that may come next is done and must free what it says. What holds from every state holds in
 * every order, with optional steps done or left, and there are far fewer states than orders.
 */
final class EveryOrder {

    /** Ours: with more states than this that have equally many steps done, so many chosen by chance are gone on from. */
    private static final int WIDEST = 1000;

    private static final long SEED = 20261130;

    /** In how many orders everything can be done as far as they were tried, and whether those are all. */
    record Orders(BigInteger many, boolean all) {}

    /** The animal when these steps are done, and in how many orders they can be done. */
    private record State(Animal animal, BigInteger orders) {}

    private final Random random = new Random(SEED);
    private final List<Node> steps;
    private final List<BitSet> needs = new ArrayList<>();
    private final Deeds deeds;
    private final CutBook cuts;
    private final Findings found;
    private boolean all = true;

    EveryOrder(Shelf shelf, Deeds deeds, CutBook cuts, Findings found) {
        this.steps = shelf.steps().stream()
                .filter(step -> !step.get("operations").items().isEmpty())
                .toList();
        this.deeds = deeds;
        this.cuts = cuts;
        this.found = found;
        Map<String, Node> byId = new LinkedHashMap<>();
        shelf.steps().forEach(step -> byId.put(id(step), step));
        steps.forEach(step -> needs.add(among(steps, needed(step, byId, new HashSet<>()))));
    }

    private static Set<String> needed(Node step, Map<String, Node> byId, Set<String> met) {
        for (String need : step.get("needs").texts()) {
            if (met.add(need)) {
                needed(byId.get(need), byId, met);
            }
        }
        return met;
    }

    private static BitSet among(List<Node> steps, Set<String> ids) {
        BitSet places = new BitSet();
        for (int at = 0; at < steps.size(); at++) {
            places.set(at, ids.contains(id(steps.get(at))));
        }
        return places;
    }

    /** The orders that hold, or nothing when one of them goes wrong; why is then among the findings. */
    Optional<Orders> check() {
        Map<BitSet, State> level = new LinkedHashMap<>();
        level.put(new BitSet(), new State(Animal.whole(deeds.skeleton()), BigInteger.ONE));
        for (int done = 0; done < steps.size(); done++) {
            Optional<Map<BitSet, State>> next = next(level);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            level = thinned(next.get());
        }
        return Optional.of(new Orders(level.values().iterator().next().orders(), all));
    }

    private Map<BitSet, State> thinned(Map<BitSet, State> level) {
        if (level.size() <= WIDEST) {
            return level;
        }
        all = false;
        List<BitSet> chosen = new ArrayList<>(level.keySet());
        Collections.shuffle(chosen, random);
        level.keySet().retainAll(new HashSet<>(chosen.subList(0, WIDEST)));
        return level;
    }

    /** Every state that one step more leads to. */
    private Optional<Map<BitSet, State>> next(Map<BitSet, State> level) {
        Map<BitSet, State> next = new LinkedHashMap<>();
        for (Map.Entry<BitSet, State> state : level.entrySet()) {
            for (int step = 0; step < steps.size(); step++) {
                if (isReady(step, state.getKey())) {
                    Optional<Animal> after = after(state.getValue().animal(), step, state.getKey());
                    if (after.isEmpty()) {
                        return Optional.empty();
                    }
                    BitSet done = (BitSet) state.getKey().clone();
                    done.set(step);
                    State reached = new State(after.get(), state.getValue().orders());
                    next.merge(done, reached, EveryOrder::same);
                }
            }
        }
        return Optional.of(next);
    }

    private boolean isReady(int step, BitSet done) {
        BitSet open = (BitSet) needs.get(step).clone();
        open.andNot(done);
        return open.isEmpty() && !done.get(step);
    }

    /** Two ways to one state: the skeleton must not care which was taken. */
    private static State same(State one, State other) {
        if (!one.animal().pieces().equals(other.animal().pieces())) {
            throw new IllegalStateException("The same steps in two orders left other pieces");
        }
        return new State(one.animal(), one.orders().add(other.orders()));
    }

    private Optional<Animal> after(Animal before, int step, BitSet done) {
        Findings here = new Findings();
        Node written = steps.get(step);
        Optional<Animal> after = deeds.after(
                before, written, (culprit, refused) -> Saying.of(refused).add("C032", culprit, here));
        after.ifPresent(animal -> new FreedHere(written, cuts, new LinkedHashMap<>(), here)
                .check(before.pieces(), animal.pieces(), animal));
        here.list().stream().findFirst().ifPresent(problem -> tell(written, blamed(step, done), problem));
        return here.none() ? after : Optional.empty();
    }

    /** The last step done that could still have waited: without it all was well. */
    private Node blamed(int step, BitSet done) {
        return done.stream()
                .filter(other -> !needs.get(step).get(other))
                .filter(other ->
                        done.stream().noneMatch(later -> needs.get(later).get(other)))
                .mapToObj(steps::get)
                .reduce(steps.get(step), (earlier, later) -> later);
    }

    private void tell(Node step, Node after, ContentProblem problem) {
        found.add(
                "C039",
                after.get("needs"),
                "“" + id(step) + "” goes wrong after “" + id(after) + "”, an order that the needs allow.",
                problem.headline() + " Add the need “" + id(step) + "” to “" + id(after) + "”, or mend what that does.",
                new Also("It goes wrong at", problem.at()));
    }

    private static String id(Node step) {
        return step.get("id").text();
    }
}
