package ribmark.weighing;

import java.util.Optional;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;

/** Whether a block sheet has the step that frees a piece, on the side the piece came from. */
final class WhoFreed {

    private WhoFreed() {}

    static boolean of(Curriculum curriculum, Piece piece, BlockSheet sheet) {
        Optional<Step> step = curriculum.stepThatFrees(piece.cut().id());
        return step.filter(s -> s.eachSide() && piece.side() != Side.ONCE
                        ? sheet.sidesOf(s.id()).contains(piece.side())
                        : !sheet.sidesOf(s.id()).isEmpty())
                .isPresent();
    }
}
