package ribmark.weighing;

import java.util.Locale;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.curriculum.Cut;
import ribmark.scoring.ReferenceTable.Row;

/** One thing that can stand on the scale: a cut on its side, and the row of a reference table it is weighed for, if one weighs it. */
record Piece(Cut cut, Optional<Row> row, Side side, String stage, boolean oneOfSeveralRows) {

    /** What a form sends for it. */
    String code() {
        return cut.id() + row.map(r -> "." + r.cut()).orElse("") + "." + side.word();
    }

    /** What it is called; left and right are told apart. */
    String name() {
        String name = oneOfSeveralRows ? row.orElseThrow().name() : cut.name();
        return side == Side.ONCE ? name : name + ", " + side.word();
    }

    /** The same inside a sentence. */
    String nameInside() {
        return name().substring(0, 1).toLowerCase(Locale.ROOT) + name().substring(1);
    }

    /** When it should be on the scale to be judged; nothing for what is balanced only. */
    String hint() {
        return isJudged() ? row.orElseThrow().moment() : null;
    }

    /** Whether a table judges it as it comes to the scale. */
    boolean isJudged() {
        return row.isPresent() && cut.moment().isEmpty();
    }

    /** Whether nothing in it tells what larger piece it came out of. */
    boolean mustSayWhereFrom() {
        return cut.isBoneless() && row.isEmpty();
    }

    boolean isOf(String cutId, Optional<String> rowId, Side onSide) {
        return cut.id().equals(cutId) && side == onSide && row.map(Row::cut).equals(rowId);
    }
}
