package ribmark.signing;

import java.time.ZoneId;
import ribmark.basics.Refused;
import ribmark.basics.Words;
import ribmark.people.Acting;

/** When an assessor may put their name to a step; a yield or trim score is never asked for. */
final class Signing {

    private Signing() {}

    /** Says no, with the reason, unless the rule is met, no signature holds, and this assessor watched. */
    static void mustBeAllowed(StepRecord record, Acting assessor, ZoneId zone) {
        if (assessor.id().equals(record.apprentice().id())) {
            throw new Refused("Nobody signs for themselves. Ask another assessor who watched you.");
        }
        if (record.derived().mayBeSigned()) {
            mustHaveWatched(record, assessor);
            return;
        }
        String missing = record.derived().missing().orElse("");
        throw new Refused(
                missing.isEmpty()
                        ? alreadySigned(record, zone)
                        : "The evidence is not enough to sign step "
                                + record.step().number() + " off. " + missing);
    }

    private static void mustHaveWatched(StepRecord record, Acting assessor) {
        if (!record.wasWatchedBy(assessor.id())) {
            throw new Refused("Only somebody who closed one of the sheets that count signs: "
                    + String.join(" or ", record.derived().tally().assessorNames()) + ".");
        }
    }

    private static String alreadySigned(StepRecord record, ZoneId zone) {
        return record.signed()
                .map(s -> "Step " + record.step().number() + " was signed off already, by "
                        + s.assessor().name() + " on " + Words.day(s.signedAt(), zone) + ".")
                .orElse("There is nothing to sign.");
    }
}
