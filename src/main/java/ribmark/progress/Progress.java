package ribmark.progress;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Words;
import ribmark.competence.Standing;
import ribmark.signing.ApprenticeRecord;
import ribmark.signing.Standings;

/** Where one apprentice stands today, and what is to be done about it. */
public record Progress(ApprenticeRecord record, LocalDate today, ZoneId zone) {

    /** Somebody not seen for so many days is named (ours: two weeks, the usual time between two visits to the block). */
    private static final int LONG_AGO = 14;

    /** A step that was not yet so often in a row is named (ours: three tries show that practice alone does not help). */
    private static final int TOO_OFTEN = 3;

    /** Derives it today. */
    public static Progress of(ApprenticeRecord record, Standings standings) {
        return new Progress(record, standings.today(), standings.zone());
    }

    /** Whose it is. */
    public UUID id() {
        return record.apprentice().id();
    }

    /** What they are called. */
    public String name() {
        return record.apprentice().name();
    }

    /** How many steps are signed off; one that is due again is not. */
    public int signedOff() {
        return record.count(Standing.SIGNED_OFF);
    }

    /** What to do next, most urgent first; nothing when there is nothing. */
    public String todo() {
        List<String> todo = new ArrayList<>();
        if (record.toSign() > 0) {
            todo.add(record.toSign() + " to sign");
        }
        if (record.count(Standing.DUE_AGAIN) > 0) {
            todo.add(record.count(Standing.DUE_AGAIN) + " due again");
        }
        record.steps().stream()
                .filter(step -> step.failedInARow() >= TOO_OFTEN)
                .forEach(step -> todo.add(
                        "step " + step.step().number() + " not yet " + Words.count(step.failedInARow()) + " times"));
        notSeen().ifPresent(todo::add);
        return String.join("; ", todo);
    }

    private Optional<String> notSeen() {
        Optional<LocalDate> last = record.lastSeen(zone);
        if (last.isEmpty()) {
            return Optional.of("not seen yet");
        }
        long days = ChronoUnit.DAYS.between(last.get(), today);
        return days < LONG_AGO ? Optional.empty() : Optional.of("not seen for " + days + " days");
    }
}
