package ribmark.competence;

import java.time.LocalDate;
import ribmark.basics.Words;

/** How much must have been seen before a step may be signed off; whose numbers these are, and since when they hold. */
public record EvidenceRule(int sheets, int carcases, int assessors, int withinDays, String whose, LocalDate since) {

    /** Refuses a rule that asks for nothing. */
    public EvidenceRule {
        if (sheets < 1 || carcases < 1 || assessors < 1 || withinDays < 1) {
            throw new IllegalArgumentException("An evidence rule asks for at least one of everything");
        }
    }

    /** The rule in one sentence, with whose it is. */
    public String sentence() {
        return Words.capital(whose) + ", since " + Words.day(since) + ": "
                + Words.count(sheets, "sheet", "sheets") + " unaided in a row, "
                + Words.count(carcases, "carcase", "carcases") + ", "
                + Words.count(assessors, "assessor", "assessors") + ", the newest within " + withinDays + " days.";
    }
}
