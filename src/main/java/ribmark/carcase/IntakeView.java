package ribmark.carcase;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribmark.curriculum.Breakdown.AtIntake;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Known;
import ribmark.web.Choice;

/** What the intake page offers to choose from, and the limits it names. */
public record IntakeView(Curriculum curriculum, int number) {

    /** The number it will get, in a sentence: {@code lamb 34}. */
    public String name() {
        return curriculum.breakdown().id() + "\u00a0" + number;
    }

    /** The same at the start of a sentence. */
    public String title() {
        return ribmark.basics.Words.capital(name());
    }

    /** Cold first: that is how tickets mostly are. */
    public List<Choice> heat() {
        return List.of(Choice.of("cold"), Choice.of("hot"));
    }

    /** Our scales, each with what its display can tell apart. */
    public List<Choice> scales() {
        return curriculum.scales().stream()
                .map(scale -> new Choice(
                        scale.id(),
                        scale.name().toLowerCase(Locale.ROOT),
                        "shows steps of " + plain(scale.divisionG()) + "\u00a0g"))
                .toList();
    }

    /** Whether the stamp can be read. */
    public List<Choice> mark() {
        return List.of(
                Choice.of("yes", "can be read, same number as the ticket"), Choice.of("no", "blurred or missing"));
    }

    /** Kidneys in or out. */
    public List<Choice> kidneys() {
        return List.of(Choice.of("in"), Choice.of("out"));
    }

    /** Whether it is over the age. */
    public List<Choice> age() {
        return List.of(
                Choice.of(Age.UNDER.code(), "no"),
                Choice.of(Age.OVER.code(), "yes"),
                Choice.of(Age.UNKNOWN.code(), "not known"));
    }

    /** The cord as seen. */
    public List<Choice> cord() {
        return Arrays.stream(Checks.Cord.values())
                .map(cord -> Choice.of(cord.code(), cord.words()))
                .toList();
    }

    /** The three decisions. */
    public List<Choice> decisions() {
        return List.of(
                Choice.of(Decision.ACCEPT.word()),
                new Choice(Decision.HOLD.word(), Decision.HOLD.word(), "it hangs apart until somebody decides again"),
                new Choice(Decision.REFUSE.word(), Decision.REFUSE.word(), "nobody works on it, and it stays so"));
    }

    /** How warm the meat may be, as a hint; nothing where the breakdown names no limit. */
    public String meatHint() {
        return curriculum
                .breakdown()
                .atIntake()
                .map(AtIntake::meatAtMostC)
                .map(IntakeView::hint)
                .orElse(null);
    }

    /** The same for the kidneys. */
    public String kidneyHint() {
        return curriculum
                        .breakdown()
                        .atIntake()
                        .map(AtIntake::kidneysAtMostC)
                        .map(IntakeView::hint)
                        .orElse("") + " Leave it empty when they are out.";
    }

    private static String hint(BigDecimal atMost) {
        return "Above " + atMost.toPlainString() + "\u00a0°C: hold, or say what was done.";
    }

    /** What the limits rest on. */
    public List<Known> grounds() {
        return CarcaseView.grounds(curriculum);
    }

    private static String plain(double grams) {
        return BigDecimal.valueOf(grams).stripTrailingZeros().toPlainString();
    }
}
