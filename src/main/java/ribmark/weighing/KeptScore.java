package ribmark.weighing;

import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import ribmark.people.Person;

/** A score as it was given: by which tables, in which version, with what each cut came to; it is never changed, a later one stands beside it. */
public record KeptScore(
        String tables,
        String version,
        String balance,
        OptionalLong yieldHundredths,
        List<String> cuts,
        Person by,
        Instant at) {

    /** Keeps its own copy. */
    public KeptScore {
        cuts = List.copyOf(cuts);
    }
}
