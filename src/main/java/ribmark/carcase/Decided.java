package ribmark.carcase;

import java.time.Instant;
import ribmark.people.Person;

/** One decision about a carcase, its reason (empty when none was needed), who took it and when. */
public record Decided(Decision decision, String reason, Person by, Instant at) {}
