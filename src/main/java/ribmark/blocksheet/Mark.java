package ribmark.blocksheet;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Side;
import ribmark.curriculum.Step;

/** The assessor's word for one step and side, the fault it was given for, and what was seen in words. */
public record Mark(
        UUID id,
        String stepId,
        Side side,
        ribmark.competence.Mark mark,
        Optional<String> faultId,
        String words,
        Instant observedAt,
        Instant recordedAt,
        long evidenceSeq,
        Optional<Worded> worded) {

    /** The fault it was given for, as it was worded then; as the step words it now where that was not kept. */
    public Optional<Step.Fault> fault(Step now) {
        return faultId.flatMap(id -> worded.flatMap(then -> then.fault(id))
                .map(then -> new Step.Fault(id, then.text(), then.mend(), critical(then.critical())))
                .or(() -> now.fault(id)));
    }

    private static Optional<Step.Critical> critical(String word) {
        return Step.Critical.of(word.replace(' ', '-'));
    }

    /** Where it stands on the sheet. */
    public Place place() {
        return new Place(stepId, side);
    }

    /** Whether it is one of the two that must say why. */
    public boolean needsReason() {
        return mark == ribmark.competence.Mark.NOT_YET || mark == ribmark.competence.Mark.STOPPED;
    }

    /** Whether nobody can tell yet why it was given. */
    public boolean lacksReason() {
        return needsReason() && faultId.isEmpty() && words.isEmpty();
    }
}
