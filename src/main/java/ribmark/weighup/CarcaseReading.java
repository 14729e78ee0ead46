package ribmark.weighup;

import java.math.BigDecimal;
import java.util.Optional;
import ribmark.basics.Weight;
import ribmark.scoring.Conditions;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.ReferenceTable.Hot;
import ribmark.scoring.Scale;
import ribmark.scoring.Vertebrae;

/** The whole carcase on the scale, with what must travel with its weight: hot or cold, kidneys in or out. */
public record CarcaseReading(
        Weight weight,
        boolean hot,
        boolean kidneysIn,
        Optional<String> fatClass,
        Optional<String> vertebrae,
        Scale scale,
        String typed) {

    /** Refuses a carcase that weighs nothing. */
    public CarcaseReading {
        if (weight.grams() == 0) {
            throw new IllegalArgumentException("A carcase must weigh something");
        }
    }

    /** A carcase of which only the weight was kept: it counts as typed with three places. */
    public CarcaseReading(
            Weight weight,
            boolean hot,
            boolean kidneysIn,
            Optional<String> fatClass,
            Optional<String> vertebrae,
            Scale scale) {
        this(weight, hot, kidneysIn, fatClass, vertebrae, scale, weight.kilograms());
    }

    /** Its weight once cold, in grams, not rounded: a hot weight is multiplied by the table's factor, as a decimal. */
    public BigDecimal coldG(Hot factor) {
        BigDecimal read = BigDecimal.valueOf(weight.grams());
        return hot ? read.multiply(BigDecimal.valueOf(factor.multiplyBy())) : read;
    }

    /** The same with its variance: the reading's own, and for a hot weight that of the factor. */
    public Mass cold(Hot factor) {
        double share = hot ? factor.multiplyBy() : 1;
        double ofFactor = hot ? factor.standardUncertainty() * weight.grams() : 0;
        return new Mass(
                hot ? coldG(factor).doubleValue() : weight.grams(),
                share * share * scale.varianceG2() + ofFactor * ofFactor);
    }

    /** The same carcase on a scale of this class, where none is known. */
    public CarcaseReading ruledBy(Optional<PermissibleErrors> errors) {
        return new CarcaseReading(weight, hot, kidneysIn, fatClass, vertebrae, scale.ruledBy(errors), typed);
    }

    /** How its vertebrae differ from the usual ones, where they were counted. */
    public Vertebrae against(String usual) {
        return vertebrae.isEmpty() ? Vertebrae.USUAL : Vertebrae.compared(vertebrae.get(), usual);
    }

    /** What a table asks of a carcase, but for its vertebrae. */
    public Conditions conditions(Hot factor) {
        double kilograms = hot ? coldG(factor).movePointLeft(3).doubleValue() : weight.grams() / 1000.0;
        return new Conditions(kilograms, kidneysIn, fatClass);
    }
}
