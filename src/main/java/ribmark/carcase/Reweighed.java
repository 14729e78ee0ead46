package ribmark.carcase;

import java.time.Instant;
import java.util.Optional;
import ribmark.basics.Weight;
import ribmark.people.Person;

/**
 * A later weight of the whole carcase; hot or cold, kidneys in or out stay as they were at intake. The text is the weight as it was
 * typed, nothing where it was taken over; {@code record} is its place in the log.
 */
public record Reweighed(Weight weight, Optional<String> text, String scaleId, Person by, Instant at, long record) {}
