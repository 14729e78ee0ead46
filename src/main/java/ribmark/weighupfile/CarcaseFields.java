package ribmark.weighupfile;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import ribmark.basics.Weight;
import ribmark.scoring.Scale;
import ribmark.weighup.CarcaseReading;

/** The carcase of a weigh-up file. */
final class CarcaseFields {

    /** Fat classes 1 to 5, some divided into L and H (Sheep carcase classification in Scotland, guidance to the 2025 Regulations). */
    private static final Pattern FAT_CLASS = Pattern.compile("[1-5][LH]?");

    private static final Pattern VERTEBRAE = Pattern.compile("[0-9]{1,2}(,[0-9]{1,2}){4}");
    private static final String HELP =
            "Write {\"weightKg\": \"20.120\", \"weighed\": \"cold\", \"kidneys\": \"in\"}, with the weight on your own scale.";

    private CarcaseFields() {}

    static Optional<CarcaseReading> read(Fields file, Optional<Scale> ofTheFile) {
        Optional<Fields> found = file.object("carcase", HELP);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = found.get().only("weightKg", "weighed", "kidneys", "fatClass", "vertebrae", "scale");
        Optional<Weight> weight = fields.weight("weightKg");
        Optional<String> weighed = fields.word("weighed", List.of("cold", "hot"));
        Optional<String> kidneys = fields.word("kidneys", List.of("in", "out"));
        Optional<String> fatClass =
                matching(fields, "fatClass", FAT_CLASS, "Write it as on the ticket, for example \"3L\".");
        Optional<String> vertebrae = matching(
                fields, "vertebrae", VERTEBRAE, "Write five counts from neck to tail, for example \"7,14,6,4,3\".");
        Optional<Scale> scale = ScaleFields.own(fields, ofTheFile);
        if (weight.isEmpty() || weighed.isEmpty() || kidneys.isEmpty() || scale.isEmpty()) {
            return Optional.empty();
        }
        boolean hot = weighed.get().equals("hot");
        boolean kidneysIn = kidneys.get().equals("in");
        return Optional.of(new CarcaseReading(
                weight.get(), hot, kidneysIn, fatClass, vertebrae, scale.get(), fields.typed("weightKg")));
    }

    private static Optional<String> matching(Fields fields, String name, Pattern pattern, String help) {
        if (!fields.has(name)) {
            return Optional.empty();
        }
        Optional<String> typed = fields.text(name, help);
        Optional<String> good = typed.map(t -> t.strip().toUpperCase(Locale.ROOT))
                .filter(t -> pattern.matcher(t).matches());
        if (typed.isPresent() && good.isEmpty()) {
            fields.refuse(name, Fields.quoted(typed.get()) + " cannot be " + Fields.quoted(name), help);
        }
        return good;
    }
}
