package ribmark.export;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import ribmark.blocksheet.BlockSheet;
import ribmark.competence.Tally;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Stage;
import ribmark.signing.ApprenticeRecord;
import ribmark.signing.StepRecord;

/** The rows of the progress report, one for each apprentice and step, for whoever writes them to a page or a file. */
public final class ProgressRows {

    private ProgressRows() {}

    /** All steps of these apprentices, in their order and the order worked; days are those of the college. */
    public static List<ProgressRow> of(List<ApprenticeRecord> records, Breakdown breakdown, ZoneId zone) {
        return records.stream()
                .flatMap(record -> breakdown.stages().stream().flatMap(stage -> rows(record, stage, zone)))
                .toList();
    }

    private static Stream<ProgressRow> rows(ApprenticeRecord record, Stage stage, ZoneId zone) {
        return record.stage(stage.id()).stream().map(step -> row(step, stage, zone));
    }

    private static ProgressRow row(StepRecord step, Stage stage, ZoneId zone) {
        Tally tally = step.derived().tally();
        return new ProgressRow(
                step.apprentice().name(),
                step.step().number(),
                step.step().id(),
                step.step().title(),
                stage.title(),
                step.standing().word(),
                tally.sheets(),
                step.seen().size(),
                tally.carcaseNames().size(),
                tally.assessorNames().size(),
                tally.newest(),
                step.signed().map(s -> s.assessor().name()),
                step.signed().map(s -> LocalDate.ofInstant(s.signedAt(), zone)),
                step.seen().stream().map(sheet -> behind(sheet, zone)).toList());
    }

    private static ProgressRow.Behind behind(BlockSheet sheet, ZoneId zone) {
        return new ProgressRow.Behind(
                sheet.id(),
                sheet.carcase().name().replace('\u00a0', ' '),
                LocalDate.ofInstant(sheet.closing().orElseThrow().closedAt(), zone),
                sheet.assessor().name());
    }
}
