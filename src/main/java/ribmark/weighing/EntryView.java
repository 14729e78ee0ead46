package ribmark.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import ribmark.basics.Weight;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Stage;
import ribmark.scales.CheckedInWords;
import ribmark.web.Choice;

/** What the form offers for the next weight: the pieces of one stage, trays, scales, and whose the piece is. */
public record EntryView(
        List<Stage> stages,
        String stage,
        String hint,
        List<Choice> pieces,
        List<Choice> trays,
        List<Choice> scales,
        List<Choice> sheets,
        List<Choice> wholes,
        String closed,
        boolean open) {

    private static final int TRAYS = 3;
    private static final String HINT = "With words beneath: judged at that moment. Without: balanced only.";

    static EntryView of(Weighed on, String stage, CheckedInWords checked, boolean open) {
        List<Piece> pieces = on.pieces().all().stream()
                .filter(piece -> piece.stage().equals(stage))
                .toList();
        return new EntryView(
                on.stages(),
                stage,
                pieces.stream().allMatch(Piece::isJudged) ? null : HINT,
                pieces.stream().map(piece -> choice(piece, on.counting())).toList(),
                trays(on.counting()),
                on.curriculum().scales().stream()
                        .map(scale -> new Choice(scale.id(), ReadingView.scaleInWords(scale), checked.of(scale.id())))
                        .toList(),
                sheets(on.open()),
                wholes(on),
                on.closed(),
                open);
    }

    /** What the form needs to know of a carcase. */
    record Weighed(Curriculum curriculum, Pieces pieces, List<KeptReading> counting, List<BlockSheet> seen) {

        /** Every sheet that may be seen, with its names. */
        Map<UUID, String> sheets() {
            return names(seen.stream());
        }

        /** The sheets a weight can still count for. */
        Map<UUID, String> open() {
            return names(seen.stream().filter(BlockSheet::isOpen));
        }

        /** That a closed sheet changes no more; nothing while all are open. */
        String closed() {
            List<String> whose = seen.stream()
                    .filter(sheet -> !sheet.isOpen())
                    .map(sheet -> sheet.apprentice().name() + "’s")
                    .distinct()
                    .toList();
            return whose.isEmpty()
                    ? null
                    : "Closed: " + Words.list(whose) + " sheet" + (whose.size() > 1 ? "s" : "")
                            + ". What is weighed from now on counts for the carcase and not there.";
        }

        private static Map<UUID, String> names(Stream<BlockSheet> sheets) {
            Map<UUID, String> names = new LinkedHashMap<>();
            sheets.forEach(sheet -> names.put(
                    sheet.id(),
                    sheet.apprentice().name() + ", watched by "
                            + sheet.assessor().name()));
            return names;
        }

        /** The stages with something to weigh. */
        List<Stage> stages() {
            return curriculum.breakdown().stages().stream()
                    .filter(stage ->
                            pieces.all().stream().anyMatch(p -> p.stage().equals(stage.id())))
                    .toList();
        }

        /** The first stage in which a table still waits for a weight, or the first of all. */
        String nextStage() {
            return pieces.all().stream()
                    .filter(piece -> piece.row().isPresent())
                    .filter(piece -> counting.stream()
                            .noneMatch(kept ->
                                    kept.typed().row().equals(piece.row().map(row -> row.cut()))))
                    .map(Piece::stage)
                    .findFirst()
                    .orElseGet(() -> stages().get(0).id());
        }

        /** The larger pieces on the list that something may have come out of, by their rows. */
        List<String> wholes() {
            return counting.stream()
                    .filter(kept -> curriculum
                            .cut(kept.typed().cut())
                            .filter(cut -> !cut.isFinal())
                            .isPresent())
                    .flatMap(kept -> kept.typed().row().stream())
                    .distinct()
                    .toList();
        }
    }

    private static Choice choice(Piece piece, List<KeptReading> counting) {
        List<KeptReading> before = counting.stream()
                .filter(kept -> piece.isOf(
                        kept.typed().cut(), kept.typed().row(), kept.typed().side()))
                .toList();
        if (before.isEmpty()) {
            return new Choice(piece.code(), piece.name(), piece.hint());
        }
        Weight sum = before.stream().map(KeptReading::net).reduce(Weight.NONE, Weight::plus);
        return new Choice(piece.code(), piece.name(), "on the list: " + sum + "; another is added");
    }

    private static List<Choice> trays(List<KeptReading> counting) {
        List<Choice> trays = new ArrayList<>(List.of(Choice.of(WeighUpForm.NO_TRAY, "no tray")));
        counting.stream()
                .flatMap(kept -> kept.typed().tare().stream())
                .distinct()
                .sorted()
                .limit(TRAYS)
                .forEach(tare -> trays.add(Choice.of(tare.kilograms(), tare.toString())));
        trays.add(Choice.of(WeighUpForm.OTHER_TRAY, "another tray"));
        return trays;
    }

    private static List<Choice> sheets(Map<UUID, String> sheets) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(WeighUpForm.AS_SHEETS_SAY, "whoever’s sheet has the step");
        sheets.forEach((id, name) -> all.put(id.toString(), name));
        all.put(WeighUpForm.NOBODY, "nobody who is watched");
        return all.entrySet().stream()
                .map(entry -> Choice.of(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static List<Choice> wholes(Weighed on) {
        List<Choice> wholes = new ArrayList<>(List.of(Choice.of("", "choose for bone, trim and waste")));
        on.wholes().forEach(row -> wholes.add(Choice.of(row, name(on, row))));
        wholes.add(Choice.of(WeighUpForm.NOBODY, "none of these"));
        return wholes;
    }

    private static String name(Weighed on, String row) {
        return on.pieces().tables().stream()
                .flatMap(table -> table.row(row).stream())
                .findFirst()
                .map(r -> Words.inside(r.name()))
                .orElse(row);
    }
}
