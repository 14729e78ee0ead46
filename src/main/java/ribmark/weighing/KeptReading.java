package ribmark.weighing;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.people.Person;

/** One piece put on the scale, as it was typed in; it is never edited, only taken off the list and weighed again. */
public record KeptReading(
        UUID id, UUID carcase, Typed typed, Person by, Instant recordedAt, long evidenceSeq, Optional<Struck> struck) {

    /**
     * What was typed: the piece, the reference row it is weighed for, the weight with the tray still in it, and for what has no
     * bones to tell, the larger piece it came out of. A later moment than the row means is balanced and not scored. The text is the
     * weight as it was typed, nothing where nobody typed it or it was not kept.
     */
    public record Typed(
            String cut,
            Optional<String> row,
            Side side,
            Weight weight,
            Optional<Weight> tare,
            String scale,
            boolean later,
            Optional<String> partOf,
            Optional<UUID> sheet,
            Optional<String> text) {

        /** A weight of which no text is known. */
        public Typed(
                String cut,
                Optional<String> row,
                Side side,
                Weight weight,
                Optional<Weight> tare,
                String scale,
                boolean later,
                Optional<String> partOf,
                Optional<UUID> sheet) {
            this(cut, row, side, weight, tare, scale, later, partOf, sheet, Optional.empty());
        }

        /** The same with the very text somebody typed for its weight. */
        Typed as(String typed) {
            return new Typed(cut, row, side, weight, tare, scale, later, partOf, sheet, Optional.of(typed));
        }
    }

    /** Why, by whom and when a reading was taken off the list. */
    public record Struck(String why, Person by, Instant at) {}

    /** Whether it still counts. */
    public boolean counts() {
        return struck.isEmpty();
    }

    /** What the piece itself weighs. */
    public Weight net() {
        return typed.weight().minus(typed.tare().orElse(Weight.NONE));
    }

    /** Whether both are readings of the same piece, weighed for the same row. */
    boolean isOfSamePiece(KeptReading other) {
        return typed.cut().equals(other.typed.cut())
                && typed.row().equals(other.typed.row())
                && typed.side() == other.typed.side();
    }
}
