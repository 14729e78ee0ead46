package ribmark.signing;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Closing;
import ribmark.competence.Mark;
import ribmark.competence.SheetEvidence;

/** What closed block sheets show of one step, in the form in which evidence is counted. */
final class StepEvidence {

    private StepEvidence() {}

    /** One piece of evidence for each closed sheet on which the step was marked; days are those of the college. */
    static List<SheetEvidence> of(List<BlockSheet> closed, String stepId, ZoneId zone) {
        return closed.stream()
                .filter(sheet -> !sheet.marksOf(stepId).isEmpty())
                .map(sheet -> of(sheet, stepId, zone))
                .toList();
    }

    private static SheetEvidence of(BlockSheet sheet, String stepId, ZoneId zone) {
        Map<Side, Mark> marks = new EnumMap<>(Side.class);
        sheet.marksOf(stepId).forEach(mark -> marks.put(mark.side(), mark.mark()));
        Closing closing = sheet.closing().orElseThrow();
        return new SheetEvidence(
                sheet.id().toString(),
                sheet.carcase().id().toString(),
                sheet.carcase().name().replace('\u00a0', ' '),
                sheet.assessor().id().toString(),
                sheet.assessor().name(),
                LocalDate.ofInstant(closing.closedAt(), zone),
                closing.evidenceSeq(),
                marks);
    }
}
