package ribmark.weighing;

import java.util.Locale;

/** How measured numbers are written for people: rounded for reading only, never for reckoning. */
final class Numbers {

    private Numbers() {}

    /** Grams as kilograms with three places, without the unit. */
    static String kilograms(double grams) {
        return places(grams / 1000, 3);
    }

    /** A number with so many places. */
    static String places(double number, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", number);
    }

    /** A number as short as it can be written. */
    static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
