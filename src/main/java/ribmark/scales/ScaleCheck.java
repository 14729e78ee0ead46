package ribmark.scales;

import java.time.Instant;
import java.util.Locale;
import java.util.OptionalDouble;
import ribmark.basics.Weight;
import ribmark.people.Person;
import ribmark.scoring.Scale;

/** A weight known to be right, put on a scale, and what the scale showed. */
public record ScaleCheck(String scale, Weight nominal, Weight reading, Found found, Person by, Instant at) {

    /** Whether the scale kept its limit: within, outside, or loaded beyond what its class may weigh. */
    public enum Found {
        WITHIN,
        OUTSIDE,
        BEYOND;

        /** The word on the page and in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The finding a word names. */
        static Found of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }

        /** The scale's error against what its class permits in use (OIML R 76); without a class nothing is permitted but the division. */
        static Found of(Scale scale, Weight nominal, Weight reading) {
            OptionalDouble permitted = scale.permissible().isPresent()
                    ? scale.permissibleG(nominal.grams())
                    : OptionalDouble.of(scale.divisionG());
            if (permitted.isEmpty()) {
                return BEYOND;
            }
            return Math.abs(reading.grams() - nominal.grams()) <= permitted.getAsDouble() ? WITHIN : OUTSIDE;
        }
    }
}
