package ribmark.progress;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Mark;
import ribmark.competence.Standing;
import ribmark.curriculum.Breakdown;
import ribmark.people.Acting;
import ribmark.signing.RibStrip;
import ribmark.signing.StepRecord;
import ribmark.web.Role;

/** One apprentice on a page of their own: every step in words, and the closed sheets. */
public record PersonView(
        String title, String todo, RibStrip strip, String report, List<StageRows> stages, List<SheetRow> sheets) {

    /** One stage with its steps. */
    public record StageRows(String title, List<StepRow> rows) {}

    /** One step: where they stand, and who signed or what is still needed. */
    public record StepRow(String href, String step, String standing, String needed) {}

    /** One closed sheet. */
    public record SheetRow(UUID id, String day, String carcase, String assessor, int steps) {}

    static PersonView of(Progress progress, Breakdown breakdown, Acting reader) {
        boolean own = reader.id().equals(progress.id());
        String todo = progress.todo();
        return new PersonView(
                own ? "Where do you stand?" : "Where does " + progress.name() + " stand?",
                todo.isEmpty() ? "Nothing waits." : Words.capital(todo) + ".",
                RibStrip.of(breakdown, progress.record()),
                reader.as(Role.TUTOR) ? "/reports/apprentices/" + progress.id() : null,
                breakdown.stages().stream()
                        .map(stage -> new StageRows(
                                Words.capital(stage.title().toLowerCase(Locale.ROOT)),
                                progress.record().stage(stage.id()).stream()
                                        .map(step -> row(step, progress.zone()))
                                        .toList()))
                        .toList(),
                sheets(progress));
    }

    static StepRow row(StepRecord record, ZoneId zone) {
        return new StepRow(record.address(), record.name(), record.standing().word(), needed(record, zone));
    }

    private static String needed(StepRecord record, ZoneId zone) {
        if (record.standing() == Standing.SIGNED_OFF) {
            return record.signed()
                    .map(s -> "signed by " + s.assessor().name() + ", " + Words.day(s.signedAt(), zone))
                    .orElse("");
        }
        if (record.derived().mayBeSigned()) {
            return "a signature";
        }
        return record.standing() == Standing.NOT_STARTED ? "" : more(record);
    }

    private static String more(StepRecord record) {
        String missing = record.derived().missing().orElse("");
        int next = record.derived().tally().fewestNext();
        return Words.count(next, "more sheet", "more sheets") + ": "
                + missing.substring(missing.indexOf(": ") + 2).replaceFirst("\\.$", "");
    }

    private static List<SheetRow> sheets(Progress progress) {
        List<SheetRow> rows = new ArrayList<>();
        progress.record().closed().forEach(sheet -> rows.add(row(sheet, progress.zone())));
        Collections.reverse(rows);
        return rows;
    }

    private static SheetRow row(BlockSheet sheet, ZoneId zone) {
        return new SheetRow(
                sheet.id(),
                Words.day(sheet.closing().orElseThrow().closedAt(), zone),
                sheet.carcase().name(),
                sheet.assessor().name(),
                (int) sheet.marks().stream().map(Mark::stepId).distinct().count());
    }
}
