package ribmark.signing;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import ribmark.basics.NotFound;
import ribmark.blocksheet.BlockSheet;
import ribmark.competence.Standing;
import ribmark.people.Person;

/** One apprentice on every step of a breakdown, with all their closed sheets: derived when asked for, never kept. */
public record ApprenticeRecord(Person apprentice, List<StepRecord> steps, List<BlockSheet> closed) {

    /** Keeps copies, in the order worked and the order closed. */
    public ApprenticeRecord {
        steps = List.copyOf(steps);
        closed = List.copyOf(closed);
    }

    /** One step, or nothing here. */
    public StepRecord step(String id) {
        return steps.stream()
                .filter(record -> record.step().id().equals(id))
                .findFirst()
                .orElseThrow(NotFound::new);
    }

    /** The steps of a stage, in the order worked. */
    public List<StepRecord> stage(String id) {
        return steps.stream()
                .filter(record -> record.step().stageId().equals(id))
                .toList();
    }

    /** How many steps have this standing. */
    public int count(Standing standing) {
        return (int)
                steps.stream().filter(record -> record.standing() == standing).count();
    }

    /** How many steps an assessor may sign now. */
    public int toSign() {
        return (int)
                steps.stream().filter(record -> record.derived().mayBeSigned()).count();
    }

    /** The day the newest sheet was closed, in the college's own zone. */
    public Optional<LocalDate> lastSeen(ZoneId zone) {
        return closed.stream()
                .reduce((older, newer) -> newer)
                .flatMap(BlockSheet::closing)
                .map(closing -> LocalDate.ofInstant(closing.closedAt(), zone));
    }
}
