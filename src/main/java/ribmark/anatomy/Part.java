package ribmark.anatomy;

import java.util.List;
import ribmark.basics.Side;

/** A bone as it lies there now, whole or a half of it; two of the same name are the same part. */
public final class Part {

    private final Bone bone;
    private final Halves halves;
    private final String name;

    Part(Bone bone, Halves halves) {
        this.bone = bone;
        this.halves = halves;
        this.name = halves.equals(Halves.WHOLE) ? bone.id() : bone.id() + halves;
    }

    /** The bone it is, or is a half of. */
    public Bone bone() {
        return bone;
    }

    /** Which half of it. */
    public Halves halves() {
        return halves;
    }

    /** The bone's id, then the halves: what an operation calls it. */
    public String name() {
        return name;
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
    public boolean equals(Object other) {
        return other instanceof Part part && name.equals(part.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
