package ribmark.scales;

import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.Words;

/** When each scale was last checked and how it was found, as it is said wherever the scale is named. */
public final class CheckedInWords {

    private final ScaleCheckStore store;
    private final Map<String, ScaleCheck> newest;
    private final ZoneId zone;

    /** Days are those of the college. */
    public CheckedInWords(ScaleCheckStore store, ZoneId zone) {
        this.store = store;
        this.newest = store.newest();
        this.zone = zone;
    }

    /** {@code checked today: within}, {@code outside when checked 24 Nov 2026, 08:05; not checked today}, {@code never checked}. */
    public String of(String scale) {
        Optional<ScaleCheck> check = Optional.ofNullable(newest.get(scale));
        return check.map(this::said).orElse("never checked");
    }

    private String said(ScaleCheck check) {
        return store.isOfToday(check, zone)
                ? "checked today: " + found(check)
                : found(check) + " when checked " + Words.moment(check.at(), zone) + "; not checked today";
    }

    static String found(ScaleCheck check) {
        return check.found() == ScaleCheck.Found.BEYOND
                ? "loaded beyond what its class may weigh"
                : check.found().word();
    }
}
