package ribmark.blocksheet;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Side;

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
        long evidenceSeq) {

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
