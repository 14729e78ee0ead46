package ribmark.admin;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;

/** What was put on the scale in the demo, by carcase, in the order it came off. */
record DemoWeighUps(List<Check> checks, List<OnTheScale> weighUps) {

    /** What a scale showed under a weight known to be right, both in kilograms. */
    record Check(String when, String by, String scale, String nominalKg, String readKg) {}

    /**
     * The readings of one carcase, taken by one person one after the other; where a competent butcher cut it and it counts as a
     * cutting test, {@code cutting-test} says who.
     */
    record OnTheScale(int lamb, String when, String by, String scale, List<Read> readings, String cuttingTest) {}

    /**
     * One reading; {@code row} and {@code side} where there are several, {@code of} for what has no bones to tell where it came
     * from. Where it is asked about, {@code asked} is the answer: {@code use}, {@code again}, or the words why it stays.
     */
    record Read(
            String cut,
            String row,
            String side,
            String kg,
            Integer tareG,
            String scale,
            boolean later,
            String of,
            String freedBy,
            String struck,
            String asked) {

        Side onSide() {
            return side == null ? Side.ONCE : DemoSheet.side(side);
        }

        Weight weight() {
            return Weight.ofKilograms(kg);
        }

        Optional<Weight> tare() {
            return Optional.ofNullable(tareG).map(grams -> new Weight(grams));
        }
    }

    static DemoWeighUps read() {
        return DemoFile.read("weigh-ups.yaml", DemoWeighUps.class);
    }
}
