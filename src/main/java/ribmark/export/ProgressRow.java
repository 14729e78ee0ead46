package ribmark.export;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What is claimed of one apprentice on one step, with every block sheet behind it: one row of the progress report. */
public record ProgressRow(
        String apprentice,
        int number,
        String stepId,
        String step,
        String stage,
        String standing,
        int unaided,
        int seen,
        int carcases,
        int assessors,
        Optional<LocalDate> newest,
        Optional<String> signedBy,
        Optional<LocalDate> signedOn,
        List<Behind> behind) {

    /** One closed block sheet on which the step was seen: the carcase, the day it was closed, who watched. */
    public record Behind(UUID sheet, String carcase, LocalDate day, String assessor) {

        /** In one line, so that the sheet can be found again. */
        public String text() {
            return carcase + ", " + day + ", " + assessor + ", sheet " + sheet;
        }
    }

    /** Keeps a copy of the list. */
    public ProgressRow {
        behind = List.copyOf(behind);
    }
}
