package ribmark.carcase;

import java.util.OptionalInt;

/**
 * What was looked at on the carcase itself: the health mark as read, age, spinal cord, kidneys, and the deepest temperatures in
 * tenths of a degree Celsius.
 */
public record Checks(
        String mark,
        boolean markLegible,
        Age age,
        Cord cord,
        boolean kidneysIn,
        int meatTenths,
        OptionalInt kidneyTenths) {

    /** The spinal cord, as seen at intake; what has to be done about it is the site's plan. */
    public enum Cord {
        OUT("out"),
        IN("in"),
        UNKNOWN("unknown");

        private final String code;

        Cord(String code) {
            this.code = code;
        }

        /** The code that is kept. */
        public String code() {
            return code;
        }

        /** The words on the page. */
        public String words() {
            return switch (this) {
                case OUT -> "out";
                case IN -> "still in";
                case UNKNOWN -> "not known";
            };
        }

        /** The cord a code names, if it names one. */
        public static java.util.Optional<Cord> of(String code) {
            return java.util.Arrays.stream(values())
                    .filter(c -> c.code.equals(code))
                    .findFirst();
        }
    }

    /** Kidneys in or out, as a word. */
    public String kidneys() {
        return kidneysIn ? "in" : "out";
    }
}
