package ribmark.blocksheet;

import java.util.List;
import java.util.Optional;
import ribmark.basics.NotFound;
import ribmark.basics.Side;
import ribmark.carcase.ThisAnimal;
import ribmark.competence.Mark;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;

/** The way through a sheet: its steps in the order worked, and where the assessor goes from here. */
record Walk(ThisAnimal animal, Breakdown usual, BlockSheet sheet) {

    /** The sheet's own animal, as far as it was counted. */
    static Walk of(BlockSheet sheet, Curriculum usual) {
        return new Walk(ThisAnimal.of(sheet.carcase(), usual), usual.breakdown(), sheet);
    }

    /** The breakdown on the animal of this sheet. */
    Breakdown breakdown() {
        return animal.curriculum().breakdown();
    }

    /** A step of the breakdown, on the sheet or not. */
    Step step(String id) {
        return breakdown().step(id).orElseThrow(NotFound::new);
    }

    /** The stages that have something to watch. */
    List<Stage> stages() {
        return breakdown().stages().stream()
                .filter(stage -> !steps(stage).isEmpty())
                .toList();
    }

    /** The steps of a stage that are to be watched. */
    List<Step> steps(Stage stage) {
        return stage.steps().stream()
                .filter(step -> !sheet.sidesOf(step.id()).isEmpty())
                .toList();
    }

    /** The steps to be watched. */
    List<Step> steps() {
        return breakdown().stages().stream()
                .flatMap(stage -> steps(stage).stream())
                .toList();
    }

    /** Every step and side to be watched. */
    List<Place> places() {
        return steps().stream()
                .flatMap(step -> sheet.sidesOf(step.id()).stream().sorted().map(side -> new Place(step.id(), side)))
                .toList();
    }

    /** The step before or after another one, among those to be watched. */
    Optional<Step> beside(Step step, int by) {
        List<Step> steps = steps();
        int at = steps.indexOf(step) + by;
        return steps.contains(step) && at >= 0 && at < steps.size() ? Optional.of(steps.get(at)) : Optional.empty();
    }

    /** The side a step opens on: the first without a mark, else the first. */
    Side side(Step step) {
        List<Side> sides = sheet.sidesOf(step.id()).stream().sorted().toList();
        return sides.stream()
                .filter(side -> sheet.mark(step.id(), side).isEmpty())
                .findFirst()
                .orElseGet(() -> sides.stream().findFirst().orElseThrow(NotFound::new));
    }

    /** Where one mark leads: to the other side, then to the next place without a mark; nowhere after the last. A stop ends the step. */
    Optional<Place> after(Place place, Mark mark) {
        Optional<Place> other = places().stream()
                .filter(next -> next.stepId().equals(place.stepId()) && isFree(next) && !next.equals(place))
                .filter(next -> mark != Mark.STOPPED)
                .findFirst();
        return other.or(() -> onwards(place));
    }

    private Optional<Place> onwards(Place place) {
        List<Place> all = places();
        return all.subList(all.indexOf(place) + 1, all.size()).stream()
                .filter(next -> !next.stepId().equals(place.stepId()) && isFree(next))
                .findFirst();
    }

    /** Where to go on with a sheet found again: after the last mark, or at the first place without one. */
    Optional<Place> next() {
        List<Place> all = places();
        int last = -1;
        for (int at = 0; at < all.size(); at++) {
            last = sheet.mark(all.get(at)).isPresent() ? at : last;
        }
        return all.subList(last + 1, all.size()).stream()
                .findFirst()
                .or(() -> all.stream().filter(this::isFree).findFirst());
    }

    private boolean isFree(Place place) {
        return sheet.mark(place).isEmpty();
    }
}
