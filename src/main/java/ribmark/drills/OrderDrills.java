package ribmark.drills;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Words;
import ribmark.curriculum.Step;

/** What can come next, and which order can be worked; only what a step needs binds, never its number. */
final class OrderDrills implements DrillMaker {

    private static final int[][] OTHER_ORDERS = {{0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

    /** Out of so many steps the wrong ones are taken (ours). */
    private static final int NEAR = 6;

    private final Worked worked;
    private final Map<String, Set<String>> before = new LinkedHashMap<>();

    OrderDrills(Worked worked) {
        this.worked = worked;
        worked.steps().forEach(step -> before.put(step.id(), allBefore(step)));
    }

    private Set<String> allBefore(Step step) {
        Set<String> all = new LinkedHashSet<>();
        step.needs().forEach(need -> {
            all.addAll(allBefore(worked.step(need)));
            all.add(need);
        });
        return all;
    }

    @Override
    public DrillKind kind() {
        return DrillKind.ORDER;
    }

    @Override
    public List<Subject> subjects() {
        return worked.steps().stream()
                .filter(step -> canAskNext(step) || !chains(step).isEmpty())
                .map(step -> new Subject(step.id(), step.id(), step.title()))
                .toList();
    }

    private boolean canAskNext(Step step) {
        return tooEarly(step).size() > 2;
    }

    /** Steps that cannot be done yet when just what this step needs is done. */
    private List<Step> tooEarly(Step next) {
        return worked.steps().stream()
                .filter(step -> !before.get(next.id()).containsAll(before.get(step.id())))
                .toList();
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Step step = worked.step(subject.id());
        List<List<Step>> chains = chains(step);
        boolean order = !canAskNext(step) || !chains.isEmpty() && random.nextBoolean();
        return order ? order(Drill.oneOf(chains, random), random) : next(step, random);
    }

    private Drill next(Step next, Random random) {
        List<String> done = List.copyOf(before.get(next.id()));
        Drill.About about =
                new Drill.About(kind(), done, doneSoFar(done) + " Which of these can come next?", List.of());
        Drill.Choice right = new Drill.Choice(next.id(), next.title(), needs(next));
        Stream<Drill.Choice> wrong = Drill.shuffled(near(next), random).stream()
                .map(step -> new Drill.Choice(step.id(), step.title(), tooEarly(step, done)));
        return about.with(right, wrong, random);
    }

    /** Those worked next after it: further ones are too easy to see. */
    private List<Step> near(Step next) {
        return tooEarly(next).stream()
                .sorted(Comparator.comparing(step -> Math.abs(step.number() - next.number())))
                .limit(NEAR)
                .toList();
    }

    private String doneSoFar(List<String> done) {
        List<String> newest = done.stream()
                .filter(id -> done.stream().noneMatch(other -> before.get(other).contains(id)))
                .map(id -> "“" + worked.step(id).title() + "”")
                .toList();
        return newest.isEmpty()
                ? "Nothing is done yet."
                : "Done so far: " + Words.list(newest) + ", and all that comes before, but nothing else.";
    }

    private String needs(Step step) {
        List<String> titles = step.needs().stream()
                .map(need -> Worked.said(worked.step(need)))
                .toList();
        return titles.isEmpty()
                ? "“" + step.title() + "” needs nothing before it."
                : "“" + step.title() + "” needs " + String.join("; and ", titles) + ", and that is done.";
    }

    private String tooEarly(Step step, List<String> done) {
        String missing = before.get(step.id()).stream()
                .filter(need -> !done.contains(need))
                .findFirst()
                .map(need -> Worked.said(worked.step(need)))
                .orElseThrow();
        return "“" + step.title() + "” has to wait: first comes " + missing + ".";
    }

    /** Three steps of which each needs the one before, the last being this one. */
    private List<List<Step>> chains(Step last) {
        List<List<Step>> chains = new ArrayList<>();
        for (String middle : before.get(last.id())) {
            for (String first : before.get(middle)) {
                chains.add(List.of(worked.step(first), worked.step(middle), last));
            }
        }
        return chains;
    }

    private Drill order(List<Step> chain, Random random) {
        Drill.About about = new Drill.About(kind(), List.of(), "Which order can be worked?", List.of());
        Drill.Choice right =
                choice(chain, "“" + chain.get(2).title() + "” comes last: it cannot be done before the other two.");
        Stream<Drill.Choice> wrong = Drill.shuffled(List.of(OTHER_ORDERS), random).stream()
                .map(order ->
                        Stream.of(order[0], order[1], order[2]).map(chain::get).toList())
                .map(other -> choice(other, outOfOrder(other)));
        return about.with(right, wrong, random);
    }

    private static Drill.Choice choice(List<Step> steps, String teaches) {
        String words = steps.stream().map(step -> small(step.title())).collect(Collectors.joining("; then "));
        return new Drill.Choice(
                steps.stream().map(Step::id).collect(Collectors.joining(" ")), "first " + words, teaches);
    }

    private String outOfOrder(List<Step> steps) {
        for (Step step : steps) {
            for (Step later : steps.subList(steps.indexOf(step) + 1, steps.size())) {
                if (before.get(step.id()).contains(later.id())) {
                    return "“" + step.title() + "” cannot be done before " + Worked.said(later) + ".";
                }
            }
        }
        throw new IllegalStateException("This order can be worked.");
    }

    private static String small(String title) {
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }
}
