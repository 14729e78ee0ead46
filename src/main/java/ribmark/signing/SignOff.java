package ribmark.signing;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Refused;
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

    /** Refuses what can only be done to a sign-off that stands. */
    void mustStand() {
        if (!stands()) {
            throw new Refused("This sign-off was already withdrawn. Open the step again to see by whom and why.");
        }
    }
}
