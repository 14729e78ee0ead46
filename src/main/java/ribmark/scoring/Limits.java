package ribmark.scoring;

import java.math.BigDecimal;

/** Says the limits of a trim measure in words. */
public final class Limits {

    private static final String NO_BREAK = "\u00a0";

    private Limits() {}

    /** {@code at most 5 mm}, {@code exactly 6}, {@code 0.8 to 1.2}. */
    public static String say(TrimMeasure measure) {
        String unit = measure.isCount() || measure.unit().equals("ratio") ? "" : NO_BREAK + measure.unit();
        if (measure.lowest().isEmpty()) {
            return "at most " + figure(measure.highest().getAsDouble()) + unit;
        }
        if (measure.highest().isEmpty()) {
            return "at least " + figure(measure.lowest().getAsDouble()) + unit;
        }
        double lowest = measure.lowest().getAsDouble();
        double highest = measure.highest().getAsDouble();
        return lowest == highest
                ? "exactly " + figure(lowest) + unit
                : figure(lowest) + " to " + figure(highest) + unit;
    }

    /** A figure as short as it can be written: {@code 5}, {@code 0.8}. */
    public static String figure(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
