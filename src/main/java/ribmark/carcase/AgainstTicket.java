package ribmark.carcase;

import java.math.BigDecimal;
import java.util.Locale;
import ribmark.basics.Weight;
import ribmark.scoring.Scale;

/** Our own scale against the ticket, with what our scale alone can be off: twice its standard uncertainty, k = 2 (JCGM 100). */
public record AgainstTicket(Weighed ticket, Weighed own, Scale scale) {

    /** The comparison in words. */
    public String inWords() {
        if (ticket.hot() != own.hot()) {
            return "Not compared: the ticket’s weight is " + ticket.word() + ", ours is " + own.word()
                    + ", and a carcase loses weight as it cools.";
        }
        long grams = own.weight().grams() - ticket.weight().grams();
        String apart = new Weight(Math.abs(grams)).kilograms() + " ± " + expanded();
        String direction = grams < 0 ? "less" : "more";
        if (Math.abs(grams) <= expandedG()) {
            return grams == 0
                    ? "Ours is the same to the gram."
                    : "Ours is " + apart + " " + direction + ": no more than our scale may be off.";
        }
        return "Ours is " + apart + " " + direction
                + ": our scale alone does not explain it. Look at its zero, then at the ticket.";
    }

    /** Where the figure behind the ± comes from. */
    public String howWeKnow() {
        return "± is twice the standard uncertainty of one reading on the "
                + scale.name().toLowerCase(Locale.ROOT)
                + " scale, from its division of " + plain(scale.divisionG()) + "\u00a0g and its scatter of "
                + plain(scale.repeatabilityG())
                + "\u00a0g. How far the ticket’s own scale may be off is not known, and not counted.";
    }

    private double expandedG() {
        return 2 * scale.standardUncertaintyG();
    }

    private Weight expanded() {
        return new Weight(Math.round(expandedG()));
    }

    private static String plain(double grams) {
        return BigDecimal.valueOf(grams).stripTrailingZeros().toPlainString();
    }
}
