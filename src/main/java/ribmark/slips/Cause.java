package ribmark.slips;

import java.util.Locale;

/** How a wrong weight may have come about. */
public enum Cause {
    DIGITS_SWAPPED,
    DECIMAL_POINT_MOVED,
    TARE_FORGOTTEN,
    PIECES_EXCHANGED,
    PIECE_MISSING,
    WEIGHED_TWICE,
    POUNDS_FOR_KILOGRAMS,
    SOMETHING_ELSE;

    /** The words on the page and in files. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
