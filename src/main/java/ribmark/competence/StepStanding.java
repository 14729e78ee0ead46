package ribmark.competence;

import java.util.List;
import java.util.Optional;

/** A standing with what it was derived from: the sheets that count, what the rule still asks for, and the signature that holds. */
public record StepStanding(Standing standing, Tally tally, Optional<StepSignedOff> signedOff) {

    /** Whether an assessor may put their name to the step now: the rule is met and no signature holds. */
    public boolean mayBeSigned() {
        return standing != Standing.SIGNED_OFF && tally.isMet();
    }

    /** What is missing, as one sentence naming the fewest next observations; nothing when signed off or ready. */
    public Optional<String> missing() {
        return needsMore() ? Optional.of(new Missing(tally).sentence()) : Optional.empty();
    }

    /** For each block sheet still missing, the lines of its tag; empty when nothing is missing. */
    public List<List<String>> missingTags() {
        return needsMore() ? new Missing(tally).tags() : List.of();
    }

    private boolean needsMore() {
        return standing != Standing.SIGNED_OFF && !tally.isMet();
    }
}
