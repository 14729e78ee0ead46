package ribmark.anatomy;

import java.util.List;
import java.util.stream.Stream;
import ribmark.basics.Side;

/** What still holds two parts together: one share of a joint. */
record Contact(Joint joint, Halves share, Part a, Part b) {

    static Contact whole(Joint joint, Bone a, Bone b) {
        return new Contact(joint, Halves.WHOLE, new Part(a, Halves.WHOLE), new Part(b, Halves.WHOLE));
    }

    String name() {
        return joint.id() + share;
    }

    /** What becomes of it when one of its two parts is sawn. */
    Stream<Contact> whenSawn(Part part, Plane plane) {
        return plane == Plane.ACROSS ? whenSawnAcross(part) : whenSawnOnMidline(part);
    }

    /** It goes to the half at its own end; one that sits all along is divided, unless its name says already where it sits. */
    private Stream<Contact> whenSawnAcross(Part part) {
        End end = a.equals(part) ? joint.endA() : joint.endB();
        if (end != End.BOTH) {
            return Stream.of(onto(part, part.at(end), share));
        }
        List<Part> halves = part.sawn(Plane.ACROSS);
        return halves.stream()
                .filter(half -> share.beginsWith(half.halves()))
                .findFirst()
                .map(half -> Stream.of(onto(part, half, share)))
                .orElseGet(() -> Stream.of(End.NEAR, End.FAR).map(half -> onto(part, part.at(half), share.at(half))));
    }

    /** It goes to the side of its other bone; between two midline bones it is divided, unless it has a side already. */
    private Stream<Contact> whenSawnOnMidline(Part part) {
        Bone other = (a.equals(part) ? b : a).bone();
        Side side = other.isMidline() ? share.side() : other.side();
        return side == Side.ONCE
                ? Stream.of(Side.LEFT, Side.RIGHT).map(half -> onto(part, part.on(half), share.on(half)))
                : Stream.of(onto(part, part.on(side), share));
    }

    /** The joint tells nearly all of them apart; hashing every word of it and its bones would cost more than it saves. */
    @Override
    public int hashCode() {
        return joint.id().hashCode();
    }

    private Contact onto(Part sawn, Part half, Halves itsShare) {
        return a.equals(sawn) ? new Contact(joint, itsShare, half, b) : new Contact(joint, itsShare, a, half);
    }
}
