package ribmark.weighupfile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Scale;
import ribmark.weighup.CarcaseReading;
import ribmark.weighup.Reading;

/** The pieces of a weigh-up file. */
final class PieceFields {

    private static final String HELP = "Write a list of pieces, each with \"cut\" and \"weightKg\".";
    private static final double HEAVIEST_TRAY_G = 100_000;

    private final TableFields tables;
    private final Optional<CarcaseReading> carcase;
    private final Optional<Scale> ofTheFile;
    private final Map<String, Boolean> bySide = new HashMap<>();

    PieceFields(TableFields tables, Optional<CarcaseReading> carcase, Optional<Scale> ofTheFile) {
        this.tables = tables;
        this.carcase = carcase;
        this.ofTheFile = ofTheFile;
    }

    List<Reading> read(Fields file) {
        List<Reading> readings = new ArrayList<>();
        List<Fields> pieces = file.objects("pieces", HELP);
        if (file.isEmptyList("pieces")) {
            file.refuse("pieces", "No piece was weighed", HELP);
        }
        for (Fields piece : pieces) {
            one(piece).ifPresent(readings::add);
        }
        return readings;
    }

    private Optional<Reading> one(Fields piece) {
        piece.only("cut", "side", "weightKg", "tareG", "scale");
        Optional<String> cut = piece.text("cut", "Name a cut: " + String.join(", ", tables.cuts()) + ".");
        boolean known = cut.isPresent() && isKnown(piece, cut.get());
        Optional<Side> side = side(piece, known ? cut : Optional.empty());
        Optional<Weight> weight = piece.weight("weightKg");
        Optional<Weight> tare = piece.has("tareG") ? tare(piece, weight) : Optional.empty();
        Optional<Scale> scale = ScaleFields.own(piece, ofTheFile);
        if (!known || side.isEmpty() || weight.isEmpty() || scale.isEmpty()) {
            return Optional.empty();
        }
        // by the row's own name, so that a million of them share one
        String name = tables.row(cut.get()).map(Row::cut).orElse(cut.get());
        Reading reading =
                Reading.of(name, side.get(), weight.get(), scale.get()).asTyped(piece.typed("weightKg"));
        return Optional.of(tare.map(reading::withTare).orElse(reading));
    }

    private boolean isKnown(Fields piece, String cut) {
        if (carcase.filter(c -> tables.lacks(cut, c)).isPresent()) {
            piece.refuse(
                    "cut",
                    "The kidneys were out, so " + Fields.quoted(cut) + " cannot have been weighed",
                    "Leave it out, or say that the kidneys are in.");
            return false;
        }
        if (tables.row(cut).isPresent() || References.BALANCED_ONLY.contains(cut) || !tables.allFound()) {
            return true;
        }
        piece.refuse(
                "cut",
                "No cut " + Fields.quoted(cut) + " in the table named",
                "It weighs " + String.join(", ", tables.cuts()) + "; " + String.join(", ", References.BALANCED_ONLY)
                        + " are balanced only.");
        return false;
    }

    private Optional<Side> side(Fields piece, Optional<String> cut) {
        Side side = Side.ONCE;
        if (piece.has("side")) {
            Optional<String> word = piece.word("side", List.of(Side.LEFT.word(), Side.RIGHT.word()));
            if (word.isEmpty()) {
                return Optional.empty();
            }
            side = Side.of(word.get()).orElseThrow();
        }
        return cut.isEmpty() || fits(piece, cut.get(), side) ? Optional.of(side) : Optional.empty();
    }

    private boolean fits(Fields piece, String cut, Side side) {
        boolean sided = side != Side.ONCE;
        Optional<Row> row = tables.row(cut);
        if (sided && row.isPresent() && !row.get().pair()) {
            piece.refuse("side", "There is no left and right of " + cut, "Take the side out.");
            return false;
        }
        Boolean before = bySide.putIfAbsent(cut, sided);
        if (row.isPresent() && before != null && before != sided) {
            piece.refuse(
                    "side",
                    cut + " stands here with a side and elsewhere without one",
                    "Give every entry of it a side, or none.");
            return false;
        }
        return true;
    }

    private static Optional<Weight> tare(Fields piece, Optional<Weight> weight) {
        String help = "Write the tray's weight in whole grams, as a number, for example 850.";
        Optional<Double> grams = piece.number("tareG", -Double.MIN_VALUE, HEAVIEST_TRAY_G, help);
        if (grams.isPresent() && grams.get() != Math.rint(grams.get())) {
            piece.refuse("tareG", "The tray is given finer than a gram", help);
            return Optional.empty();
        }
        Optional<Weight> tare = grams.map(g -> new Weight(Math.round(g)));
        if (tare.isPresent() && weight.isPresent() && tare.get().compareTo(weight.get()) >= 0) {
            piece.refuse("tareG", "The tray weighs as much as the tray with the piece on it, or more", help);
            return Optional.empty();
        }
        return tare;
    }
}
