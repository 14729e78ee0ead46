package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.carcase.ThisAnimal;
import ribmark.curriculum.BoneWords;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.weighup.Numbers;

/** What comes free at the steps of a sheet, stage by stage: its bones and weight on this very animal, and what the scale has said so far. */
record ExpectedView(List<StageRows> stages, int left) {

    /** A stage in which something comes free. */
    public record StageRows(String title, List<PieceRow> rows) {}

    /** One piece: the step that frees it, its bones, what is expected of it, and its weight or that it is still to be weighed. */
    public record PieceRow(int step, String name, String bones, String expected, String weighed) {}

    private static final String NOT_YET = "not weighed";

    /** One thing asked: what a piece should weigh, and what it does. */
    interface Scale {

        /** The row of a table that expects this piece, moved for this animal. */
        Optional<Row> row(Cut cut);

        /** The carcase as the shares are of it, in grams. */
        double carcaseG();

        /** What was kept of a piece. */
        Optional<Weight> weighed(Cut cut, Side side);
    }

    static ExpectedView of(BlockSheet sheet, ThisAnimal animal, Scale scale) {
        Curriculum own = animal.curriculum();
        BoneWords bones = new BoneWords(own.skeleton());
        List<StageRows> stages = new ArrayList<>();
        for (Stage stage : own.breakdown().stages()) {
            List<PieceRow> rows = stage.steps().stream()
                    .flatMap(step -> pieces(own, step, sheet).map(piece -> row(step, piece, bones, scale)))
                    .toList();
            if (!rows.isEmpty()) {
                stages.add(new StageRows(stage.title(), rows));
            }
        }
        int left = (int) stages.stream()
                .flatMap(stage -> stage.rows().stream())
                .filter(row -> row.weighed().equals(NOT_YET))
                .map(PieceRow::name)
                .distinct()
                .count();
        return new ExpectedView(stages, left);
    }

    /** A cut on the side it comes from; until its last step what an optional one would take off is still on it. */
    private record Coming(Cut cut, Side side, boolean last) {

        private List<String> parts() {
            return cut.holdings().stream()
                    .filter(holding -> holding.side() == side)
                    .map(Cut.Holding::parts)
                    .reduce((done, left) -> last ? done : left)
                    .orElse(List.of());
        }
    }

    private static Stream<Coming> pieces(Curriculum own, Step step, BlockSheet sheet) {
        List<Side> watched = sheet.sidesOf(step.id());
        return Stream.concat(step.frees().stream(), step.leaves().stream())
                .filter(id -> !watched.isEmpty())
                .flatMap(id -> own.cut(id).stream())
                .flatMap(cut -> cut.sides().stream()
                        .filter(side -> side == Side.ONCE || !step.eachSide() || watched.contains(side))
                        .map(side -> new Coming(cut, side, isLast(own, step, cut))));
    }

    private static boolean isLast(Curriculum own, Step step, Cut cut) {
        return own.breakdown().steps().stream()
                .filter(later -> later.number() > step.number())
                .noneMatch(later ->
                        later.frees().contains(cut.id()) || later.leaves().contains(cut.id()));
    }

    private static PieceRow row(Step step, Coming piece, BoneWords bones, Scale scale) {
        String said = bones.sayParts(piece.parts());
        return new PieceRow(
                step.number(),
                piece.cut().name() + Saying.sided(piece.side()),
                said.isEmpty() ? "no bones" : said,
                scale.row(piece.cut())
                        .map(row -> expected(row, piece.side(), scale))
                        .orElse(""),
                scale.weighed(piece.cut(), piece.side()).map(Weight::toString).orElse(notYet(piece.cut())));
    }

    private static String expected(Row whole, Side side, Scale scale) {
        double percent = (side == Side.ONCE ? whole : whole.oneSide()).expected();
        return Numbers.kilograms(percent / 100 * scale.carcaseG()) + "\u00a0kg, " + Numbers.places(percent, 1)
                + "\u00a0%";
    }

    private static String notYet(Cut cut) {
        return cut.rows().isEmpty() && !cut.isFinal() ? "parted further" : NOT_YET;
    }

    /** How much is still to be weighed, in one sentence. */
    String leftInWords() {
        return left == 0
                ? "Everything that can be weighed has a weight."
                : Words.capital(Words.count(left, "piece has", "pieces have")) + " no weight yet.";
    }
}
