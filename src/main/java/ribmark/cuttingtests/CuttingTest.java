package ribmark.cuttingtests;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import ribmark.people.Person;
import ribmark.scoring.Conditions;

/**
 * A carcase cut by somebody competent: what each cut came to in percent of the cold carcase, how it was dressed, who cut it, and who
 * entered it. One that no longer counts says in the same words why.
 */
public record CuttingTest(
        UUID carcase,
        boolean counts,
        Map<String, Double> percents,
        Conditions conditions,
        String words,
        Person by,
        Instant at,
        long record) {

    /** Keeps its own copy. */
    public CuttingTest {
        percents = Map.copyOf(percents);
    }
}
