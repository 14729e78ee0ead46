package ribmark.weighup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ribmark.basics.Side;
import ribmark.scoring.CutYield;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.Prices;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.TrimScore;
import ribmark.scoring.YieldScore;
import ribmark.slips.Finding;
import ribmark.slips.Model;

/** One weigh-up reckoned through: the balance, each cut against its table, the trim, and what has to be said about it. */
public record WeighUpScore(
        WeighUp weighUp,
        Balance balance,
        List<Balance> innerBalances,
        List<ScoredCut> cuts,
        TrimScore trim,
        List<String> notes) {

    /** Keeps its own copies. */
    public WeighUpScore {
        innerBalances = List.copyOf(innerBalances);
        cuts = List.copyOf(cuts);
        notes = List.copyOf(notes);
    }

    /** Reckons everything; refused in one sentence where a table cannot judge such a carcase. */
    public static WeighUpScore of(WeighUp weighUp) {
        WeighUp adjusted = weighUp.underItsConditions();
        Balance balance = Balances.ofCarcase(adjusted);
        return new WeighUpScore(
                adjusted,
                balance,
                Balances.inside(adjusted),
                cuts(adjusted, balance),
                trim(adjusted),
                Notes.of(weighUp, adjusted, balance));
    }

    /** Whether the weights may be judged at all. */
    public boolean isScored() {
        return balance.verdict() != Balance.Verdict.NOT_SCORED;
    }

    /** The mean over the cuts weighed; nothing when none was, or when the balance forbids judging. */
    public OptionalDouble yieldScore() {
        return isScored()
                ? new YieldScore(cuts.stream().map(ScoredCut::yield).toList()).score()
                : OptionalDouble.empty();
    }

    /** A hundred times the mean probability of keeping the limits; nothing when nothing was measured. */
    public OptionalDouble trimScore() {
        return trim.score();
    }

    /** What it was worth beside the breakdown the table expects; nothing without prices, or when it is not scored. */
    public Optional<Costing> costing(Optional<Prices> prices) {
        return Costing.of(this, prices);
    }

    /** Left against right of every pair whose sides were weighed apart. */
    public List<PairChecked> pairs() {
        return PairChecked.in(weighUp);
    }

    /** What one block sheet freed, judged on the balance of the whole carcase; the notes are those of the carcase. */
    public WeighUpScore freedOn(String sheet) {
        WeighUp theirs = weighUp.freedOn(sheet);
        return new WeighUpScore(theirs, balance, innerBalances, cuts(theirs, balance), trim(theirs), notes);
    }

    /** The levels made to agree, where several tables were named. */
    public Optional<Reconciliation> reconciliation() {
        if (weighUp.tables().size() < 2) {
            return Optional.empty();
        }
        List<Balance> all = new ArrayList<>(List.of(balance));
        all.addAll(innerBalances);
        return Optional.of(Reconciliation.of(weighUp, all));
    }

    /** What the weights say of slips among themselves and of moved lines; nothing without a model of them. */
    public Optional<Finding> finding(Optional<Model> model) {
        return model.flatMap(m -> LookedOver.of(this, m));
    }

    /** The readings that are balanced and not scored: no row names them, or they were weighed at another moment. */
    public List<Reading> balancedOnly() {
        return weighUp.readings().stream()
                .filter(reading -> weighUp.row(reading.cut())
                        .filter(row -> atItsMoment(weighUp, row))
                        .isEmpty())
                .toList();
    }

    private static TrimScore trim(WeighUp weighUp) {
        return new TrimScore(
                weighUp.trim().stream().map(TrimReading::conformity).toList());
    }

    private static List<ScoredCut> cuts(WeighUp weighUp, Balance balance) {
        Mass carcase = weighUp.carcase().cold(weighUp.tables().get(0).hot());
        boolean judged = balance.verdict() != Balance.Verdict.NOT_SCORED;
        List<ScoredCut> cuts = new ArrayList<>();
        for (Row row : weighUp.rows()) {
            Optional<Side> sides = weighUp.weighedSides(row.cut()).filter(s -> atItsMoment(weighUp, row));
            sides.ifPresent(side -> cuts.add(cut(weighUp, row, side, carcase, judged)));
        }
        return cuts;
    }

    private static ScoredCut cut(WeighUp weighUp, Row row, Side side, Mass carcase, boolean judged) {
        List<Reading> readings = weighUp.of(row.cut());
        Row judgedBy = side == Side.BOTH ? row : row.oneSide();
        return new ScoredCut(CutYield.of(judgedBy, Balances.sum(readings), carcase), side, readings, judged);
    }

    /** Whether every reading of a row’s cut was taken at the moment the row judges. */
    public static boolean atItsMoment(WeighUp weighUp, Row row) {
        return weighUp.of(row.cut()).stream()
                .allMatch(r -> r.moment().isEmpty() || r.moment().equals(row.moment()));
    }
}
