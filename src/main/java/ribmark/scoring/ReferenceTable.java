package ribmark.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.Refused;

/** What each cut is expected to weigh in percent of the carcase, how far lambs differ, and where every figure comes from. */
public record ReferenceTable(
        String id,
        String title,
        String standing,
        String text,
        Bounds bounds,
        KidneysOut kidneysOut,
        Hot hot,
        GapLimits gap,
        Losses losses,
        OtherAnimal other,
        PairTolerances pairs,
        CuttingRule cutting,
        List<Row> rows,
        List<Ground> grounds) {

    /** Keeps its own copies. */
    public ReferenceTable {
        rows = List.copyOf(rows);
        grounds = List.copyOf(grounds);
    }

    /** What one cut is expected to be, at one moment; {@code partOf} names the larger pieces it may have come out of, the nearest first. */
    public record Row(
            String cut,
            String name,
            boolean pair,
            double pairSpread,
            String moment,
            double expected,
            double sd,
            List<Ground> grounds,
            List<String> partOf) {

        /** Refuses a row that could judge nothing. */
        public Row {
            if (!(expected > 0 && sd > 0 && pairSpread >= 0)) {
                throw new IllegalArgumentException("Row " + cut + " expects nothing or has no spread");
            }
            grounds = List.copyOf(grounds);
            partOf = List.copyOf(partOf);
        }

        /** The weakest ground its figures stand on. */
        public Basis basis() {
            return Basis.weakest(grounds.stream().map(Ground::basis).toList());
        }

        /** The keys of its sources, each once. */
        public String source() {
            return String.join(
                    ", ", grounds.stream().map(Ground::source).distinct().toList());
        }

        /**
         * One side of a pair: half of what both are expected to be. Its spread is half that of the two halves together,
         * one as they share the animal and one as the saw parts them.
         */
        public Row oneSide() {
            double spread = Math.hypot(sd, pairSpread * expected) / 2;
            return new Row(cut, name, pair, pairSpread, moment, expected / 2, spread, grounds, partOf);
        }

        Row with(double otherExpected, double otherSd) {
            return new Row(cut, name, pair, pairSpread, moment, otherExpected, otherSd, grounds, partOf);
        }

        Row and(List<Ground> more) {
            return restingOn(Stream.concat(grounds.stream(), more.stream()).toList());
        }

        Row restingOn(List<Ground> others) {
            return new Row(cut, name, pair, pairSpread, moment, expected, sd, others, partOf);
        }
    }

    /** Carcases the spreads were meant for, ends included; outside them the spreads are multiplied by {@code widen}. */
    public record Bounds(double lowestKg, double highestKg, List<String> fatClasses, double widen) {

        /** Keeps its own copy of the fat classes. */
        public Bounds {
            fatClasses = List.copyOf(fatClasses);
        }

        /** Whether the spreads were meant for such a carcase. */
        public boolean hold(Conditions conditions) {
            return holdsWeight(conditions)
                    && (conditions.fatClass().isEmpty()
                            || fatClasses.contains(conditions.fatClass().get()));
        }

        private boolean holdsWeight(Conditions conditions) {
            return conditions.coldKg() >= lowestKg && conditions.coldKg() <= highestKg;
        }

        /** Why this carcase lies outside, as the end of a sentence, or nothing. */
        public Optional<String> whyOutside(Conditions conditions) {
            if (!holdsWeight(conditions)) {
                return Optional.of("its weight is outside " + plain(lowestKg) + " to " + plain(highestKg) + "\u00a0kg");
            }
            return conditions
                    .fatClass()
                    .filter(fat -> !fatClasses.contains(fat))
                    .map(fat -> "fat class " + fat + " is not one of " + String.join(", ", fatClasses));
        }

        private static String plain(double number) {
            return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
        }
    }

    /** What changes when the kidneys left at dressing; {@code instead} names the table to take where this one cannot be used. */
    public record KidneysOut(double divideBy, List<String> leavesOut, boolean possible, String instead) {

        /** Keeps its own copy of the cuts that are gone. */
        public KidneysOut {
            leavesOut = List.copyOf(leavesOut);
        }
    }

    /** What a hot weight is multiplied by to stand for the cold one, and how sure that factor is. */
    public record Hot(double multiplyBy, double standardUncertainty) {}

    /** How much of a whole may be lost between the scale and its pieces, in percent: up to where it balances, and up to where it is asked about. */
    public record GapLimits(double balancedToPercent, double queryToPercent) {}

    /** What drip and saw are expected to take, in percent of the whole: when the carcase is parted, and when a cut is parted again. */
    public record Losses(double ofCarcasePercent, double ofCarcaseSd, double ofCutPercent, double ofCutSd) {

        /** What is expected to be lost from a whole of this weight, in grams. */
        public double expectedG(double wholeG, boolean carcase) {
            return wholeG * (carcase ? ofCarcasePercent : ofCutPercent) / 100;
        }

        /** How unsure that is, in square grams. */
        public double varianceG2(double wholeG, boolean carcase) {
            double sd = wholeG * (carcase ? ofCarcaseSd : ofCutSd) / 100;
            return sd * sd;
        }
    }

    /** The row that judges this cut, if the table has one. */
    public Optional<Row> row(String cut) {
        return rows.stream().filter(row -> row.cut().equals(cut)).findFirst();
    }

    /** Whether the kidneys took this cut with them at dressing. */
    public boolean lacks(String cut, Conditions conditions) {
        return !conditions.kidneysIn() && kidneysOut.leavesOut().contains(cut);
    }

    /** Why the spreads are wider for this carcase, each as the end of a sentence; nothing when they stand. */
    public List<String> whyWidened(Conditions conditions) {
        List<String> why = new ArrayList<>();
        bounds.whyOutside(conditions).ifPresent(why::add);
        if (!conditions.vertebrae().areUsual() && other.widen() > 1) {
            why.add("it has another number of vertebrae");
        }
        return why;
    }

    /** What every spread is multiplied by for this carcase; two reasons widen no further than the stronger of them. */
    public double widening(Conditions conditions) {
        double outside = bounds.hold(conditions) ? 1 : bounds.widen();
        double another = conditions.vertebrae().areUsual() ? 1 : other.widen();
        return Math.max(outside, another);
    }

    /** Why this table cannot judge such a carcase at all, or nothing when it can. */
    public Optional<String> whyNot(Conditions conditions) {
        return conditions.kidneysIn() || kidneysOut.possible()
                ? Optional.empty()
                : Optional.of("Table " + id + " expects the kidneys in; for a carcase without them use "
                        + kidneysOut.instead() + ".");
    }

    /** Whether what this table expects can follow the vertebrae of this animal. */
    public boolean follows(Conditions conditions) {
        return !other.gains(conditions.vertebrae()).isEmpty()
                && other.reaches(dressed(conditions), conditions.vertebrae(), share(conditions));
    }

    /** The same table as it holds for one carcase: cuts that are not there left out, means and spreads adjusted. */
    public ReferenceTable under(Conditions conditions) {
        whyNot(conditions).ifPresent(why -> {
            throw new Refused(why);
        });
        return with(other.moved(dressed(conditions), conditions.vertebrae(), share(conditions)));
    }

    private double share(Conditions conditions) {
        return conditions.kidneysIn() ? 1 : kidneysOut.divideBy();
    }

    private List<Row> dressed(Conditions conditions) {
        double share = share(conditions);
        double widen = widening(conditions);
        return rows.stream()
                .filter(row -> !lacks(row.cut(), conditions))
                .map(row -> row.with(row.expected() / share, row.sd() * widen))
                .toList();
    }

    ReferenceTable with(List<Row> otherRows) {
        return new ReferenceTable(
                id,
                title,
                standing,
                text,
                bounds,
                kidneysOut,
                hot,
                gap,
                losses,
                other,
                pairs,
                cutting,
                otherRows,
                grounds);
    }
}
