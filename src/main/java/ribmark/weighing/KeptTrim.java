package ribmark.weighing;

import java.util.UUID;
import ribmark.basics.Side;

/** A trim measure as it was read and typed for a block sheet; the newest of a measure and side counts. */
public record KeptTrim(UUID sheet, String measure, Side side, String value) {}
