package ribmark.carcase;

import java.time.Instant;
import java.util.OptionalInt;
import ribmark.people.Person;

/** The vertebrae of one animal as somebody counted them: those that carry ribs, those of the loin, or only one of the two; its record says what came before it. */
public record Counted(OptionalInt thoracic, OptionalInt lumbar, Person by, Instant at, long evidenceSeq) {}
