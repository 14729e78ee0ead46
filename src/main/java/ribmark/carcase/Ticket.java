package ribmark.carcase;

import java.time.LocalDate;
import java.util.Optional;

/** The slip that came with the carcase: number and day of the kill, where it came from, its batch, weight, dressing and fat class. */
public record Ticket(
        String killNumber,
        LocalDate killedOn,
        String cameFrom,
        String batch,
        Weighed weighed,
        String dressing,
        Optional<String> fatClass) {

    /** Whether two tickets are of one carcase: the same number of the same day from the same place, however it was typed. */
    public boolean isOfTheSameAs(Ticket other) {
        return killNumber.equalsIgnoreCase(other.killNumber)
                && killedOn.equals(other.killedOn)
                && plain(cameFrom).equals(plain(other.cameFrom));
    }

    private static String plain(String place) {
        return place.toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
