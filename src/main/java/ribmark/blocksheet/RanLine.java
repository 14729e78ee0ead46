package ribmark.blocksheet;

import java.util.List;

/** Where a line really ran at a step: the line, the end it moved to, how many places and the side, as content names them. */
public record RanLine(String stepId, String lineId, String towards, int places, String side) {

    /** As a way is asked for. */
    public List<String> words() {
        return List.of(lineId, towards, Integer.toString(places), side);
    }
}
