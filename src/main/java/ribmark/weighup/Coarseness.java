package ribmark.weighup;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ribmark.basics.Words;
import ribmark.scoring.CutYield;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.Scale;

/** Whether a scale was too coarse for what stood on it: told beside the weights, it changes no number. */
final class Coarseness {

    private Coarseness() {}

    /** One sentence for each cut and scale where it was; nothing where the class of the scale sets no limits. */
    static List<String> notes(WeighUp weighUp) {
        Map<List<Object>, List<Reading>> together = new LinkedHashMap<>();
        weighUp.readings().stream()
                .sorted(java.util.Comparator.comparing(Reading::cut))
                .forEach(reading -> together.computeIfAbsent(
                                List.of(reading.cut(), reading.scale()), k -> new java.util.ArrayList<>())
                        .add(reading));
        return together.values().stream()
                .flatMap(readings -> note(weighUp, readings).stream())
                .toList();
    }

    private static Optional<String> note(WeighUp weighUp, List<Reading> readings) {
        Reading first = readings.get(0);
        Mass mass = Balances.sum(readings);
        Optional<PermissibleErrors> errors = first.scale().permissible();
        if (errors.isEmpty() || mass.grams() <= 0) {
            return Optional.empty();
        }
        double most =
                readings.stream().mapToDouble(r -> r.weight().grams()).max().orElse(0);
        OptionalDouble permissible = first.scale().permissibleG(most);
        if (permissible.isEmpty()) {
            return Optional.of(name(weighUp, first) + ": " + Numbers.kilograms(most) + "\u00a0kg is more than a class "
                    + errors.get().accuracyClass() + " scale with a division of "
                    + Numbers.plain(first.scale().divisionG()) + "\u00a0g may weigh (OIML R 76).");
        }
        double doubt = percent(CutYield.COVERAGE * Math.sqrt(mass.varianceG2()), mass);
        double mayBeWrong = percent(readings.size() * permissible.getAsDouble(), mass);
        return Math.max(doubt, mayBeWrong) > errors.get().coarseFromPercent()
                ? Optional.of(sentence(weighUp, first, mass, doubt, mayBeWrong))
                : Optional.empty();
    }

    private static String sentence(WeighUp weighUp, Reading first, Mass mass, double doubt, double mayBeWrong) {
        Scale scale = first.scale();
        PermissibleErrors errors = scale.permissible().orElseThrow();
        double byDivision = percent(CutYield.COVERAGE * scale.divisionG() / Math.sqrt(12), mass);
        return name(weighUp, first) + ": " + Numbers.kilograms(mass.grams()) + "\u00a0kg is little for a scale of "
                + Numbers.plain(scale.divisionG()) + "\u00a0g. Its division alone makes ±\u00a0"
                + Numbers.places(byDivision, 0) + "\u00a0%, with its scatter ±\u00a0" + Numbers.places(doubt, 0)
                + "\u00a0%; in use a class " + errors.accuracyClass() + " scale may be wrong by "
                + Numbers.places(mayBeWrong, 0) + "\u00a0% of it (OIML R 76). Take a finer scale.";
    }

    private static String name(WeighUp weighUp, Reading reading) {
        return weighUp.row(reading.cut()).map(row -> row.name()).orElseGet(() -> Words.capital(reading.cut()));
    }

    private static double percent(double grams, Mass mass) {
        return 100 * grams / mass.grams();
    }
}
