package ribmark.feedback;

import java.util.List;
import ribmark.blocksheet.BlockSheet;

/** Says what was weighed and measured for the apprentice of a sheet; worked out where weights are, never here. */
public interface WeighedFor {

    /** The lines of this sheet, in the order worked; none when nothing was weighed for it. */
    List<VerdictLine> of(BlockSheet sheet);
}
