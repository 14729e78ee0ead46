package ribmark.blocksheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;
import ribmark.web.Choice;
import ribmark.web.Form;

/** What was typed when a sheet is opened: who, how much of the breakdown, and which sides. */
final class OpeningForm {

    static final String WHOLE = "whole";
    private static final List<String> PARTS = List.of(WHOLE, "chosen");
    private static final List<String> SIDES = List.of("both", "left", "right");

    private final Breakdown breakdown;
    private final Form form;

    OpeningForm(Breakdown breakdown, Form form) {
        this.breakdown = breakdown;
        this.form = form;
    }

    /** Whether one side only is to be watched. */
    boolean oneSide() {
        return form.value("side").equals("left") || form.value("side").equals("right");
    }

    /** The steps and sides to watch, in the order worked; what is wrong is put beside its field. */
    Set<Place> scope() {
        form.oneOf("part", "How much", PARTS);
        form.oneOf("side", "Sides", SIDES);
        List<String> ticked = new ArrayList<>(form.all("stages"));
        ticked.addAll(form.all("steps"));
        boolean whole = form.value("part").equals(WHOLE);
        if (whole && !ticked.isEmpty()) {
            form.add(
                    "part",
                    "How much: the whole breakdown was chosen, and " + Words.count(ticked.size(), "line", "lines")
                            + " below ticked as well. Choose one or the other.");
        } else if (form.value("part").equals("chosen") && ticked.isEmpty()) {
            form.add("stages", "Stages: nothing was ticked. Tick a stage, or single steps below.");
        }
        Set<Place> scope = new LinkedHashSet<>();
        for (Stage stage : breakdown.stages()) {
            for (Step step : stage.steps()) {
                if (whole || form.chosen("stages", stage.id()) || form.chosen("steps", step.id())) {
                    scope.addAll(places(step));
                }
            }
        }
        return scope;
    }

    private List<Place> places(Step step) {
        return step.sides().stream()
                .filter(side -> side == Side.ONCE || !oneSide() || side.word().equals(form.value("side")))
                .map(side -> new Place(step.id(), side))
                .toList();
    }

    /** The places where something is cut or taken: on one carcase that can be done once. Looking, naming and cleaning each does alone. */
    static Set<Place> worked(Breakdown breakdown, Set<Place> scope) {
        Set<Place> worked = new LinkedHashSet<>(scope);
        worked.removeIf(place -> place.side() == Side.ONCE
                && breakdown.step(place.stepId()).orElseThrow().operations().isEmpty());
        return worked;
    }

    static List<Choice> parts(Breakdown breakdown) {
        return List.of(
                new Choice(
                        WHOLE,
                        "the whole breakdown",
                        "all " + Words.count(breakdown.steps().size()) + " steps"),
                new Choice("chosen", "only what is ticked below", null));
    }

    static List<Choice> sides() {
        return List.of(
                new Choice("both", "both sides", null),
                new Choice("left", "left side only", "and the steps done once that nobody else has open"),
                new Choice("right", "right side only", "and the steps done once that nobody else has open"));
    }

    static List<Choice> stages(Breakdown breakdown) {
        return breakdown.stages().stream()
                .map(stage -> new Choice(stage.id(), stage.title(), range(stage)))
                .toList();
    }

    private static String range(Stage stage) {
        List<Step> steps = stage.steps();
        return "steps " + steps.get(0).number() + " to "
                + steps.get(steps.size() - 1).number();
    }

    static List<Choice> steps(Breakdown breakdown) {
        return breakdown.steps().stream()
                .map(step -> new Choice(step.id(), step.number() + "\u00a0" + step.title(), null))
                .toList();
    }
}
