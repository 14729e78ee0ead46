package ribmark.weighup;

import java.math.BigDecimal;
import ribmark.basics.Side;
import ribmark.scoring.TrimConformity;
import ribmark.scoring.TrimMeasure;
import ribmark.scoring.Vertebrae;

/** One trim measure as read off the rule, the gauge or by counting. */
public record TrimReading(TrimMeasure measure, BigDecimal value, double division, Side side, String sheet) {

    /** A measure read without sides and with nobody being watched. */
    public static TrimReading of(TrimMeasure measure, BigDecimal value, double division) {
        return new TrimReading(measure, value, division, Side.ONCE, "");
    }

    /** The same reading against the limits of an animal with other vertebrae. */
    public TrimReading on(Vertebrae vertebrae) {
        return new TrimReading(measure.on(vertebrae), value, division, side, sheet);
    }

    /** Judged against its limits. */
    public TrimConformity conformity() {
        return new TrimConformity(measure, value.doubleValue(), division);
    }
}
