package ribmark.weighup;

import java.util.Locale;
import java.util.regex.Pattern;

/** How measured numbers are written for people: rounded for reading only, never for reckoning. */
public final class Numbers {

    private static final Pattern LIKE_THOUSANDS = Pattern.compile("[-−]?[1-9][0-9]{0,2},[0-9]{3}");

    private Numbers() {}

    /** Whether a comma with three figures behind it leaves open which way it was meant. */
    public static boolean couldBeThousands(String typed) {
        return LIKE_THOUSANDS.matcher(typed).matches();
    }

    /** Grams as kilograms with three places, without the unit. */
    public static String kilograms(double grams) {
        return places(grams / 1000, 3);
    }

    /** A number with so many places. */
    public static String places(double number, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", number);
    }

    /** A number as short as it can be written. */
    public static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
