package ribmark.blocksheet;

import ribmark.basics.Side;

/** One thing to watch: a step, and the side it is done on; once for a step without sides. */
public record Place(String stepId, Side side) {

    /** How it stands in the log. */
    public String text() {
        return stepId + "/" + side.word();
    }
}
