package ribmark.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Step;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.weighup.CarcaseReading;

/** Everything of one carcase that can be put on the scale, in the order it comes off: what a table weighs, and what work ends with. */
final class Pieces {

    private final List<Piece> all = new ArrayList<>();
    private final List<ReferenceTable> tables;

    private Pieces(List<ReferenceTable> tables) {
        this.tables = tables;
    }

    static Pieces of(Curriculum curriculum, CarcaseReading carcase) {
        Pieces pieces = new Pieces(TableChoice.usable(curriculum.tables(), carcase));
        stages(curriculum).forEach((cut, stage) -> {
            if (curriculum.tables().stream().noneMatch(table -> lacks(table, cut, carcase))) {
                pieces.add(cut, stage);
            }
        });
        return pieces;
    }

    private static boolean lacks(ReferenceTable table, Cut cut, CarcaseReading carcase) {
        return !cut.rows().isEmpty()
                && cut.rows().stream().allMatch(row -> table.lacks(row, carcase.conditions(table.hot())));
    }

    /** Each cut with the stage that frees it; what no step frees gathers until the last one. */
    private static Map<Cut, String> stages(Curriculum curriculum) {
        Map<Cut, String> stages = new LinkedHashMap<>();
        List<Step> steps = curriculum.breakdown().steps();
        for (Step step : steps) {
            Stream.concat(step.frees().stream(), step.leaves().stream())
                    .flatMap(id -> curriculum.cut(id).stream())
                    .forEach(cut -> stages.putIfAbsent(cut, step.stageId()));
        }
        String last = steps.get(steps.size() - 1).stageId();
        curriculum.cuts().forEach(cut -> stages.putIfAbsent(cut, last));
        return stages;
    }

    private void add(Cut cut, String stage) {
        List<Row> rows = tables.stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> cut.rows().contains(row.cut()))
                .filter(row -> firstOf(row.cut()) == row)
                .toList();
        List<Optional<Row>> weighedFor = rows.isEmpty()
                ? cut.isFinal() ? List.of(Optional.empty()) : List.of()
                : rows.stream().map(Optional::of).toList();
        for (Optional<Row> row : weighedFor) {
            cut.sides().forEach(side -> all.add(new Piece(cut, row, side, stage, rows.size() > 1)));
        }
    }

    private Row firstOf(String cut) {
        return tables.stream()
                .flatMap(table -> table.row(cut).stream())
                .findFirst()
                .orElseThrow();
    }

    List<Piece> all() {
        return List.copyOf(all);
    }

    /** The tables that can judge such a carcase, the coarsest first. */
    List<ReferenceTable> tables() {
        return tables;
    }

    Optional<Piece> coded(String code) {
        return all.stream().filter(piece -> piece.code().equals(code)).findFirst();
    }

    /** The piece a reading was of, as long as the content still knows it. */
    Optional<Piece> of(KeptReading reading) {
        var typed = reading.typed();
        return all.stream()
                .filter(piece -> piece.isOf(typed.cut(), typed.row(), typed.side()))
                .findFirst();
    }

    /** Where a cut stands in the order things come off; one that is not known comes last. */
    int order(String cutId, Side side) {
        for (int at = 0; at < all.size(); at++) {
            if (all.get(at).cut().id().equals(cutId) && all.get(at).side() == side) {
                return at;
            }
        }
        return all.size();
    }
}
