package ribmark.competence;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where an apprentice is on a step: always derived from closed sheets and signatures, never stored as truth. */
public enum Standing {
    NOT_STARTED,
    PRACTISING,
    THIN_EVIDENCE,
    READY_TO_SIGN,
    SIGNED_OFF,
    DUE_AGAIN;

    /** The word on the page: {@code thin evidence}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Derives it from the closed sheets and the signatures of one apprentice on one step, in any order. */
    public static StepStanding derivedFrom(
            List<SheetEvidence> sheets,
            List<StepSignedOff> signOffs,
            EvidenceRule rule,
            boolean eachSide,
            LocalDate today) {
        Tally tally = Tally.of(sheets, rule, eachSide, today);
        Optional<StepSignedOff> signed = signOffs.stream()
                .filter(signOff -> !signOff.withdrawn())
                .max(Comparator.comparingLong(StepSignedOff::sequence));
        Standing standing = signed.map(signOff -> afterSigning(signOff, sheets, rule, today))
                .orElseGet(() -> beforeSigning(sheets, tally));
        return new StepStanding(standing, tally, signed);
    }

    private static Standing beforeSigning(List<SheetEvidence> sheets, Tally tally) {
        if (sheets.stream().noneMatch(SheetEvidence::isMarked)) {
            return NOT_STARTED;
        }
        if (tally.isMet()) {
            return READY_TO_SIGN;
        }
        return tally.counting().isEmpty() ? PRACTISING : THIN_EVIDENCE;
    }

    private static Standing afterSigning(
            StepSignedOff signOff, List<SheetEvidence> sheets, EvidenceRule rule, LocalDate today) {
        boolean failedSince =
                sheets.stream().anyMatch(sheet -> sheet.sequence() > signOff.sequence() && sheet.startsAfresh());
        boolean seenLately = sheets.stream()
                .filter(SheetEvidence::isMarked)
                .anyMatch(sheet -> ChronoUnit.DAYS.between(sheet.closedOn(), today) <= rule.withinDays());
        return failedSince || !seenLately ? DUE_AGAIN : SIGNED_OFF;
    }
}
