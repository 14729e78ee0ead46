package ribmark.competence;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ribmark.basics.Side;

/** What one closed block sheet shows of one step; {@code sequence} is its place in the evidence log, which alone gives the order. */
public record SheetEvidence(
        String sheet,
        String carcase,
        String carcaseName,
        String assessor,
        String assessorName,
        LocalDate closedOn,
        long sequence,
        Map<Side, Mark> marks) {

    /** Keeps its own copy of the marks, left before right. */
    public SheetEvidence {
        marks = Map.copyOf(marks);
    }

    /** The marks, left before right. */
    public Map<Side, Mark> marksInOrder() {
        return new TreeMap<>(marks);
    }

    /** Whether anything was seen of the step at all. */
    public boolean isMarked() {
        return !marks.isEmpty();
    }

    /** Every side marked on it is unaided. */
    public boolean counts() {
        return isMarked() && marks.values().stream().allMatch(mark -> mark == Mark.UNAIDED);
    }

    /** Something on it was not yet or stopped, so that earlier evidence no longer counts. */
    public boolean startsAfresh() {
        return marks.values().stream().anyMatch(Mark::startsAfresh);
    }

    /** The sides it shows. */
    Set<Side> sides() {
        Set<Side> sides = new TreeSet<>();
        for (Side side : marks.keySet()) {
            sides.addAll(side == Side.BOTH ? Set.of(Side.LEFT, Side.RIGHT) : Set.of(side));
        }
        return sides;
    }
}
