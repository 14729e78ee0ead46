package ribmark.weighup;

import ribmark.basics.Side;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.Yardstick;

/**
 * The readings of one weigh-up added up in one pass, in plain numbers: what was weighed of the cut of each row, what came out of it,
 * and what came straight off the carcase. Rows stand at their places in the yardstick.
 */
final class Tally {

    private static final Mass NOTHING = new Mass(0, 0);

    private final Yardstick yardstick;
    private final double[] grams;
    private final double[] variances;
    private final Side[] sides;
    private final boolean[] atAnotherMoment;
    private final Mass[] parts;
    private final Mass offTheCarcase;

    Tally(WeighUp weighUp) {
        yardstick = weighUp.yardstick();
        int rows = yardstick.size();
        grams = new double[rows];
        variances = new double[rows];
        sides = new Side[rows];
        atAnotherMoment = new boolean[rows];
        parts = new Mass[rows];
        offTheCarcase = addUp(weighUp);
    }

    private Mass addUp(WeighUp weighUp) {
        double off = 0;
        double offVariance = 0;
        int place = 0;
        for (Reading reading : weighUp.readings()) {
            double net = reading.netG();
            double variance = reading.varianceG2();
            int found = yardstick.place(reading.cut(), place);
            int whole = found == Yardstick.NONE ? yardstick.place(reading.partOf(), 0) : yardstick.whole(found);
            if (whole == Yardstick.NONE) {
                off += net;
                offVariance += variance;
            } else {
                parts[whole] = partsOf(whole).plus(new Mass(net, variance));
            }
            if (found != Yardstick.NONE) {
                place = found;
                grams[place] += net;
                variances[place] += variance;
                note(place, reading);
            }
        }
        return new Mass(off, offVariance);
    }

    private void note(int place, Reading reading) {
        Side side = reading.side() == Side.ONCE ? Side.BOTH : reading.side();
        sides[place] = sides[place] == null || sides[place] == side ? side : Side.BOTH;
        if (!reading.isAtTheMomentOf(yardstick.row(place))) {
            atAnotherMoment[place] = true;
        }
    }

    /** Whether anything of a row's cut was weighed. */
    boolean isWeighed(int place) {
        return sides[place] != null;
    }

    /** Which sides of it: both when it was weighed as one. */
    Side sides(int place) {
        return sides[place];
    }

    /** What was weighed of a row's cut. */
    Mass cut(int place) {
        return new Mass(grams[place], variances[place]);
    }

    /** Whether everything weighed of a row's cut was weighed when the row means it. */
    boolean isAtItsMoment(int place) {
        return !atAnotherMoment[place];
    }

    /** What came out of the cut of this row, or with {@link Yardstick#NONE} off the carcase. */
    Mass partsOf(int whole) {
        if (whole == Yardstick.NONE) {
            return offTheCarcase;
        }
        return isParted(whole) ? parts[whole] : NOTHING;
    }

    /** Whether anything was weighed that came out of the cut of this row. */
    boolean isParted(int whole) {
        return parts[whole] != null;
    }
}
