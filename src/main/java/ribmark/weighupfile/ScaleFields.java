package ribmark.weighupfile;

import java.util.Optional;
import ribmark.scoring.Scale;
import ribmark.weighup.Numbers;

/** The scale of a reading: its own, or the one named for the whole file. */
final class ScaleFields {

    /** No scale for lamb is coarser than this, in grams (ours, so that a slip of the pen is caught). */
    private static final double COARSEST_G = 1000;

    private static final String HELP = "Write {\"divisionG\": 5, \"repeatabilityG\": 2.0}, both in grams.";

    private ScaleFields() {}

    static Optional<Scale> read(Fields fields, String name) {
        Optional<Fields> scale = fields.object(name, HELP);
        if (scale.isEmpty()) {
            return Optional.empty();
        }
        Fields inside = scale.get().only("divisionG", "repeatabilityG");
        Optional<Double> division = inside.number(
                "divisionG", 0, COARSEST_G, "Write the step of the display in grams, more than 0, as a number.");
        Optional<Double> repeatability = inside.number(
                "repeatabilityG",
                -Double.MIN_VALUE,
                COARSEST_G,
                "Write the scatter of repeated readings in grams, 0 or more, as a number.");
        return division.flatMap(d -> repeatability.map(s -> new Scale("", Numbers.plain(d) + "\u00a0g", d, s)));
    }

    /** The scale of the whole file; missing is only a problem when a reading has none of its own. */
    static Optional<Scale> ofTheFile(Fields file) {
        if (file.has("scale")) {
            return read(file, "scale");
        }
        if (!file.allHave("scale", "carcase", "pieces")) {
            file.refuse("scale", "“scale” is missing", HELP);
        }
        return Optional.empty();
    }

    /** The reading's own scale, else the file's. */
    static Optional<Scale> own(Fields fields, Optional<Scale> ofTheFile) {
        return fields.has("scale") ? read(fields, "scale") : ofTheFile;
    }
}
