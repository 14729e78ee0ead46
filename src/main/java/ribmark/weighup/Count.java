package ribmark.weighup;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ribmark.basics.Side;

/** Something counted on the carcase or on a piece of it, a number without unit. It was seen, so it speaks before what weights can only fit. */
public record Count(String what, String number) {

    private static final Pattern RIBS = Pattern.compile("\\bribs?\\b", Pattern.CASE_INSENSITIVE);

    /** Why a count comes first. */
    public static final String BEFORE = "A count was seen; weights can only fit it. So it speaks first.";

    /** The vertebrae of the carcase, where they were counted, then the ribs counted in its pieces. */
    public static List<Count> all(WeighUp weighUp) {
        return Stream.concat(weighUp.carcase().vertebrae().map(Count::vertebrae).stream(), ribs(weighUp).stream())
                .toList();
    }

    private static Count vertebrae(String counted) {
        return new Count("Vertebrae from neck to tail", counted);
    }

    /** The ribs counted in pieces, each by its measure and side. */
    public static List<Count> ribs(WeighUp weighUp) {
        return weighUp.trim().stream()
                .filter(trim -> trim.measure().isCount() && isOfRibs(trim))
                .map(trim -> new Count(
                        trim.measure().name() + sided(trim.side()), trim.value().toPlainString()))
                .toList();
    }

    private static boolean isOfRibs(TrimReading trim) {
        return RIBS.matcher(trim.measure().id() + " " + trim.measure().name()).find();
    }

    private static String sided(Side side) {
        return side == Side.LEFT || side == Side.RIGHT ? ", " + side.word() : "";
    }

    /** {@code Counted. Ribs in the fore: 7. A count speaks before the weights.} */
    public String sentence() {
        return "Counted. " + what + ": " + number + ". A count speaks before the weights.";
    }
}
