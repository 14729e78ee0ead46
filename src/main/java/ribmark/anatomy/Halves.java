package ribmark.anatomy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;

/**
 * Which half of which half something is: first left or right of the midline, then near or far for every saw across,
 * whichever saw came first.
 */
public record Halves(Side side, List<End> ends) implements Comparable<Halves> {

    /** Never sawn. */
    public static final Halves WHOLE = new Halves(Side.ONCE, List.of());

    /** Keeps a copy of the ends. */
    public Halves {
        ends = List.copyOf(ends);
    }

    /** Reads the words after an id, such as {@code left}, {@code near}, {@code far}; nothing when they make no sense. */
    static Optional<Halves> read(List<String> words) {
        Side side = words.isEmpty() ? Side.ONCE : sideOf(words.get(0));
        List<End> ends = new ArrayList<>();
        for (String word : side == Side.ONCE ? words : words.subList(1, words.size())) {
            End.of(word).filter(end -> end != End.BOTH).ifPresent(ends::add);
        }
        boolean allRead = ends.size() + (side == Side.ONCE ? 0 : 1) == words.size();
        return allRead ? Optional.of(new Halves(side, ends)) : Optional.empty();
    }

    private static Side sideOf(String word) {
        return Side.of(word)
                .filter(side -> side == Side.LEFT || side == Side.RIGHT)
                .orElse(Side.ONCE);
    }

    /** The left or right half of this. */
    Halves on(Side half) {
        return new Halves(half, ends);
    }

    /** The near or far half of this. */
    Halves at(End half) {
        List<End> longer = new ArrayList<>(ends);
        longer.add(half);
        return new Halves(side, longer);
    }

    /** Whether this has been halved on the midline. */
    public boolean isSided() {
        return side != Side.ONCE;
    }

    /** Whether the ends of this begin with the ends of the other. */
    boolean beginsWith(Halves other) {
        return ends.size() >= other.ends.size()
                && ends.subList(0, other.ends.size()).equals(other.ends);
    }

    /** Whether the other is this very half or was cut from it. */
    boolean holds(Halves other) {
        return (!isSided() || side == other.side) && other.beginsWith(this);
    }

    /** What is in both, if anything: the smaller of two of which one was cut from the other, or where two saws cross. */
    Optional<Halves> with(Halves other) {
        boolean apart = isSided() && other.isSided() && side != other.side;
        if (apart || !beginsWith(other) && !other.beginsWith(this)) {
            return Optional.empty();
        }
        return Optional.of(
                new Halves(isSided() ? side : other.side, ends.size() > other.ends.size() ? ends : other.ends));
    }

    /** What is written after the id, with the points. */
    @Override
    public String toString() {
        StringBuilder words = new StringBuilder(isSided() ? "." + side.word() : "");
        ends.forEach(end -> words.append('.').append(end.word()));
        return words.toString();
    }

    /** Whole, then left before right, then near before far. */
    @Override
    public int compareTo(Halves other) {
        return Comparator.comparing(Halves::side)
                .thenComparing(Halves::compareEnds)
                .compare(this, other);
    }

    private int compareEnds(Halves other) {
        for (int at = 0; at < Math.min(ends.size(), other.ends.size()); at++) {
            int order = ends.get(at).compareTo(other.ends.get(at));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(ends.size(), other.ends.size());
    }
}
