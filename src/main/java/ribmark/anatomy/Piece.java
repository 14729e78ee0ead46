package ribmark.anatomy;

import java.util.List;

/** One physical thing on the block: the parts that still hang together, in the order of the skeleton. */
public record Piece(List<Part> parts) {

    /** Keeps a copy. */
    public Piece {
        parts = List.copyOf(parts);
    }

    /** The names of its parts. */
    public List<String> names() {
        return parts.stream().map(Part::name).toList();
    }

    /** How many bones and parts of bones it holds. */
    public int size() {
        return parts.size();
    }

    /** The part that stands first in the order of the skeleton. */
    public Part first() {
        return parts.get(0);
    }
}
