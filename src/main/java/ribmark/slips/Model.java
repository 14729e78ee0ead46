package ribmark.slips;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.scoring.Ground;

/** Every figure the search for slips and moved lines works with, as the college's files give it; nearly all of it is judgement. */
public record Model(
        String standing,
        String text,
        Loss loss,
        CarcaseWeight carcase,
        SlipFigures slips,
        LineFigures departures,
        List<Line> lines,
        List<Split> splits) {

    /** Keeps its own copies. */
    public Model {
        lines = List.copyOf(lines);
        splits = List.copyOf(splits);
    }

    /** What is lost between the whole carcase and its pieces, in percent of the carcase. */
    public record Loss(double expectedPercent, double sdPercent, List<Ground> grounds) {}

    /** What a carcase weighs before anybody has looked at the scale, in kilograms; only used to judge its own entry. */
    public record CarcaseWeight(double meanKg, double sdKg, List<Ground> grounds) {}

    /**
     * How often a weigh-up holds no slip, what trays weigh in grams, how much less likely a weight is that the scale cannot show,
     * from where on a slip is spoken of, and how many pounds make a kilogram.
     */
    public record SlipFigures(
            double none,
            double trayLowestG,
            double trayHighestG,
            double offDivision,
            double poundsAKilogram,
            double suspectBelow,
            double listedFrom,
            List<Ground> grounds) {}

    /** How often no line was moved, and from which probability one is listed, said to fit, or nothing said to stand out. */
    public record LineFigures(
            double none, double listedFrom, double fitsFrom, double nothingFrom, List<Ground> grounds) {}

    /** How far a line may have gone: in words, and how often in comparison with the other distances. */
    public record Distance(String words, double weight) {}

    /** What one step of a moved line does to the cuts of a table, both sides together, in points of the carcase. */
    public record Move(Map<String, Double> points, List<Ground> grounds) {

        /** Keeps its own copy. */
        public Move {
            points = Map.copyOf(points);
        }
    }

    /** A line by its id and name, the ends it may have gone towards, and how far: two steps lie twice as far as one. */
    public record Named(String id, String name, String towards, String otherwise, List<Distance> distances) {

        /** Keeps its own copy. */
        public Named {
            distances = List.copyOf(distances);
        }
    }

    /** A line that may have been cut elsewhere: towards the first end as its moves say, towards the other with signs turned. */
    public record Line(Named named, List<Move> moves) {

        /** Keeps its own copy. */
        public Line {
            moves = List.copyOf(moves);
        }
    }

    /** A split between left and right that may have run off the middle, by a share of what the whole pair should weigh. */
    public record Split(Named named, double share, List<String> rows, List<Ground> grounds) {

        /** Keeps its own copy. */
        public Split {
            rows = List.copyOf(rows);
        }
    }

    /** The line or split with this id, if there is one. */
    public Optional<Named> named(String id) {
        return Stream.concat(lines.stream().map(Line::named), splits.stream().map(Split::named))
                .filter(named -> named.id().equals(id))
                .findFirst();
    }

    /** Why the cuts of a table with these spreads cannot add up to a whole, as a sentence, or nothing when they can. */
    public static Optional<String> whyNotWhole(double[] sds) {
        return Spreads.whyNot(sds);
    }
}
