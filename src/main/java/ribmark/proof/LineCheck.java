package ribmark.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Comparison;
import ribmark.anatomy.Ids;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/**
 * Works every line that can run elsewhere, each way and on each side, from where the steps before it have led: it must come
 * apart into as many pieces as it should, and just the bones the file names must go over.
 */
final class LineCheck {

    private static final String CODE = "C029";

    private final Shelf shelf;
    private final Deeds deeds;
    private final Findings found;

    private LineCheck(Shelf shelf, Deeds deeds, Findings found) {
        this.shelf = shelf;
        this.deeds = deeds;
        this.found = found;
    }

    static void check(Shelf shelf, Deeds deeds, Findings found) {
        new LineCheck(shelf, deeds, found).check();
    }

    private void check() {
        shelf.lines().all("lines[]").forEach(this::speaksLikeTheScale);
        Animal now = Animal.whole(deeds.skeleton());
        for (Node step : shelf.steps()) {
            for (Node line : shelf.lines().all("lines[]")) {
                List<Node> steps = LineRuns.stepsOf(line, shelf);
                if (!steps.isEmpty() && steps.get(0) == step && standTogether(line, steps)) {
                    check(line, new LineRuns(steps, deeds.skeleton()), now);
                }
            }
            now = deeds.after(now, step, (id, refused) -> {}).orElse(now);
        }
    }

    /** Weights and bones call the ends of a line the same. */
    private void speaksLikeTheScale(Node line) {
        for (Node weighed : shelf.weighing().all("lines[]")) {
            List<Node> ends = List.of(weighed.get("towards"), weighed.get("otherwise"));
            List<String> words = ends.stream().map(Node::text).toList();
            if (weighed.get("line").text().equals(line.get("id").text())) {
                line.all("runs[].towards").stream()
                        .filter(towards -> !words.contains(towards.text()))
                        .forEach(towards -> found.add(
                                CODE,
                                towards,
                                "The weighing model moves this line towards " + String.join(" or ", words) + ".",
                                "Use the same word here.",
                                new Also("It stands in", ends.get(0).place())));
            }
        }
    }

    private boolean standTogether(Node line, List<Node> steps) {
        int first = shelf.steps().indexOf(steps.get(0));
        boolean together = shelf.steps()
                .subList(first, Math.min(first + steps.size(), shelf.steps().size()))
                .equals(steps);
        if (!together) {
            found.add(
                    CODE,
                    line.get("steps"),
                    "Other steps stand between those that cut this line.",
                    "Name the steps from the first that cuts it to the last, without a gap.");
        }
        return together;
    }

    private void check(Node line, LineRuns runs, Animal before) {
        Animal specified = work(before, runs.asSpecified()).orElseThrow();
        Set<List<String>> ways = new LinkedHashSet<>();
        for (Node run : line.all("runs[]")) {
            if (!ways.add(List.of(run.get("towards").text(), run.get("by").text()))) {
                found.add(
                        CODE,
                        run.get("by"),
                        "This line runs so far towards the "
                                + run.get("towards").text() + " twice.",
                        "Keep one of the two.");
            }
            if (LineRuns.sides(run).isEmpty()) {
                found.add(
                        CODE,
                        run,
                        "Nothing says what is cut when the line runs here.",
                        "Write both-sides, or one-side, or both of them.");
            }
            LineRuns.sides(run).stream()
                    .allMatch(side -> deeds(runs, run, side)
                            .map(done -> isSound(run, side, done, before, specified))
                            .orElse(false));
        }
    }

    private Optional<List<LineRuns.Deed>> deeds(LineRuns runs, Node run, Side side) {
        try {
            return Optional.of(runs.deeds(run, side));
        } catch (Refused e) {
            Node operations = LineRuns.way(run, side).get("operations");
            Node blamed = operations.items().stream()
                    .flatMap(written -> Deeds.written(written).stream())
                    .filter(id -> e.getMessage().contains("“" + id.text() + "”"))
                    .findFirst()
                    .orElse(operations);
            Saying.of(e).add(CODE, blamed, found);
            return Optional.empty();
        }
    }

    private boolean isSound(Node run, Side side, List<LineRuns.Deed> done, Animal before, Animal specified) {
        Node way = LineRuns.way(run, side);
        Optional<Comparison> comparison = work(before, done).map(moved -> Comparison.of(specified, moved));
        return comparison.isPresent() && comesApart(way, comparison.get()) && goesOver(way, side, comparison.get());
    }

    private Optional<Animal> work(Animal before, List<LineRuns.Deed> done) {
        Animal now = before;
        for (LineRuns.Deed deed : done) {
            try {
                now = now.after(deed.operations());
            } catch (Refused e) {
                Saying.of(e)
                        .add(
                                CODE,
                                deeds.culprit(deed.written(), e.getMessage()),
                                found,
                                worked(done.stream()
                                        .map(LineRuns.Deed::written)
                                        .distinct()
                                        .toList()));
                return Optional.empty();
            }
        }
        return Optional.of(now);
    }

    private boolean comesApart(Node way, Comparison comparison) {
        long should = comparison.pieces().stream()
                .filter(pair -> pair.should().isPresent())
                .count();
        long is = comparison.pieces().stream()
                .filter(pair -> pair.is().isPresent())
                .count();
        if (should != is) {
            found.add(
                    CODE,
                    way.key("operations"),
                    "Cut so, there are " + is + " pieces and not " + should + ".",
                    should > is
                            ? "Something still holds two of them together: sever that too."
                            : "Something comes off by itself: leave what holds it.",
                    worked(way));
        }
        return should == is;
    }

    private static Also[] worked(Node way) {
        return worked(way.get("operations").items());
    }

    /** Every operation and every plane of a saw, since any of them may be the wrong one. */
    private static Also[] worked(List<Node> operations) {
        List<Also> places = new ArrayList<>();
        for (Node operation : operations) {
            Deeds.written(operation).stream()
                    .findFirst()
                    .ifPresent(id -> places.add(new Also("The line is worked in", id.place())));
            if (operation.get("plane").isThere()) {
                places.add(new Also(
                        "The saw goes as told in", operation.get("plane").place()));
            }
        }
        return places.toArray(Also[]::new);
    }

    /** The file names the bones that go over on one side or on both; a bone without a side is the same on either. */
    private boolean goesOver(Node way, Side side, Comparison comparison) {
        Node written = way.get("go-over");
        Set<String> go = new LinkedHashSet<>();
        comparison.elsewhere().forEach(bone -> go.add(bone.part().name()));
        for (Node entry : written.items()) {
            List<String> named = expand(entry.text(), side);
            for (String bone : named) {
                if (!go.remove(bone)) {
                    found.add(
                            CODE,
                            entry,
                            "“" + bone + "” stays in the piece it should be in.",
                            "Take it out, or mend the operations.",
                            worked(way));
                    return false;
                }
            }
        }
        if (!go.isEmpty()) {
            found.add(
                    CODE,
                    written,
                    Words.list(go.stream().limit(3).toList()) + (go.size() > 3 ? " and others" : "")
                            + (go.size() == 1 ? " goes" : " go") + " over to another piece too.",
                    "Name every bone that goes over, or mend the operations.",
                    worked(way));
        }
        return go.isEmpty();
    }

    private List<String> expand(String entry, Side side) {
        return side == Side.BOTH || !Ids.isSided(entry)
                ? deeds.ids().expand(entry)
                : deeds.ids().expand(entry, side);
    }
}
