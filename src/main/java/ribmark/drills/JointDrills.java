package ribmark.drills;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import ribmark.anatomy.Joint;
import ribmark.basics.Words;
import ribmark.curriculum.Step;

/** Which joint or soft edge opens at a step. */
final class JointDrills implements DrillMaker {

    private final Worked worked;
    private final InWords words;

    JointDrills(Worked worked, InWords words) {
        this.worked = worked;
        this.words = words;
    }

    @Override
    public DrillKind kind() {
        return DrillKind.JOINT;
    }

    @Override
    public List<Subject> subjects() {
        return worked.steps().stream()
                .filter(step -> !openedWhole(step).isEmpty())
                .map(step -> new Subject(step.id(), step.id(), step.title()))
                .toList();
    }

    /** What the step opens, said so that everything called the same is opened too. */
    private List<String> openedWhole(Step step) {
        return words.joints().stream()
                .filter(said -> words.joints(said).stream().allMatch(joint -> opens(step, joint)))
                .toList();
    }

    private boolean opens(Step step, Joint joint) {
        return worked.opened(step.id()).contains(joint.id());
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Step step = worked.step(subject.id());
        String right = Drill.oneOf(openedWhole(step), random);
        Drill.About about = new Drill.About(
                kind(), List.of(step.id()), "At “" + step.title() + "”, which of these opens?", words.bonesOf(right));
        String why = joins(right) + "It opens here.";
        return about.with(new Drill.Choice(id(right), right, why), wrong(step, random), random);
    }

    private String id(String said) {
        return words.joints(said).get(0).id();
    }

    /** First those that hold a bone the step works on, then any; none of them opened here, not even on one side. */
    private Stream<Drill.Choice> wrong(Step step, Random random) {
        List<String> worksOn = openedWhole(step).stream()
                .flatMap(said -> words.bonesOf(said).stream())
                .toList();
        List<String> closed = Drill.shuffled(words.joints(), random).stream()
                .filter(said -> words.joints(said).stream().noneMatch(joint -> opens(step, joint)))
                .toList();
        Stream<String> near =
                closed.stream().filter(said -> words.bonesOf(said).stream().anyMatch(worksOn::contains));
        return Stream.concat(near, closed.stream()).map(said -> new Drill.Choice(id(said), said, teaches(said)));
    }

    private String joins(String said) {
        return Words.capital(said) + ": " + words.holds(said) + ". ";
    }

    private String teaches(String said) {
        Optional<Step> opens = words.joints(said).stream()
                .flatMap(joint -> worked.opens(joint.id()).stream())
                .findFirst();
        return joins(said)
                + opens.map(step -> "It opens at " + Worked.said(step) + ".").orElse("It stays closed to the end.");
    }
}
