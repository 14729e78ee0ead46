package ribmark.blocksheet;

import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.carcase.Carcase;
import ribmark.curriculum.Step;
import ribmark.people.Acting;
import ribmark.people.Person;

/** One apprentice observed on one carcase: the steps and sides to watch, the marks given so far, and the closing once it is closed. */
public record BlockSheet(
        UUID id,
        String breakdownId,
        Carcase carcase,
        Person apprentice,
        Person assessor,
        Instant openedAt,
        Set<Place> scope,
        List<Mark> marks,
        List<Answer> answers,
        Optional<Closing> closing) {

    /** Keeps copies, the scope in the order worked. */
    public BlockSheet {
        scope = Collections.unmodifiableSet(new LinkedHashSet<>(scope));
        marks = List.copyOf(marks);
        answers = List.copyOf(answers);
    }

    /** Whether marks may still be given and taken back. */
    public boolean isOpen() {
        return closing.isEmpty();
    }

    /** Whether this person keeps the sheet. */
    public boolean isKeptBy(UUID person) {
        return assessor.id().equals(person);
    }

    /** The mark held by a step and side; no mark means not seen. */
    public Optional<Mark> mark(String stepId, Side side) {
        return mark(new Place(stepId, side));
    }

    /** The mark held at a place. */
    public Optional<Mark> mark(Place place) {
        return marks.stream().filter(mark -> mark.place().equals(place)).findFirst();
    }

    /** The marks of a step, left before right. */
    public List<Mark> marksOf(String stepId) {
        return marks.stream().filter(mark -> mark.stepId().equals(stepId)).toList();
    }

    /** What a step was called when it was marked last; what it is called now where it was not, or that was not kept. */
    public String title(Step now) {
        return marksOf(now.id()).stream()
                .max(Comparator.comparingLong(Mark::evidenceSeq))
                .flatMap(Mark::worded)
                .map(Worded::title)
                .orElse(now.title());
    }

    /** The sides of a step that are to be watched, in order. */
    public List<Side> sidesOf(String stepId) {
        return scope.stream()
                .filter(place -> place.stepId().equals(stepId))
                .map(Place::side)
                .toList();
    }

    /** The newest answer to a question. */
    public Optional<Answer> answer(String questionId) {
        return answers.stream()
                .filter(answer -> answer.questionId().equals(questionId))
                .reduce((older, newer) -> newer);
    }

    /** Lets only the assessor who keeps this sheet write on it, and only until it is closed. */
    public void mayBeWrittenBy(Acting acting) {
        if (apprentice.id().equals(acting.id())) {
            throw new Refused("Nobody marks themselves. Another assessor keeps this sheet.");
        }
        if (!isKeptBy(acting.id())) {
            throw new Refused("Only " + assessor.name() + ", who keeps this sheet, marks and closes it.");
        }
        if (!isOpen()) {
            throw new Refused("This sheet is closed. What stands on it stays; open a new sheet for what you see next.");
        }
    }
}
