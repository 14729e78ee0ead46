package ribmark.scoring;

import java.util.Locale;

/** What a measured yield or trim is called. */
public enum Verdict {
    WITHIN,
    QUESTIONABLE,
    OUTSIDE,
    TOO_CLOSE_TO_CALL;

    /** The word on the page and in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The class of a zeta score: up to 2 within, below 3 questionable, from 3 outside (ISO 13528, classes of z scores).
     * Rounded to nine decimals first, so that the last binary digit does not decide.
     */
    public static Verdict ofZeta(double zeta) {
        double distance = Math.rint(Math.abs(zeta) * 1e9) / 1e9;
        if (distance <= 2) {
            return WITHIN;
        }
        return distance < 3 ? QUESTIONABLE : OUTSIDE;
    }
}
