package ribmark.anatomy;

import java.util.List;
import ribmark.basics.Side;

/** A bone as it lies there now, whole or a half of it. */
public record Part(Bone bone, Halves halves) {

    /** The bone's id, then the halves: what an operation calls it. */
    public String name() {
        return bone.id() + halves;
    }

    /** Left or right where the bone or the half has a side, else once. */
    public Side side() {
        return bone.isMidline() ? halves.side() : bone.side();
    }

    /** The two halves a saw makes of it. */
    List<Part> sawn(Plane plane) {
        return plane.halvesOf(halves).stream().map(this::cutTo).toList();
    }

    Part at(End end) {
        return cutTo(halves.at(end));
    }

    Part on(Side side) {
        return cutTo(halves.on(side));
    }

    private Part cutTo(Halves half) {
        return new Part(bone, half);
    }

    @Override
    public String toString() {
        return name();
    }
}
