package ribmark.slips;

import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;

/**
 * An entry that looks like a slip: what should probably stand in its field, why, and how probably. The carcase's own entry has no
 * row in the table and is named as the caller named it; an exchange makes two of these.
 */
public record Suspect(String cut, Optional<Side> side, Optional<Weight> likely, Cause because, double probability) {}
