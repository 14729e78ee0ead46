package ribmark.carcase;

import java.time.ZoneId;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Stream;
import ribmark.anatomy.Formula;
import ribmark.basics.Refused;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;

/**
 * The animal whose bones, lines and pieces stand on the pages about one carcase: its own as last counted, or the usual one while
 * nobody has counted it or the breakdown does not hold on it.
 */
public record ThisAnimal(Carcase carcase, Curriculum curriculum, String why) {

    /** What is counted on an animal, and where it stands among the numbers of its vertebrae. */
    private enum Part {
        RIBS("pairs of ribs", "ribs", 1, Counted::thoracic),
        LOIN("loin vertebrae", "loin", 2, Counted::lumbar);

        private final String words;
        private final String word;
        private final int at;
        private final Function<Counted, OptionalInt> region;

        Part(String words, String word, int at, Function<Counted, OptionalInt> region) {
            this.words = words;
            this.word = word;
            this.at = at;
            this.region = region;
        }

        private String of(String formula) {
            return formula.split(",")[at];
        }

        private String said(String formula) {
            return of(formula) + "\u00a0" + words;
        }
    }

    /** The animal of this carcase; {@code usual} is the curriculum as it is written. */
    public static ThisAnimal of(Carcase carcase, Curriculum usual) {
        if (carcase.counts().isEmpty()) {
            return new ThisAnimal(carcase, usual, "");
        }
        try {
            String counted = carcase.formula(usual.breakdown().formula().toString());
            return new ThisAnimal(carcase, usual.on(Formula.parse(counted)), "");
        } catch (Refused doesNotHold) {
            return new ThisAnimal(carcase, usual, doesNotHold.getMessage());
        }
    }

    /** Whether anybody has counted it. */
    public boolean isCounted() {
        return !carcase.counts().isEmpty();
    }

    /** What to hang on an address of the curriculum so that it shows this animal. */
    public String query() {
        return curriculum.isUsual() ? "" : "?formula=" + curriculum.skeleton().formula();
    }

    /** The same in few words, for the ticket strip: {@code 14 ribs, 7 loin}. */
    public String inShort() {
        return Stream.of(Part.values())
                .map(part -> part.of(own()) + "\u00a0" + part.word)
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    }

    /** The caption before it. */
    public String caption() {
        return isCounted() ? "Counted" : "Not counted";
    }

    /** Which animal is shown, in one sentence. */
    public String lead() {
        String name = carcase.name();
        if (!isCounted()) {
            return "Nobody has counted " + name + " yet. The usual animal is shown: " + both(usual()) + ".";
        }
        if (!why.isEmpty()) {
            return why + " The usual animal is shown: " + both(usual()) + ".";
        }
        return curriculum.isUsual()
                ? "As counted, " + name + " is the usual animal: " + both(usual()) + "."
                : "Bones, pieces and expected weights are those of " + name + ", not of the usual animal.";
    }

    /** What was counted, by whom and when, and what is taken as usual; nothing before the first count. */
    public List<String> counts(ZoneId zone) {
        return isCounted()
                ? Stream.of(Part.values()).map(part -> count(part, zone)).toList()
                : List.of();
    }

    /** The record of the newest of the counts that hold; what was marked before it was marked without knowing it. */
    public OptionalLong since() {
        return Stream.of(Part.values())
                .flatMap(part -> carcase.newestOf(part.region).stream())
                .mapToLong(Counted::evidenceSeq)
                .max();
    }

    private String count(Part part, ZoneId zone) {
        return carcase.newestOf(part.region)
                .map(counted -> part.said(own()) + ", counted by "
                        + counted.by().name() + ", " + Words.moment(counted.at(), zone) + usually(part))
                .orElseGet(() -> part.said(usual()) + ", as usual: nobody has counted them.");
    }

    private String usually(Part part) {
        return part.of(own()).equals(part.of(usual())) ? ", as usual." : "; " + part.of(usual()) + " are usual.";
    }

    private static String both(String formula) {
        return Words.list(
                Stream.of(Part.values()).map(part -> part.said(formula)).toList());
    }

    /** As counted, whether the breakdown holds on it or not. */
    private String own() {
        return carcase.formula(usual());
    }

    private String usual() {
        return curriculum.breakdown().formula().toString();
    }
}
