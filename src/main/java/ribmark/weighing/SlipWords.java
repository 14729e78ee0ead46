package ribmark.weighing;

import java.util.List;
import java.util.stream.Collectors;
import ribmark.basics.Words;
import ribmark.slips.Cause;
import ribmark.weighup.Numbers;

/** Puts a question about a reading into plain words: its title, how the slip may have come about, and the plates to answer with. */
final class SlipWords {

    private final Question question;
    private final List<String> names;

    SlipWords(Question question) {
        this.question = question;
        this.names = question.doubts().stream().map(Question.Doubt::called).toList();
    }

    /** {@code Is the middle right?} */
    String title() {
        String first = names.get(0);
        return switch (question.because()) {
            case PIECES_EXCHANGED -> "Were the " + first + " and the " + names.get(1) + " exchanged?";
            case WEIGHED_TWICE -> (areMany(first) ? "Were the " : "Was the ") + first + " weighed twice?";
            default -> (areMany(first) ? "Are the " : "Is the ") + first + " right?";
        };
    }

    /** Fores are many, a middle is one: the word before {@code with} and {@code and} tells. */
    private static boolean areMany(String name) {
        return name.split(" with | and ")[0].endsWith("s");
    }

    /** {@code the middle}, {@code the fores and the middle}. */
    String the() {
        return names.stream().map(name -> "the " + name).collect(Collectors.joining(" and "));
    }

    /** How the likely weight follows from what was typed. */
    String how() {
        return how(question.because(), "it");
    }

    /** The same for something that is called this. */
    static String how(Cause because, String called) {
        return switch (because) {
            case DIGITS_SWAPPED -> "two digits the other way round";
            case DECIMAL_POINT_MOVED -> "the decimal point one place along";
            case TARE_FORGOTTEN -> "the weight of a tray taken off";
            case POUNDS_FOR_KILOGRAMS -> "read as pounds and put into kilograms";
            default -> "about what the other pieces leave for " + called;
        };
    }

    /** Why it is asked, in one sentence with its probability. */
    String why() {
        return why(question.because(), question.probability(), "piece");
    }

    /** The same of a weight of this kind of thing. */
    static String why(Cause because, double probability, String what) {
        String reason = switch (because) {
            case DIGITS_SWAPPED -> "Two neighbouring digits changed round";
            case DECIMAL_POINT_MOVED -> "A decimal point one place off";
            case TARE_FORGOTTEN -> "A tray that was not taken off";
            case PIECES_EXCHANGED -> "Two weights kept for each other’s piece";
            case WEIGHED_TWICE -> "One piece put on the list twice";
            case POUNDS_FOR_KILOGRAMS -> "A scale that showed pounds";
            case PIECE_MISSING -> "A piece not yet weighed";
            case SOMETHING_ELSE -> "A weight that has nothing to do with this " + what;
        };
        return reason + " would explain the weights best: " + inAHundred(probability)
                + ", as the college’s figures stand.";
    }

    static String inAHundred(double probability) {
        return Numbers.places(100 * probability, 0) + " in 100";
    }

    /** {@code Use 5.420 kg}. */
    String use() {
        Question.Doubt first = question.doubts().get(0);
        if (question.because() == Cause.PIECES_EXCHANGED) {
            return "Exchange the two weights";
        }
        return first.likely()
                .map(likely -> "Use " + (question.isReckoned() ? "about " : "") + likely)
                .orElse("Take the second " + first.reading().typed().weight() + " off the list");
    }

    /** {@code Weigh the middle again}. */
    String again() {
        return "Weigh " + the() + " again";
    }

    /** {@code Keep 4.520 kg}. */
    String keep() {
        return switch (question.because()) {
            case PIECES_EXCHANGED, WEIGHED_TWICE -> "Keep both";
            default -> "Keep " + question.doubts().get(0).reading().typed().weight();
        };
    }

    /** The reason a reading is struck with when its likely weight is taken or it is weighed again. */
    String struck(SlipAnswer.Choice choice, Question.Doubt doubt) {
        String cause = Words.capital(question.because().words());
        if (choice == SlipAnswer.Choice.AGAIN) {
            return cause + "? Weighed again.";
        }
        String used = question.meant(doubt)
                .map(typed -> " " + typed.weight() + " was used instead"
                        + (question.isReckoned() ? ", reckoned from the other pieces." : "."))
                .orElse("");
        return cause + "." + used;
    }
}
