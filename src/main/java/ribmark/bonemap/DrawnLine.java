package ribmark.bonemap;

import java.util.List;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Landmark;

/** A line on the picture: dashed while it is only planned or marked, solid once it is cut, dotted where it ran instead. */
record DrawnLine(Shape shape, Stroke stroke) {

    /** How a line is drawn: the word for it, and how long its dashes and gaps are, in breadths of the line. */
    enum Stroke {
        PLANNED("dashed line", List.of(12 / 3.4, 6 / 3.4)),
        CUT("solid line", List.of()),
        RAN("dotted line", List.of(1.0, 1.2));

        private final String word;
        private final List<Double> dashes;

        Stroke(String word, List<Double> dashes) {
            this.word = word;
            this.dashes = dashes;
        }

        List<Double> dashes() {
            return dashes;
        }
    }

    DrawnLine(Shape shape, boolean cut) {
        this(shape, cut ? Stroke.CUT : Stroke.PLANNED);
    }

    boolean cut() {
        return stroke == Stroke.CUT;
    }

    String word() {
        return stroke.word;
    }

    /** What the line runs by. */
    String name(Curriculum curriculum) {
        return curriculum.landmark(shape.of()).map(Landmark::name).orElse("The middle of the animal");
    }
}
