package ribmark.bonemap;

import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Landmark;

/** A line on the picture: dashed while it is only planned or marked, solid once it is cut. */
record DrawnLine(Shape shape, boolean cut) {

    String word() {
        return cut ? "solid line" : "dashed line";
    }

    /** What the line runs by. */
    String name(Curriculum curriculum) {
        return curriculum.landmark(shape.of()).map(Landmark::name).orElse("The middle of the animal");
    }
}
