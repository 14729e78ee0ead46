package ribmark.weighup;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ribmark.basics.Side;
import ribmark.scoring.PairDifference;
import ribmark.scoring.PairTolerances;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Verdict;

/** A pair whose sides were weighed apart at the moment its row means, held against the tolerance between left and right. */
public record PairChecked(Row row, PairTolerances tolerances, PairDifference difference) {

    /** Every such pair of a weigh-up whose table has a tolerance for it. */
    static List<PairChecked> in(WeighUp weighUp) {
        List<PairChecked> checked = new ArrayList<>();
        for (Row row : weighUp.rows()) {
            ReferenceTable table = weighUp.tables().stream()
                    .filter(t -> t.row(row.cut()).isPresent())
                    .findFirst()
                    .orElseThrow();
            OptionalDouble tolerance = table.pairs().of(row.cut());
            List<Reading> left = on(weighUp, row, Side.LEFT);
            List<Reading> right = on(weighUp, row, Side.RIGHT);
            if (tolerance.isPresent()
                    && !left.isEmpty()
                    && !right.isEmpty()
                    && WeighUpScore.atItsMoment(weighUp, row)) {
                var difference = new PairDifference(Balances.sum(left), Balances.sum(right), tolerance.getAsDouble());
                checked.add(new PairChecked(row, table.pairs(), difference));
            }
        }
        return checked;
    }

    private static List<Reading> on(WeighUp weighUp, Row row, Side side) {
        return weighUp.of(row.cut()).stream().filter(r -> r.side() == side).toList();
    }

    /** Whether something has to be said about it. */
    boolean isNotWithin() {
        return difference.verdict() != Verdict.WITHIN;
    }

    /** How far apart, and which is the heavier: {@code left 0.120 ± 0.010 kg heavier, 1.9 % of both}. */
    public String apart() {
        String heavier = difference.grams() < 0 ? "right " : "left ";
        return heavier + Numbers.kilograms(Math.abs(difference.grams())) + " ± "
                + Numbers.kilograms(2 * difference.standardUncertaintyG()) + "\u00a0kg heavier, "
                + Numbers.places(Math.abs(difference.percent()), 1) + "\u00a0% of both";
    }

    /** The limit and whose it is. */
    public String limit() {
        return "at most " + Numbers.plain(difference.tolerancePercent()) + "\u00a0% of both together, "
                + tolerances.whose();
    }

    /** All of it in one sentence. */
    public String sentence() {
        return row.name() + ", left against right: " + apart() + ". Tolerance: " + limit() + ". "
                + ribmark.basics.Words.capital(difference.verdict().word()) + ".";
    }
}
