package ribmark.basics;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** A weight read off a scale, held in whole grams so that sums are exact. */
public record Weight(long grams) implements Comparable<Weight> {

    /** Nothing at all. */
    public static final Weight NONE = new Weight(0);

    private static final Pattern TYPED = Pattern.compile("[0-9]{1,6}([.,][0-9]{1,9})?");
    private static final Pattern LIKE_THOUSANDS = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

    /** Refuses a negative weight. */
    public Weight {
        if (grams < 0) {
            throw new IllegalArgumentException("A weight cannot be negative: " + grams + " g");
        }
    }

    /** Reads kilograms as typed, such as {@code 1.285} or {@code 1,28}; first ask {@link #whyNot}. */
    public static Weight ofKilograms(String typed) {
        whyNot(typed).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        return new Weight(new BigDecimal(typed.strip().replace(',', '.'))
                .movePointRight(3)
                .longValueExact());
    }

    /** Why this cannot be read as kilograms, as the end of a sentence, or nothing when it can. Finer than a gram is refused, never rounded. */
    public static Optional<String> whyNot(String typed) {
        String text = typed == null ? "" : typed.strip();
        if (text.isEmpty()) {
            return Optional.of("nothing was typed. Type kilograms, for example 7.310.");
        }
        if (LIKE_THOUSANDS.matcher(text).matches()) {
            return Optional.of("“" + text + "” could be thousands or thousandths. Type it with a point, for example "
                    + text.replace(',', '.') + ".");
        }
        if (!TYPED.matcher(text).matches()) {
            return Optional.of("“" + text + "” is not a weight. Type kilograms, for example 7.310.");
        }
        boolean finerThanAGram = new BigDecimal(text.replace(',', '.'))
                        .movePointRight(3)
                        .stripTrailingZeros()
                        .scale()
                > 0;
        return finerThanAGram
                ? Optional.of("“" + text + "” is finer than a gram. Type at most three figures after the point.")
                : Optional.empty();
    }

    /** This weight and another together. */
    public Weight plus(Weight other) {
        return new Weight(Math.addExact(grams, other.grams));
    }

    /** This weight less another; refuses to go below nothing. */
    public Weight minus(Weight other) {
        return new Weight(Math.subtractExact(grams, other.grams));
    }

    /** The figure alone, always with three places: {@code 7.310}. */
    public String kilograms() {
        return BigDecimal.valueOf(grams, 3).toPlainString();
    }

    @Override
    public int compareTo(Weight other) {
        return Long.compare(grams, other.grams);
    }

    /** The figure and its unit, which never part: {@code 7.310 kg}. */
    @Override
    public String toString() {
        return kilograms() + "\u00a0kg";
    }
}
