package ribmark.basics;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** How counts, days and lists are said on a page. */
public final class Words {

    private static final List<String> COUNTS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d\u00a0MMM\u00a0uuuu", Locale.UK);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm\u00a0z", Locale.UK);

    private Words() {}

    /** Counts in words up to twelve, figures after that. */
    public static String count(int number) {
        return number >= 0 && number < COUNTS.size() ? COUNTS.get(number) : Integer.toString(number);
    }

    /** A count with its noun: {@code three sheets}, {@code one sheet}. */
    public static String count(int number, String one, String many) {
        return count(number) + " " + (number == 1 ? one : many);
    }

    /** A day that does not break: {@code 25 Nov 2026}. */
    public static String day(LocalDate day) {
        return DAY.format(day).replace("Sept", "Sep");
    }

    /** The day of a moment, in the college's own zone. */
    public static String day(Instant moment, ZoneId zone) {
        return day(LocalDate.ofInstant(moment, zone));
    }

    /** Day and time of a moment, with the zone's short name so that nobody has to guess. */
    public static String moment(Instant moment, ZoneId zone) {
        return day(moment, zone) + ", " + TIME.format(moment.atZone(zone));
    }

    /** Joins with commas and a last {@code and}. */
    public static String list(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    /** A name inside a sentence, with a small letter at its start. */
    public static String inside(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** The same words with a capital at the start. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
