package ribmark.weighup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ribmark.basics.Side;
import ribmark.scoring.CutYield;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.Prices;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.TrimScore;
import ribmark.scoring.Yardstick;
import ribmark.scoring.YieldScore;
import ribmark.slips.Finding;
import ribmark.slips.Model;

/**
 * One weigh-up reckoned through: the balance, each cut against its table, the trim. {@code weighUp} holds what is judged here, {@code carcase}
 * everything weighed on the carcase, both by the tables as they hold for it. Sentences are put together only when asked for.
 */
public record WeighUpScore(
        WeighUp weighUp, WeighUp carcase, Balance balance, List<Balance> innerBalances, List<ScoredCut> cuts) {

    /** Keeps its own copies. */
    public WeighUpScore {
        innerBalances = List.copyOf(innerBalances);
        cuts = List.copyOf(cuts);
    }

    /** Reckons everything; refused in one sentence where a table cannot judge such a carcase. */
    public static WeighUpScore of(WeighUp weighUp) {
        WeighUp adjusted = weighUp.underItsConditions();
        Tally tally = new Tally(adjusted);
        Mass cold = adjusted.cold();
        Balances balances = new Balances(adjusted, tally);
        Balance balance = balances.ofCarcase(adjusted.carcase(), cold);
        return new WeighUpScore(adjusted, adjusted, balance, balances.inside(), cuts(adjusted, tally, cold, balance));
    }

    /** What has to be said beside the numbers, of the carcase as a whole. */
    public List<String> notes() {
        return Notes.of(carcase, balance);
    }

    /** Whether the weights may be judged at all. */
    public boolean isScored() {
        return balance.verdict() != Balance.Verdict.NOT_SCORED;
    }

    /** The mean over the cuts weighed; nothing when none was, or when the balance forbids judging. */
    public OptionalDouble yieldScore() {
        YieldScore score = new YieldScore();
        for (ScoredCut cut : cuts) {
            if (cut.judged()) {
                score.add(cut.yield());
            }
        }
        return score.mean();
    }

    /** Each trim measure against its limits. */
    public TrimScore trim() {
        return new TrimScore(
                weighUp.trim().stream().map(TrimReading::conformity).toList());
    }

    /** A hundred times the mean probability of keeping the limits; nothing when nothing was measured. */
    public OptionalDouble trimScore() {
        return trim().score();
    }

    /** What it was worth beside the breakdown the table expects; nothing without prices, or when it is not scored. */
    public Optional<Costing> costing(Optional<Prices> prices) {
        return Costing.of(this, prices);
    }

    /** Left against right of every pair whose sides were weighed apart. */
    public List<PairChecked> pairs() {
        return PairChecked.in(weighUp);
    }

    /** The same with the balances inside known better. */
    public WeighUpScore withInner(List<Balance> known) {
        return new WeighUpScore(weighUp, carcase, balance, known, cuts);
    }

    /** What one block sheet freed, judged on the balance of the whole carcase; the notes are those of the carcase. */
    public WeighUpScore freedOn(String sheet) {
        WeighUp theirs = weighUp.freedOn(sheet);
        return new WeighUpScore(
                theirs, carcase, balance, innerBalances, cuts(theirs, new Tally(theirs), theirs.cold(), balance));
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

    private static List<ScoredCut> cuts(WeighUp weighUp, Tally tally, Mass cold, Balance balance) {
        Yardstick yardstick = weighUp.yardstick();
        boolean judged = balance.verdict() != Balance.Verdict.NOT_SCORED;
        ScoredCut[] cuts = new ScoredCut[yardstick.size()];
        int count = 0;
        for (int place = 0; place < yardstick.size(); place++) {
            if (tally.isWeighed(place) && tally.isAtItsMoment(place)) {
                Side side = tally.sides(place);
                Row row = side == Side.BOTH ? yardstick.row(place) : yardstick.oneSide(place);
                cuts[count++] = new ScoredCut(CutYield.of(row, tally.cut(place), cold), side, weighUp, judged);
            }
        }
        return List.of(count == cuts.length ? cuts : Arrays.copyOf(cuts, count));
    }

    /** Whether every reading of a row’s cut was taken at the moment the row judges. */
    public static boolean atItsMoment(WeighUp weighUp, Row row) {
        return weighUp.of(row.cut()).stream().allMatch(reading -> reading.isAtTheMomentOf(row));
    }
}
