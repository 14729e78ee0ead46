package ribmark.blocksheet;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import ribmark.carcase.ThisAnimal;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.curriculum.StepPicture;
import ribmark.moved.Outcome;
import ribmark.moved.Way;

/** Where lines really ran on a sheet, as readers see it: in words, with what it did to the bones of that very animal, and drawn. */
public final class RanLines {

    /** One of them: the step, how the line ran, what that did, where more is read, and how it looks. */
    public record View(
            int number, String step, String says, List<String> sentences, String href, List<StepPicture> pictures) {}

    private final RanLineStore store;
    private final Supplier<Curriculum> curriculum;
    private final BiFunction<Curriculum, Way, List<StepPicture>> pictures;

    /** The pictures are those of the animal on the sheet. */
    public RanLines(
            RanLineStore store,
            Supplier<Curriculum> curriculum,
            BiFunction<Curriculum, Way, List<StepPicture>> pictures) {
        this.store = store;
        this.curriculum = curriculum;
        this.pictures = pictures;
    }

    RanLineStore store() {
        return store;
    }

    /** All that hold on a sheet, in the order worked. */
    public List<View> of(BlockSheet sheet) {
        List<RanLine> all = store.allOf(sheet.id());
        if (all.isEmpty()) {
            return List.of();
        }
        ThisAnimal animal = ThisAnimal.of(sheet.carcase(), curriculum.get());
        return animal.curriculum().breakdown().steps().stream()
                .flatMap(step -> all.stream()
                        .filter(ran -> ran.stepId().equals(step.id()))
                        .map(ran -> view(animal, step, ran)))
                .toList();
    }

    /** A line that content no longer knows is told in the words it was recorded in. */
    private View view(ThisAnimal animal, Step step, RanLine ran) {
        Curriculum own = animal.curriculum();
        String formula = animal.query().replace("?", "&");
        return Way.of(own.breakdown(), ran.words())
                .map(way -> new View(
                        step.number(),
                        step.title(),
                        way.says(),
                        Outcome.of(own, way).sentences(),
                        way.address(step.id()) + formula,
                        pictures.apply(own, way)))
                .orElseGet(() -> new View(
                        step.number(),
                        step.title(),
                        "The line “" + ran.lineId() + "” ran elsewhere: " + ran.towards() + ", " + ran.places() + ", "
                                + ran.side(),
                        List.of(),
                        null,
                        List.of()));
    }
}
