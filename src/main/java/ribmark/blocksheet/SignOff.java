package ribmark.blocksheet;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import ribmark.people.Person;

/** A name put to a step being shown, with what convinced whoever signed; a withdrawal is the later row that takes it back. */
public record SignOff(
        UUID id,
        UUID apprenticeId,
        String stepId,
        int turn,
        Person assessor,
        Instant signedAt,
        String convinced,
        long evidenceSeq,
        Optional<Withdrawal> withdrawal) {

    /** Who took it back, when and why. */
    public record Withdrawal(Person by, Instant withdrawnAt, String reason) {}

    /** Whether nobody has taken it back. */
    public boolean stands() {
        return withdrawal.isEmpty();
    }
}
