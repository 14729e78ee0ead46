package ribmark.study;

/**
 * When something is asked again, by a published schedule: P. A. Wozniak, Optimization of Learning, master's thesis, University
 * of Technology in Poznan, 1990, section 3.2. Easiness is kept in whole hundredths, so that nothing is lost in rounding; the
 * next interval is taken with the easiness as changed by the answer just given.
 */
public record Repetition(int answeredInARow, int intervalDays, int easinessHundredths) {

    /** Before the first answer; the thesis begins with an easiness of 2.5. */
    public static final Repetition START = new Repetition(0, 0, 250);

    private static final int LEAST_EASINESS = 130;
    private static final int FIRST_DAYS = 1;
    private static final int SECOND_DAYS = 6;

    /** Below this grade the row begins anew, and the easiness stays. */
    private static final int PASSES = 3;

    /** Below this grade it is asked again on the same day, until it reaches it. */
    private static final int SETTLES = 4;

    /** The change of easiness for a grade from 0 to 5, in hundredths: 0.1 - (5 - q)(0.08 + (5 - q) 0.02). */
    public static int change(int grade) {
        int short_ = 5 - grade;
        return 10 - short_ * (8 + short_ * 2);
    }

    /** How it stands after one more answer of this grade. */
    public Repetition after(int grade) {
        if (grade < PASSES) {
            return new Repetition(0, FIRST_DAYS, easinessHundredths);
        }
        int easiness = Math.max(LEAST_EASINESS, easinessHundredths + change(grade));
        return new Repetition(answeredInARow + 1, interval(easiness), easiness);
    }

    /** A fraction of a day is a day more. */
    private int interval(int easiness) {
        return switch (answeredInARow) {
            case 0 -> FIRST_DAYS;
            case 1 -> SECOND_DAYS;
            default -> (intervalDays * easiness + 99) / 100;
        };
    }

    /** Whether an answer of this grade is good enough for today. */
    public static boolean settles(int grade) {
        return grade >= SETTLES;
    }
}
