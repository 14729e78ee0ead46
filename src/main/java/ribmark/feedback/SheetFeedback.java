package ribmark.feedback;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Closing;
import ribmark.blocksheet.Mark;
import ribmark.blocksheet.StepRow;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;
import ribmark.weighing.PageLine;

/** The feedback of one closed sheet in words. */
public record SheetFeedback(
        BlockSheet sheet,
        Closing said,
        String day,
        String nextDay,
        List<StageSeen> stages,
        List<PageLine> yields,
        List<PageLine> trims,
        List<Answered> answers) {

    /** A stage with something marked: the sentence about it, and its steps. */
    public record StageSeen(String title, String seen, List<StepRow> rows) {}

    /** What the apprentice answered, and when. */
    public record Answered(String day, String agrees, String words) {}

    /** A pair of the ticket strip. */
    public record Pair(String caption, String value, boolean kept) {}

    /** One mark of a step: its word with the side, why it was given, and how the fault is mended. */
    public record Seen(String mark, String fault, String words, String mend) {}

    static SheetFeedback of(
            BlockSheet sheet, Breakdown breakdown, List<PageLine> weighed, List<Reply> replies, ZoneId zone) {
        Closing said = sheet.closing().orElseThrow();
        Map<PageLine.Kind, List<PageLine>> kinds = weighed.stream().collect(Collectors.groupingBy(PageLine::kind));
        return new SheetFeedback(
                sheet,
                said,
                Words.day(said.closedAt(), zone),
                Words.day(said.nextDay()),
                breakdown.stages().stream()
                        .map(stage -> seen(sheet, stage, said))
                        .filter(stage -> !stage.rows().isEmpty())
                        .toList(),
                kinds.getOrDefault(PageLine.Kind.YIELD, List.of()),
                kinds.getOrDefault(PageLine.Kind.TRIM, List.of()),
                replies.stream().map(reply -> answered(reply, zone)).toList());
    }

    private static StageSeen seen(BlockSheet sheet, Stage stage, Closing said) {
        List<StepRow> rows = stage.steps().stream()
                .filter(step -> !sheet.marksOf(step.id()).isEmpty())
                .map(step -> StepRow.of(sheet, step, "/feedback/" + sheet.id() + "/steps/" + step.id()))
                .toList();
        return new StageSeen(stage.title(), said.stage(stage.id()), rows);
    }

    private static Answered answered(Reply reply, ZoneId zone) {
        return new Answered(Words.day(reply.repliedAt(), zone), reply.agrees().word(), reply.words());
    }

    /** The ticket strip; whoever teaches also reads whose sheet it is. */
    public List<Pair> pairs(boolean own) {
        Stream<Pair> whose = own
                ? Stream.of()
                : Stream.of(new Pair("Apprentice", sheet.apprentice().name(), false));
        return Stream.concat(
                        whose,
                        Stream.of(
                                new Pair("Carcase", sheet.carcase().title(), false),
                                new Pair("Day", day, false),
                                new Pair("Watched by", sheet.assessor().name(), false)))
                .toList();
    }

    /** The newest answer in a word, for the stub. */
    public String answer() {
        return answers.isEmpty()
                ? "None yet"
                : Words.capital(answers.get(answers.size() - 1).agrees());
    }

    /** Every mark of a step, left before right. */
    List<Seen> seenAt(Step step) {
        return sheet.marksOf(step.id()).stream().map(mark -> seen(mark, step)).toList();
    }

    private static Seen seen(Mark mark, Step step) {
        Optional<Step.Fault> fault = mark.fault(step);
        return new Seen(
                Words.capital(sided(mark, mark.mark().word())),
                fault.map(Step.Fault::text).orElse(""),
                mark.words(),
                fault.map(Step.Fault::mend).orElse(""));
    }

    /** The marks of a step in one line: {@code Left: unaided, right: not yet}. */
    String marksInWords(Step step) {
        return Words.capital(sheet.marksOf(step.id()).stream()
                .map(mark -> sided(mark, mark.mark().word()))
                .collect(Collectors.joining(", ")));
    }

    private static String sided(Mark mark, String word) {
        return mark.side() == Side.ONCE ? word : mark.side().word() + ": " + word;
    }
}
