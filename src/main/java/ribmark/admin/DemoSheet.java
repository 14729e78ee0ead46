package ribmark.admin;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.blocksheet.Draft;
import ribmark.blocksheet.Place;
import ribmark.competence.Mark;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;

/**
 * One block sheet of the demo as its file gives it. A place is named by its stage, by its step, or by step and side; what is
 * named more closely wins, so that a whole stage can be unaided but for one side of one step.
 */
record DemoSheet(
        String opened,
        String closed,
        int lamb,
        String assessor,
        String side,
        List<String> watch,
        List<String> unaided,
        List<String> prompted,
        Map<String, String> notYet,
        Map<String, String> stopped,
        Map<String, String> ran,
        Map<String, String> words,
        Map<String, String> asked,
        Map<String, String> measured,
        Map<String, String> seen,
        String well,
        String change,
        String next,
        int dueInDays) {

    /** What an assessor marked at a place. */
    record Given(Place place, Mark mark, Optional<String> fault, String words) {}

    /** What is left out of a file has not happened. */
    DemoSheet {
        DemoFile.needed(opened, "opened");
        DemoFile.needed(assessor, "assessor");
        unaided = unaided == null ? List.of() : unaided;
        prompted = prompted == null ? List.of() : prompted;
        notYet = notYet == null ? Map.of() : notYet;
        stopped = stopped == null ? Map.of() : stopped;
        ran = ran == null ? Map.of() : ran;
        words = words == null ? Map.of() : words;
        asked = asked == null ? Map.of() : asked;
        measured = measured == null ? Map.of() : measured;
        seen = seen == null ? Map.of() : seen;
    }

    boolean isClosed() {
        return closed != null;
    }

    /** The steps and sides to watch, in the order worked. */
    Set<Place> scope(Breakdown breakdown) {
        Set<Place> scope = new LinkedHashSet<>();
        for (Stage stage : breakdown.stages()) {
            stage.steps().stream()
                    .flatMap(step -> sides(step).stream().map(s -> new Place(step.id(), s)))
                    .filter(place ->
                            watch == null || watch.stream().anyMatch(name -> closeness(name, place, stage) > 0))
                    .forEach(scope::add);
        }
        return scope;
    }

    private List<Side> sides(Step step) {
        if (!step.eachSide()) {
            return List.of(Side.ONCE);
        }
        return side == null ? List.of(Side.LEFT, Side.RIGHT) : List.of(side(side));
    }

    /** Every mark given, in the order worked. */
    List<Given> given(Breakdown breakdown) {
        Set<Place> scope = scope(breakdown);
        return scope.stream().flatMap(place -> given(breakdown, place).stream()).toList();
    }

    private Optional<Given> given(Breakdown breakdown, Place place) {
        Stage stage = stageOf(breakdown, place.stepId());
        Given closest = null;
        int reached = 0;
        for (Mark mark : Mark.values()) {
            for (String name : named(mark)) {
                int closeness = closeness(name, place, stage);
                if (closeness > reached) {
                    reached = closeness;
                    closest = new Given(place, mark, fault(mark, name), wordsAt(place));
                }
            }
        }
        return Optional.ofNullable(closest);
    }

    private Iterable<String> named(Mark mark) {
        return switch (mark) {
            case UNAIDED -> unaided;
            case PROMPTED -> prompted;
            case NOT_YET -> notYet.keySet();
            case STOPPED -> stopped.keySet();
        };
    }

    private Optional<String> fault(Mark mark, String name) {
        Map<String, String> faults = mark == Mark.NOT_YET ? notYet : mark == Mark.STOPPED ? stopped : Map.of();
        return Optional.ofNullable(faults.get(name)).filter(fault -> !fault.equals("in words"));
    }

    private String wordsAt(Place place) {
        return words.getOrDefault(place.text(), words.getOrDefault(place.stepId(), ""));
    }

    /** The stage a step belongs to. */
    static Stage stageOf(Breakdown breakdown, String stepId) {
        return breakdown.stages().stream()
                .filter(stage ->
                        stage.steps().stream().anyMatch(step -> step.id().equals(stepId)))
                .findFirst()
                .orElseThrow(() -> new Refused("“" + stepId + "” is no step."));
    }

    private static int closeness(String name, Place place, Stage stage) {
        if (name.equals(place.text())) {
            return 3;
        }
        return name.equals(place.stepId()) ? 2 : name.equals(stage.id()) ? 1 : 0;
    }

    /** The side a word names. */
    static Side side(String word) {
        return Side.of(word).orElseThrow(() -> new Refused("“" + word + "” is no side."));
    }

    /** What was said at the end. */
    Draft said(LocalDate due) {
        return new Draft(seen, orNothing(well), orNothing(change), orNothing(next), due.toString());
    }

    private static String orNothing(String text) {
        return text == null ? "" : text;
    }
}
