package ribmark.evidence;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;

/** What the check of the log found: whether it holds, and if not, the first record that does not fit and why. */
@JsonPropertyOrder({"holds", "records", "head", "firstThatDoesNotFit"})
public record Verification(
        boolean holds,
        long records,
        String head,
        Long firstThatDoesNotFit,
        @JsonIgnore String why) {

    static Verification good(Head head) {
        return new Verification(true, head.records(), head.root(), null, "Every record fits the one before it.");
    }

    static Verification broken(Head head, long first, String why) {
        return new Verification(false, head.records(), head.root(), first, why);
    }
}
