package ribmark.signing;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Mark;
import ribmark.curriculum.Step;

/** One closed sheet on which a step was seen, as a line of the evidence: the marks, and why where they say why. */
public record SeenRow(String href, String day, String carcase, String assessor, List<Cell> marks) {

    /** What one side holds; no mark means not seen. */
    public record Cell(String side, Word mark, String why) {}

    /** A mark as it stands in a table. */
    public record Word(String code, String word) {}

    /** All sheets on which the step was seen, newest first. */
    static List<SeenRow> newestFirst(StepRecord record, ZoneId zone) {
        List<SeenRow> rows = new ArrayList<>();
        record.seen().forEach(sheet -> rows.add(of(sheet, record.step(), zone)));
        Collections.reverse(rows);
        return rows;
    }

    private static SeenRow of(BlockSheet sheet, Step step, ZoneId zone) {
        return new SeenRow(
                "/feedback/" + sheet.id(),
                Words.day(sheet.closing().orElseThrow().closedAt(), zone),
                sheet.carcase().name(),
                sheet.assessor().name(),
                step.sides().stream().map(side -> cell(sheet, step, side)).toList());
    }

    private static Cell cell(BlockSheet sheet, Step step, Side side) {
        String caption = side == Side.ONCE ? "mark" : side.word();
        return sheet.mark(step.id(), side)
                .map(mark -> new Cell(
                        caption, new Word(mark.mark().code(), mark.mark().word()), why(mark, step)))
                .orElseGet(() -> new Cell(caption, null, null));
    }

    private static String why(Mark mark, Step step) {
        String said = Stream.concat(
                        mark.fault(step).map(Step.Fault::text).stream(),
                        Stream.of(mark.words()).filter(words -> !words.isEmpty()))
                .map(words -> words.matches("(?s).*[.!?]") ? words : words + ".")
                .collect(Collectors.joining(" "));
        return said.isEmpty() ? null : said;
    }
}
