package ribmark.blocksheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.curriculum.Step;

/** One step of a sheet as a line of a table: the marks it holds, why, and what was known when asked. */
public record StepRow(String number, String title, String href, Cell left, Cell right, String asked) {

    /** What one side holds. */
    public record Cell(String code, String word, String words) {

        static Cell of(Mark mark, Step step) {
            return new Cell(mark.mark().code(), mark.mark().word(), said(mark, step));
        }
    }

    /** The line of one step of a sheet. */
    public static StepRow of(BlockSheet sheet, Step step, String href) {
        return new StepRow(
                Integer.toString(step.number()),
                sheet.isOpen() ? step.title() : sheet.title(step),
                href,
                sheet.mark(step.id(), step.eachSide() ? Side.LEFT : Side.ONCE)
                        .map(mark -> Cell.of(mark, step))
                        .orElse(null),
                sheet.mark(step.id(), Side.RIGHT)
                        .map(mark -> Cell.of(mark, step))
                        .orElse(null),
                asked(sheet, step));
    }

    /** Why a mark was given: the fault tapped, then the words typed. */
    static String said(Mark mark, Step step) {
        Optional<String> fault = mark.fault(step).map(Step.Fault::text);
        return Stream.of(fault, Optional.of(mark.words()).filter(words -> !words.isEmpty()))
                .flatMap(Optional::stream)
                .map(words -> words.matches("(?s).*[.!?]") ? words : words + ".")
                .collect(Collectors.joining(" "));
    }

    private static String asked(BlockSheet sheet, Step step) {
        List<String> known = step.questions().stream()
                .flatMap(question -> sheet.answer(question.id()).stream())
                .map(answer -> answer.answered().words())
                .toList();
        return known.isEmpty() ? "" : "Asked: " + String.join(", ", known) + ".";
    }
}
