package ribmark.export;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Mark;
import ribmark.curriculum.Breakdown;
import ribmark.signing.ApprenticeRecord;
import ribmark.signing.RibStrip;

/** One apprentice in a report: the strip, every step with what stands behind it, and the block sheets themselves. */
public record PersonReport(
        UUID id, String name, RibStrip strip, List<StageRows> stages, List<SheetRow> sheets, boolean links) {

    /** One stage with its steps. */
    public record StageRows(String title, List<StepRow> rows) {}

    /** One step; counts are empty where nothing was seen. */
    public record StepRow(
            String step,
            String standing,
            String counts,
            String carcases,
            String assessors,
            String signed,
            List<Behind> behind) {}

    /** One assessor and the sheets on which they saw the step. */
    public record Behind(String assessor, List<Sheet> sheets) {}

    /** A sheet, named by its carcase. */
    public record Sheet(UUID id, String carcase) {}

    /** A closed sheet with its place in the evidence log. */
    public record SheetRow(String carcase, String day, String assessor, int steps, long record) {}

    static PersonReport of(ApprenticeRecord record, Breakdown breakdown, ZoneId zone, boolean links) {
        List<ProgressRow> rows = ProgressRows.of(List.of(record), breakdown, zone);
        return new PersonReport(
                record.apprentice().id(),
                record.apprentice().name(),
                RibStrip.of(breakdown, record),
                breakdown.stages().stream()
                        .map(stage -> new StageRows(
                                stage.title().toLowerCase(Locale.ROOT),
                                rows.stream()
                                        .filter(row -> row.stage().equals(stage.title()))
                                        .map(PersonReport::row)
                                        .toList()))
                        .toList(),
                record.closed().stream().map(sheet -> sheet(sheet, zone)).toList(),
                links);
    }

    private static StepRow row(ProgressRow row) {
        boolean seen = row.seen() > 0;
        return new StepRow(
                row.number() + " " + row.step(),
                row.standing(),
                seen ? row.unaided() + " of " + row.seen() : "",
                seen ? Integer.toString(row.carcases()) : "",
                seen ? Integer.toString(row.assessors()) : "",
                row.signedBy()
                        .map(by -> by + ", " + Words.day(row.signedOn().orElseThrow()))
                        .orElse(""),
                behind(row));
    }

    private static List<Behind> behind(ProgressRow row) {
        Map<String, List<Sheet>> byAssessor = new LinkedHashMap<>();
        row.behind()
                .forEach(b -> byAssessor
                        .computeIfAbsent(b.assessor(), who -> new ArrayList<>())
                        .add(new Sheet(b.sheet(), b.carcase().replace(' ', '\u00a0'))));
        return byAssessor.entrySet().stream()
                .map(entry -> new Behind(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static SheetRow sheet(BlockSheet sheet, ZoneId zone) {
        return new SheetRow(
                sheet.carcase().name(),
                Words.day(sheet.closing().orElseThrow().closedAt(), zone),
                sheet.assessor().name(),
                (int) sheet.marks().stream().map(Mark::stepId).distinct().count(),
                sheet.closing().orElseThrow().evidenceSeq());
    }
}
