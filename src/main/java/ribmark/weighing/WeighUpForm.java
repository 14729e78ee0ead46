package ribmark.weighing;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Weight;
import ribmark.blocksheet.BlockSheet;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.Scale;
import ribmark.web.Form;
import ribmark.weighing.KeptReading.Typed;

/** One weight as typed in, checked field by field; a weight that could be right is kept, however odd. */
final class WeighUpForm {

    static final String NO_TRAY = "none";
    static final String OTHER_TRAY = "other";
    static final String AS_SHEETS_SAY = "sheets";
    static final String NOBODY = "nobody";

    /** More than this no block bears; it is a slip of the point (our own line). */
    private static final long HEAVIEST_G = 1_000_000;

    private final Form form;
    private final Pieces pieces;
    private final Curriculum curriculum;
    private final List<BlockSheet> sheets;
    private final List<String> wholes;

    /** Only open sheets are handed in: a closed one changes no more. */
    WeighUpForm(Form form, Pieces pieces, Curriculum curriculum, List<BlockSheet> sheets, List<String> wholes) {
        this.form = form;
        this.pieces = pieces;
        this.curriculum = curriculum;
        this.sheets = sheets;
        this.wholes = wholes;
    }

    /** What was typed; nothing when something is to be put right. */
    Optional<Typed> read() {
        Optional<Piece> piece = pieces.coded(form.value("piece"));
        if (piece.isEmpty()) {
            form.add("piece", "What is on the scale: nothing was chosen. Choose the piece.");
        }
        Optional<Weight> weight = weight("weight", "Weight");
        Optional<Weight> tare = tare(weight);
        String scale = form.oneOf(
                "scale", "Scale", curriculum.scales().stream().map(Scale::id).toList());
        Optional<String> partOf = piece.flatMap(this::partOf);
        Optional<UUID> sheet = piece.flatMap(this::sheet);
        if (form.wrong()) {
            return Optional.empty();
        }
        Piece read = piece.orElseThrow();
        return Optional.of(new Typed(
                read.cut().id(),
                read.row().map(row -> row.cut()),
                read.side(),
                weight.orElseThrow(),
                tare,
                scale,
                form.value("later").equals("yes"),
                partOf,
                sheet,
                Optional.of(form.value("weight").strip())));
    }

    private Optional<Weight> weight(String field, String name) {
        return weight(form, field, name);
    }

    /** A weight as typed; what cannot be one is put beside the field. */
    static Optional<Weight> weight(Form form, String field, String name) {
        String typed = form.value(field);
        Optional<String> whyNot = Weight.whyNot(typed);
        if (whyNot.isPresent()) {
            form.add(field, name + ": " + whyNot.get());
            return Optional.empty();
        }
        Weight weight = Weight.ofKilograms(typed);
        if (weight.grams() == 0) {
            form.add(field, name + ": nothing weighs " + weight + ". Type what the scale shows.");
        } else if (weight.grams() > HEAVIEST_G) {
            form.add(
                    field, name + ": " + weight + " is more than a block can bear. Type kilograms, for example 7.310.");
        }
        return Optional.of(weight);
    }

    private Optional<Weight> tare(Optional<Weight> gross) {
        String tray = form.value("tray");
        if (tray.equals(NO_TRAY)) {
            if (!form.value("tare").isEmpty()) {
                form.add(
                        "tray",
                        "Tray: “no tray” was chosen, and a tray’s weight typed. Choose “another tray”, or empty the field.");
            }
            return Optional.empty();
        }
        Optional<Weight> tare = tray.equals(OTHER_TRAY) ? weight("tare", "Weight of the tray") : known(tray);
        String field = tray.equals(OTHER_TRAY) ? "tare" : "tray";
        if (tare.isPresent() && gross.isPresent() && tare.get().compareTo(gross.get()) >= 0) {
            form.add(
                    field,
                    "Tray: " + tare.get() + " is not less than " + gross.get()
                            + ", tray and piece together. Weigh it with the tray, or choose “no tray”.");
        }
        return tare;
    }

    private Optional<Weight> known(String tray) {
        if (Weight.whyNot(tray).isPresent()) {
            form.add("tray", "Tray: nothing was chosen. Choose one.");
            return Optional.empty();
        }
        return Optional.of(Weight.ofKilograms(tray));
    }

    private Optional<String> partOf(Piece piece) {
        if (!piece.mustSayWhereFrom() || wholes.isEmpty()) {
            return Optional.empty();
        }
        String typed = form.value("partOf");
        if (!typed.equals(NOBODY) && !wholes.contains(typed)) {
            form.add(
                    "partOf",
                    "Came out of: nothing was chosen for the " + piece.nameInside() + ". Choose what it was cut from.");
        }
        return Optional.of(typed).filter(wholes::contains);
    }

    private Optional<UUID> sheet(Piece piece) {
        String typed = form.value("sheet");
        if (typed.equals(NOBODY) || typed.isEmpty() && sheets.isEmpty()) {
            return Optional.empty();
        }
        if (typed.equals(AS_SHEETS_SAY)) {
            return asSheetsSay(piece);
        }
        Optional<BlockSheet> chosen = sheets.stream()
                .filter(sheet -> sheet.id().toString().equals(typed))
                .findFirst();
        if (chosen.isEmpty()) {
            form.add("sheet", "Freed by: that sheet is not open, or nothing was chosen. Choose a name, or nobody.");
        }
        return chosen.map(BlockSheet::id);
    }

    private Optional<UUID> asSheetsSay(Piece piece) {
        List<BlockSheet> watching = sheets.stream()
                .filter(sheet -> WhoFreed.of(curriculum, piece, sheet))
                .toList();
        if (watching.size() > 1) {
            form.add(
                    "sheet",
                    "Freed by: " + watching.size() + " sheets have the step that frees the " + piece.nameInside()
                            + ". Choose whose it is.");
        }
        return watching.stream().map(BlockSheet::id).findFirst();
    }
}
