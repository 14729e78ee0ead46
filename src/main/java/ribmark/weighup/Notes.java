package ribmark.weighup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.basics.Words;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;

/** What has to be said beside the numbers: why nothing is scored, and what was converted, widened or left out. */
final class Notes {

    private Notes() {}

    static List<String> of(WeighUp adjusted, Balance balance) {
        List<String> notes = new ArrayList<>();
        whyNotScored(balance).ifPresent(notes::add);
        hot(adjusted).ifPresent(notes::add);
        widened(adjusted).ifPresent(notes::add);
        anotherAnimal(adjusted).ifPresent(notes::add);
        PairChecked.in(adjusted).stream().filter(PairChecked::isNotWithin).forEach(pair -> notes.add(pair.sentence()));
        notes.addAll(Coarseness.notes(adjusted));
        adjusted.rows().forEach(row -> otherMoment(adjusted, row).ifPresent(notes::add));
        return notes;
    }

    private static Optional<String> whyNotScored(Balance balance) {
        if (balance.verdict() != Balance.Verdict.NOT_SCORED) {
            return Optional.empty();
        }
        String what = Numbers.kilograms(Math.abs(balance.gapG().doubleValue())) + " ± "
                + Numbers.kilograms(balance.gapExpandedUncertaintyG()) + "\u00a0kg";
        return Optional.of(
                balance.moreCameOff()
                        ? "Not scored: more came off than went on, by " + what + ". Weigh again before judging anybody."
                        : "Not scored: the pieces are " + what
                                + " short of the carcase, more than "
                                + Numbers.plain(balance.limits().queryToPercent())
                                + "\u00a0% of it. Find what is missing first.");
    }

    private static Optional<String> hot(WeighUp weighUp) {
        CarcaseReading carcase = weighUp.carcase();
        if (!carcase.hot()) {
            return Optional.empty();
        }
        ReferenceTable.Hot factor = weighUp.tables().get(0).hot();
        return Optional.of("Weighed hot: " + carcase.weight() + " is taken as "
                + carcase.coldG(factor).movePointLeft(3).stripTrailingZeros().toPlainString() + "\u00a0kg cold, × "
                + factor.multiplyBy() + ", give or take a standard uncertainty of " + factor.standardUncertainty()
                + " of the hot weight.");
    }

    private static Optional<String> widened(WeighUp weighUp) {
        ReferenceTable table = weighUp.tables().get(0);
        List<String> why = table.whyWidened(weighUp.conditions());
        return why.isEmpty()
                ? Optional.empty()
                : Optional.of("Every spread is multiplied by " + table.widening(weighUp.conditions()) + ": "
                        + Words.list(why) + ".");
    }

    private static Optional<String> anotherAnimal(WeighUp adjusted) {
        if (adjusted.conditions().vertebrae().areUsual()) {
            return Optional.empty();
        }
        return Optional.of("Another animal: " + adjusted.carcase().vertebrae().orElseThrow() + " vertebrae counted, "
                + adjusted.usualFormula() + " are usual. " + moved(adjusted));
    }

    private static String moved(WeighUp adjusted) {
        List<ReferenceTable> following = adjusted.yardstick().usual().tables().stream()
                .filter(table -> table.follows(adjusted.conditions()))
                .toList();
        if (following.isEmpty()) {
            return "The tables have no figure for that, so what they expect is not moved.";
        }
        List<String> moves = following.stream()
                .flatMap(table -> table.rows().stream())
                .flatMap(row -> adjusted.row(row.cut()).stream()
                        .filter(now -> !now.grounds().equals(row.grounds()))
                        .map(now -> Words.inside(row.name()) + " " + Numbers.places(now.expected(), 2)))
                .distinct()
                .toList();
        return "Expected for it, in percent: " + Words.list(moves)
                + "; the other cuts share what is left as they usually do.";
    }

    private static Optional<String> otherMoment(WeighUp weighUp, Row row) {
        if (WeighUpScore.atItsMoment(weighUp, row)) {
            return Optional.empty();
        }
        String moments = Words.list(weighUp.of(row.cut()).stream()
                .map(reading -> reading.moment().isEmpty() ? row.moment() : reading.moment())
                .distinct()
                .toList());
        return Optional.of(row.name() + ": weighed " + moments + ". The table expects " + row.moment()
                + ", so the weight is balanced and not scored.");
    }
}
