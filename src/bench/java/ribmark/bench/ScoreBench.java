package ribmark.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import ribmark.weighup.ScoredCut;
import ribmark.weighup.WeighUp;
import ribmark.weighup.WeighUpScore;

/** A weigh-up scored, every number taken out, beside the same numbers by hand; and its slips and moved lines looked for. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ScoreBench {

    private List<WeighUp> weighUps;
    private List<HandLoop.Input> inputs;
    private HandLoop hand;
    private int next;

    /** The same lambs for both, and a check that both come to the same. */
    @Setup
    public void weigh() {
        weighUps = Lambs.many();
        inputs = weighUps.stream().map(HandLoop.Input::of).toList();
        hand = new HandLoop();
        for (int i = 0; i < weighUps.size(); i++) {
            hand.score(inputs.get(i));
            Same.check(WeighUpScore.of(weighUps.get(i)), hand);
        }
    }

    /** The program. */
    @Benchmark
    @OperationsPerInvocation(Lambs.MANY)
    public void scored(Blackhole hole) {
        for (WeighUp weighUp : weighUps) {
            take(WeighUpScore.of(weighUp), hole);
        }
    }

    private static void take(WeighUpScore score, Blackhole hole) {
        for (ScoredCut cut : score.cuts()) {
            hole.consume(cut.yield().percent());
            hole.consume(cut.yield().standardUncertainty());
            hole.consume(cut.yield().expected());
            hole.consume(cut.yield().zeta());
            hole.consume(cut.verdict().orElse(null));
            hole.consume(cut.score().orElse(Double.NaN));
        }
        hole.consume(score.yieldScore().orElse(Double.NaN));
        hole.consume(score.balance().gapG());
        hole.consume(score.balance().gapExpandedUncertaintyG());
        hole.consume(score.balance().verdict());
    }

    /** The floor. */
    @Benchmark
    @OperationsPerInvocation(Lambs.MANY)
    public void byHand(Blackhole hole) {
        for (HandLoop.Input input : inputs) {
            hand.score(input);
            for (int i = 0; i < hand.percent.length; i++) {
                hole.consume(hand.percent[i]);
                hole.consume(hand.uncertainty[i]);
                hole.consume(hand.expects[i]);
                hole.consume(hand.zeta[i]);
                hole.consume(hand.verdict[i]);
                hole.consume(hand.score[i]);
            }
            hole.consume(hand.yieldScore);
            hole.consume(hand.gap);
            hole.consume(hand.gapUncertainty);
            hole.consume(hand.balance);
        }
    }

    /** Suspects and explanations of one weigh-up already scored. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public Object lookedOver() {
        next = (next + 1) % weighUps.size();
        return WeighUpScore.of(weighUps.get(next)).finding(Lambs.CONTENT.weighing());
    }
}
