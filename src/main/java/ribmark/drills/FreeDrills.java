package ribmark.drills;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Step;

/** What comes free at a step, or that nothing does yet. */
final class FreeDrills implements DrillMaker {

    private final Worked worked;
    private final Curriculum curriculum;

    FreeDrills(Worked worked, Curriculum curriculum) {
        this.worked = worked;
        this.curriculum = curriculum;
    }

    private static Drill.Choice nothing(String teaches) {
        return new Drill.Choice("", "nothing yet: it still hangs together", teaches);
    }

    @Override
    public DrillKind kind() {
        return DrillKind.FREE;
    }

    @Override
    public List<Subject> subjects() {
        return worked.steps().stream()
                .filter(step ->
                        !step.operations().isEmpty() || !worked.named(step).isEmpty())
                .map(step -> new Subject(step.id(), step.id(), step.title()))
                .toList();
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Step step = worked.step(subject.id());
        List<Cut> free = worked.named(step);
        Drill.About about = new Drill.About(
                kind(),
                List.of(step.id()),
                "“" + step.title() + "” is done" + (step.eachSide() ? ", left and right" : "")
                        + ". Which of these comes free there?",
                step.landmark().bones());
        if (free.isEmpty()) {
            return about.with(nothing(why(step)), wrong(step, random), random);
        }
        Cut right = Drill.oneOf(free, random);
        Stream<Drill.Choice> nothing = random.nextBoolean() ? Stream.of(nothing(freed(free))) : Stream.empty();
        return about.with(
                new Drill.Choice(right.id(), small(right.name()), right.text()),
                Stream.concat(nothing, wrong(step, random)),
                random);
    }

    private static String freed(List<Cut> free) {
        return "Something does come free here: "
                + Words.list(free.stream().map(cut -> small(cut.name())).toList()) + ".";
    }

    private String why(Step step) {
        List<Step> steps = worked.steps();
        return steps.subList(steps.indexOf(step) + 1, steps.size()).stream()
                .filter(later -> !worked.named(later).isEmpty())
                .findFirst()
                .map(later -> "Not every hold is cut yet. The next piece comes free at " + Worked.said(later) + ".")
                .orElse("Not every hold is cut yet.");
    }

    /** Cuts of the same stage first; none that comes free here, nor one of the very same bones. */
    private Stream<Drill.Choice> wrong(Step step, Random random) {
        List<Cut> here = worked.named(step);
        List<Cut> others = Drill.shuffled(worked.cuts(), random).stream()
                .filter(cut -> !here.contains(cut) && !worked.isNew(step.id(), cut) && comesElsewhere(step, cut))
                .toList();
        Stream<Cut> near =
                others.stream().filter(cut -> worked.frees(cut).stageId().equals(step.stageId()));
        return Stream.concat(near, others.stream())
                .map(cut -> new Drill.Choice(
                        cut.id(),
                        small(cut.name()),
                        cut.name() + ": comes free at " + Worked.said(worked.frees(cut)) + ". " + cut.text()));
    }

    /** A cut may come at more than one step. */
    private boolean comesElsewhere(Step step, Cut cut) {
        boolean here = step.frees().contains(cut.id()) || step.leaves().contains(cut.id());
        return !here && curriculum.stepThatFrees(cut.id()).isPresent();
    }

    static String small(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
