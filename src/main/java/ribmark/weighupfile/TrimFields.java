package ribmark.weighupfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import ribmark.scoring.TrimMeasure;
import ribmark.weighup.Numbers;
import ribmark.weighup.TrimReading;

/** The trim measures of a weigh-up file. */
final class TrimFields {

    private static final Pattern TYPED = Pattern.compile("-?[0-9]{1,4}([.,][0-9]{1,4})?");
    private static final String HELP =
            "Write a list of measures, each with \"measure\", \"value\" and, if you like, \"division\".";

    private TrimFields() {}

    static List<TrimReading> read(Fields file, References references) {
        List<TrimReading> readings = new ArrayList<>();
        for (Fields fields : file.objects("trim", HELP)) {
            one(fields.only("measure", "value", "division"), references).ifPresent(readings::add);
        }
        return readings;
    }

    private static Optional<TrimReading> one(Fields fields, References references) {
        Optional<TrimMeasure> measure = measure(fields, references);
        Optional<BigDecimal> value = number(fields, "value").filter(v -> canBe(fields, measure, v));
        Optional<BigDecimal> division = fields.has("division") ? division(fields) : Optional.empty();
        return measure.flatMap(m -> value.map(
                v -> TrimReading.of(m, v, division.map(BigDecimal::doubleValue).orElse(m.division()))));
    }

    private static Optional<TrimMeasure> measure(Fields fields, References references) {
        String help = "Name one of: "
                + String.join(
                        ", ", references.trim().stream().map(TrimMeasure::id).toList()) + ".";
        Optional<String> id = fields.text("measure", help);
        Optional<TrimMeasure> measure = id.flatMap(references::measure);
        if (id.isPresent() && measure.isEmpty()) {
            fields.refuse("measure", "There is no trim measure " + Fields.quoted(id.get()), help);
        }
        return measure;
    }

    private static Optional<BigDecimal> number(Fields fields, String name) {
        String help = "Write what was read, in quotes, for example \"6.0\".";
        Optional<String> typed = fields.text(name, help).map(String::strip);
        Optional<String> good = typed.filter(t -> TYPED.matcher(t).matches()).filter(t -> !Numbers.couldBeThousands(t));
        if (typed.isPresent() && Numbers.couldBeThousands(typed.get())) {
            fields.refuse(
                    name,
                    Fields.quoted(typed.get()) + " could be thousands or thousandths",
                    "Write it with a point, for example \"" + typed.get().replace(',', '.') + "\".");
        } else if (typed.isPresent() && good.isEmpty()) {
            fields.refuse(name, Fields.quoted(typed.get()) + " is not a measurement", help);
        }
        return good.map(t -> new BigDecimal(t.replace(',', '.')));
    }

    private static Optional<BigDecimal> division(Fields fields) {
        Optional<BigDecimal> division = number(fields, "division");
        if (division.isPresent() && division.get().signum() <= 0) {
            fields.refuse(
                    "division",
                    "A division must be more than nothing",
                    "Write the step of the rule or gauge, such as \"1.0\".");
            return Optional.empty();
        }
        return division;
    }

    /** Counts are whole, and only what has a lowest limit can lie below nothing. */
    private static boolean canBe(Fields fields, Optional<TrimMeasure> measure, BigDecimal value) {
        boolean halfCounted = measure.isPresent()
                && measure.get().isCount()
                && value.stripTrailingZeros().scale() > 0;
        boolean belowNothing = measure.isPresent()
                && value.signum() < 0
                && (measure.get().isCount() || measure.get().lowest().isEmpty());
        if (halfCounted) {
            fields.refuse("value", value + " cannot have been counted", "Write a whole number.");
        } else if (belowNothing) {
            fields.refuse(
                    "value", measure.get().name() + " cannot be less than nothing", "Write it without the minus.");
        }
        return !halfCounted && !belowNothing;
    }
}
