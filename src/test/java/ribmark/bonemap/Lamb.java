package ribmark.bonemap;

import ribmark.anatomy.Formula;
import ribmark.contentfiles.ContentFiles;
import ribmark.curriculum.Curriculum;
import ribmark.proof.Check;

/** The lamb that comes with the program, read once for all tests of its pictures. */
final class Lamb {

    static final Curriculum CURRICULUM =
            Check.of(ContentFiles.ours()).curriculum().orElseThrow();

    static final BoneMap MAP = new BoneMap(CURRICULUM);

    private Lamb() {}

    static Drawing drawn(String view, String formula) {
        return MAP.drawing(view, Formula.parse(formula));
    }
}
