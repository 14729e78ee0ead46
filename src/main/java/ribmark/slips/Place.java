package ribmark.slips;

import ribmark.basics.Side;
import ribmark.scoring.ReferenceTable.Row;

/** Where weights belong: a row of the table, both sides together or one of them. */
record Place(int index, Row row, Side side) {

    /** How much of the pair is here. */
    double share() {
        return side == Side.BOTH ? 1 : 0.5;
    }

    /** How much of what a side loses is lost here; both sides lose all of it. */
    double shareOf(Side of) {
        if (side == Side.BOTH) {
            return of == Side.BOTH ? 1 : 0.5;
        }
        return of == Side.BOTH || of == side ? 0.5 : 0;
    }

    /** Which way a difference between left and right counts here. */
    int sign() {
        return side == Side.LEFT ? 1 : side == Side.RIGHT ? -1 : 0;
    }

    boolean takes(String cut, Side typed) {
        return row.cut().equals(cut) && (side == Side.BOTH || side == typed);
    }
}
