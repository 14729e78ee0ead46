package ribmark.admin;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribmark.basics.Refused;

/** Reads moments as the files of the demo give them, counted back from now: {@code 14 days ago, 08:05} or {@code 95 minutes ago}. */
record DemoMoments(Instant now, ZoneId zone) {

    private static final Pattern DAYS = Pattern.compile("(\\d{1,4}) days? ago, (\\d\\d:\\d\\d)");
    private static final Pattern MINUTES = Pattern.compile("(\\d{1,4}) minutes ago");

    Instant at(String text) {
        Matcher minutes = MINUTES.matcher(text);
        if (minutes.matches()) {
            return now.minus(Duration.ofMinutes(Long.parseLong(minutes.group(1))));
        }
        Matcher days = DAYS.matcher(text);
        if (days.matches() && Integer.parseInt(days.group(1)) > 0) {
            LocalDate day = today().minusDays(Long.parseLong(days.group(1)));
            return day.atTime(LocalTime.parse(days.group(2))).atZone(zone).toInstant();
        }
        throw new Refused("“" + text + "” is no moment of the demo. Write “14 days ago, 08:05” or “95 minutes ago”.");
    }

    LocalDate today() {
        return LocalDate.ofInstant(now, zone);
    }

    LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, zone);
    }
}
