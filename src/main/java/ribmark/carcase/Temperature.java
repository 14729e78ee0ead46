package ribmark.carcase;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** A temperature as a probe shows it, held in whole tenths of a degree Celsius. */
public final class Temperature {

    /** Colder or warmer than this is taken for a slip of typing; ours: a carcase is neither frozen hard nor warmer than the live animal. */
    public static final int COLDEST_TENTHS = -50;

    /** The warm end. */
    public static final int WARMEST_TENTHS = 450;

    private static final Pattern TYPED = Pattern.compile("[-−–]?[0-9]{1,3}([.,][0-9]{1,4})?");

    private Temperature() {}

    /** Why this cannot be read as a temperature, as the end of a sentence, or nothing when it can. */
    public static Optional<String> whyNot(String typed) {
        if (typed.isEmpty()) {
            return Optional.of("nothing was typed. Type degrees, for example 4.6.");
        }
        if (!TYPED.matcher(typed).matches()) {
            return Optional.of("“" + typed + "” is not a temperature. Type degrees, for example 4.6.");
        }
        BigDecimal tenths = tenths(typed);
        if (tenths.stripTrailingZeros().scale() > 0) {
            return Optional.of("“" + typed + "” is finer than a tenth. Type at most one figure after the point.");
        }
        return tenths.intValueExact() < COLDEST_TENTHS || tenths.intValueExact() > WARMEST_TENTHS
                ? Optional.of(say(tenths.intValueExact()) + " is not a reading from a carcase. Read the probe again.")
                : Optional.empty();
    }

    /** Tenths of a degree from what was typed; first ask {@link #whyNot}. */
    public static int tenthsOf(String typed) {
        return tenths(typed).intValueExact();
    }

    /** Figure and unit, which never part: {@code 4.6 °C}. */
    public static String say(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString().replace('-', '−') + "\u00a0°C";
    }

    private static BigDecimal tenths(String typed) {
        return new BigDecimal(typed.replace(',', '.').replaceFirst("^[−–]", "-")).movePointRight(1);
    }
}
