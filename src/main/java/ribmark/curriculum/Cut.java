package ribmark.curriculum;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;

/**
 * A named piece of the carcase. Its bones are those of the usual animal; a piece that comes from each side lists the left
 * bones under left and the right ones under right. Its rows are those of reference tables that weigh it; a moment is given when
 * it comes to the scale later than those rows mean.
 */
public record Cut(
        String id,
        String name,
        boolean each,
        Becomes becomes,
        List<Holding> holdings,
        List<String> rows,
        Optional<String> moment,
        String text,
        List<SameAs> sameAs,
        List<RestsOn> restsOn) {

    /** What happens to a piece once it is free. */
    public enum Becomes {
        PARTED,
        SALEABLE,
        BONE,
        OFFCUT;

        /** The word in files. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** The parts of bones one piece of this name holds; a second one for a side is for an optional step left out. */
    public record Holding(Side side, List<String> parts) {}

    /**
     * The same piece in a published standard. Where its boundary was read there, the source of that reading is given, with the
     * bones of the usual animal in which the two differ.
     */
    public record SameAs(
            String system,
            String number,
            Optional<String> note,
            String source,
            String basis,
            Optional<String> readIn,
            List<String> differs) {}

    /** The parts of bones on a side, as the piece comes when every optional step is done; empty for a piece without bones. */
    public List<String> bones(Side side) {
        return holdings.stream()
                .filter(holding -> holding.side() == side)
                .findFirst()
                .map(Holding::parts)
                .orElse(List.of());
    }

    /** The sides it comes from: left and right, or once. */
    public List<Side> sides() {
        return each ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.ONCE);
    }

    /** Whether it is a piece without bones. */
    public boolean isBoneless() {
        return holdings.isEmpty();
    }

    /** Whether work on it ends here, whatever becomes of it. */
    public boolean isFinal() {
        return becomes != Becomes.PARTED;
    }
}
