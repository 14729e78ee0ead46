package ribmark.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Closing;
import ribmark.competence.Standing;
import ribmark.curriculum.Breakdown;
import ribmark.signing.ApprenticeRecord;
import ribmark.signing.RibStrip;
import ribmark.signing.SignOff;
import ribmark.signing.StepRecord;

/** What an apprentice needs to see first: what is new, what is next, what is missing, and all steps at a glance. */
public record MyPage(
        String title,
        UUID id,
        List<Fresh> fresh,
        List<String> signatures,
        List<Next> next,
        List<PersonView.StepRow> missing,
        String more,
        String waiting,
        String steps,
        String study,
        RibStrip strip) {

    /** Feedback not answered yet. */
    public record Fresh(UUID sheet, String carcase, String day, String assessor, String well, String change) {}

    /** What is to be done next, by which day, and who said so after which carcase. */
    public record Next(String day, String words, UUID sheet, String from) {}

    /** A signature or a withdrawal is news for so many days (ours: two weeks, the usual time between two visits to the block). */
    private static final int NEWS = 14;

    /** More rows than that make nobody start (ours). */
    private static final int ROWS = 8;

    /** Nearest to a signature first. */
    private static final List<Standing> ORDER =
            List.of(Standing.DUE_AGAIN, Standing.THIN_EVIDENCE, Standing.PRACTISING);

    static MyPage of(Progress progress, Breakdown breakdown, Set<UUID> answered) {
        ApprenticeRecord record = progress.record();
        List<BlockSheet> newestFirst = new ArrayList<>(record.closed());
        Collections.reverse(newestFirst);
        List<StepRecord> missing = missing(record);
        return new MyPage(
                progress.name() + ", this is where you are",
                progress.id(),
                newestFirst.stream()
                        .filter(sheet -> !answered.contains(sheet.id()))
                        .map(sheet -> fresh(sheet, progress))
                        .toList(),
                signatures(progress),
                next(newestFirst, progress),
                missing.stream()
                        .limit(ROWS)
                        .map(step -> PersonView.row(step, progress.zone()))
                        .toList(),
                missing.size() > ROWS
                        ? "And " + Words.count(missing.size() - ROWS, "more step", "more steps") + " after these."
                        : "",
                waiting(record),
                Words.capital(Words.count(record.steps().size(), "step", "steps")),
                missing.isEmpty()
                        ? "/study"
                        : "/study?stage=" + missing.get(0).step().stageId(),
                RibStrip.of(breakdown, record));
    }

    private static List<StepRecord> missing(ApprenticeRecord record) {
        return record.steps().stream()
                .filter(step ->
                        ORDER.contains(step.standing()) && !step.derived().mayBeSigned())
                .sorted(Comparator.comparing(step -> ORDER.indexOf(step.standing())))
                .toList();
    }

    private static Fresh fresh(BlockSheet sheet, Progress progress) {
        Closing said = sheet.closing().orElseThrow();
        return new Fresh(
                sheet.id(),
                sheet.carcase().name(),
                day(LocalDate.ofInstant(said.closedAt(), progress.zone()), progress.today()),
                sheet.assessor().name(),
                said.well(),
                said.change());
    }

    private static List<Next> next(List<BlockSheet> newestFirst, Progress progress) {
        List<BlockSheet> ahead = newestFirst.stream()
                .filter(sheet -> !dayOf(sheet).isBefore(progress.today()))
                .sorted(Comparator.comparing(MyPage::dayOf))
                .toList();
        List<BlockSheet> shown = ahead.isEmpty() ? newestFirst.stream().limit(1).toList() : ahead;
        return shown.stream().map(sheet -> next(sheet, progress.today())).toList();
    }

    private static Next next(BlockSheet sheet, LocalDate today) {
        LocalDate day = dayOf(sheet);
        return new Next(
                Words.capital((day.isBefore(today) ? "was due " : "") + day(day, today)),
                sheet.closing().orElseThrow().next(),
                sheet.id(),
                sheet.assessor().name() + ", after " + sheet.carcase().name());
    }

    private static LocalDate dayOf(BlockSheet sheet) {
        return sheet.closing().orElseThrow().nextDay();
    }

    private static List<String> signatures(Progress progress) {
        return progress.record().steps().stream()
                .flatMap(step -> step.signOffs().stream().flatMap(signOff -> news(step, signOff, progress).stream()))
                .toList();
    }

    private static Optional<String> news(StepRecord step, SignOff signOff, Progress progress) {
        LocalDate signed = LocalDate.ofInstant(signOff.signedAt(), progress.zone());
        String name = "Step " + step.name();
        return signOff.withdrawal()
                .map(taken -> Optional.of(taken)
                        .filter(t -> isNews(LocalDate.ofInstant(t.withdrawnAt(), progress.zone()), progress))
                        .map(t -> name + ": " + t.by().name() + " took the signature back. “" + t.reason() + "”"))
                .orElseGet(() -> Optional.of(signed)
                        .filter(day -> isNews(day, progress))
                        .map(day -> name + ": signed off by "
                                + signOff.assessor().name() + ", " + day(day, progress.today()) + "."));
    }

    private static boolean isNews(LocalDate day, Progress progress) {
        return ChronoUnit.DAYS.between(day, progress.today()) <= NEWS;
    }

    private static String waiting(ApprenticeRecord record) {
        List<String> ready = record.steps().stream()
                .filter(step -> step.derived().mayBeSigned())
                .map(step -> Integer.toString(step.step().number()))
                .toList();
        if (ready.isEmpty()) {
            return "";
        }
        return ready.size() == 1
                ? "Step " + ready.get(0) + " has all it needs. It waits for a signature, not for you."
                : "Steps " + Words.list(ready) + " have all they need. They wait for a signature, not for you.";
    }

    private static String day(LocalDate day, LocalDate today) {
        return day.equals(today) ? "today" : Words.day(day);
    }

    /** Who waits for an answer, by the newest feedback not answered. */
    public Fresh newest() {
        return fresh.isEmpty() ? null : fresh.get(0);
    }
}
