package ribmark.signing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import ribmark.blocksheet.BlockSheet;
import ribmark.competence.SheetEvidence;
import ribmark.competence.Standing;
import ribmark.competence.StepStanding;
import ribmark.curriculum.Step;
import ribmark.people.Person;

/** One apprentice on one step: the standing as derived today, every closed sheet it was seen on, every signature. */
public record StepRecord(
        Person apprentice, Step step, StepStanding derived, List<BlockSheet> seen, List<SignOff> signOffs) {

    /** Keeps copies, oldest first. */
    public StepRecord {
        seen = List.copyOf(seen);
        signOffs = List.copyOf(signOffs);
    }

    /** Where they stand. */
    public Standing standing() {
        return derived.standing();
    }

    /** Number and title, as a step is called on the page. */
    public String name() {
        return step.number() + " " + step.title();
    }

    /** The page that shows what is there and what is missing. */
    public String address() {
        return "/apprentices/" + apprentice.id() + "/steps/" + step.id();
    }

    /** The signature that holds, if one does. */
    public Optional<SignOff> signed() {
        return signOffs.stream().filter(SignOff::stands).reduce((older, newer) -> newer);
    }

    /** Whether an assessor closed at least one of the sheets that count. */
    public boolean wasWatchedBy(UUID assessor) {
        return derived.tally().counting().stream()
                .anyMatch(sheet -> sheet.assessor().equals(assessor.toString()));
    }

    /** The day on which the rule was first met by what counts now. */
    public Optional<LocalDate> readySince() {
        List<SheetEvidence> counting = derived.tally().counting();
        for (int many = 1; many <= counting.size(); many++) {
            LocalDate day = counting.get(many - 1).closedOn();
            StepStanding then = Standing.derivedFrom(
                    counting.subList(0, many), List.of(), derived.tally().rule(), step.eachSide(), day);
            if (then.mayBeSigned()) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    /** On how many closed sheets in a row, up to the newest, the step was not yet or stopped. */
    public int failedInARow() {
        int failed = 0;
        for (BlockSheet sheet : seen) {
            boolean afresh = sheet.marksOf(step.id()).stream()
                    .anyMatch(mark -> mark.mark().startsAfresh());
            failed = afresh ? failed + 1 : 0;
        }
        return failed;
    }
}
