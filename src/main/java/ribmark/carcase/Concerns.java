package ribmark.carcase;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ribmark.basics.Words;
import ribmark.curriculum.Breakdown.AtIntake;

/**
 * What stands against taking a carcase in without a word: a mark nobody can read, meat or kidneys too warm, an age that is over
 * or not known. The limits are the breakdown's; what is done about them is the site's plan and the supervisor.
 */
public final class Concerns {

    private final List<String> toAnswer = new ArrayList<>();
    private final boolean oldOrUnknown;

    private Concerns(boolean oldOrUnknown) {
        this.oldOrUnknown = oldOrUnknown;
    }

    /** The concerns about what was looked at; without limits in the breakdown only mark and age are left. */
    public static Concerns about(Checks checks, Optional<AtIntake> limits) {
        Concerns concerns = new Concerns(!checks.age().isUnder());
        if (!checks.markLegible()) {
            concerns.toAnswer.add("the health mark cannot be read");
        }
        limits.ifPresent(limit -> {
            concerns.warm("the meat is", OptionalInt.of(checks.meatTenths()), limit.meatAtMostC());
            concerns.warm("the kidneys are", checks.kidneyTenths(), limit.kidneysAtMostC());
        });
        return concerns;
    }

    private void warm(String what, OptionalInt tenths, BigDecimal atMost) {
        if (tenths.isPresent() && BigDecimal.valueOf(tenths.getAsInt(), 1).compareTo(atMost) > 0) {
            toAnswer.add(what + " at " + Temperature.say(tenths.getAsInt()) + " (at most " + atMost.toPlainString()
                    + "\u00a0°C)");
        }
    }

    /** Whether what was done has to be said, or the carcase held. */
    public boolean needAnswer() {
        return !toAnswer.isEmpty();
    }

    /** Whether the age alone keeps it from being accepted at intake. */
    public boolean keepOffSaw() {
        return oldOrUnknown;
    }

    /** Mark and temperatures in one sentence's words: {@code the health mark cannot be read and the meat is at 8.2 °C (at most 7 °C)}. */
    public String inWords() {
        return Words.list(toAnswer);
    }
}
