package ribmark.study;

import java.util.Arrays;
import java.util.Optional;

/**
 * How well something was known, and the grade it counts as in the schedule. What is said of oneself spans the scale; a choice
 * may have been guessed, so a right one never counts as known at once (ours).
 */
public enum Grade {
    AT_ONCE("at-once", "I knew it at once", 5),
    WITH_EFFORT("with-effort", "I knew it with effort", 3),
    DID_NOT_KNOW("did-not-know", "I did not know it", 1),
    CHOSEN_RIGHT("chosen-right", "chosen right", 4),
    CHOSEN_WRONG("chosen-wrong", "chosen wrong", 2);

    private final String code;
    private final String word;
    private final int points;

    Grade(String code, String word, int points) {
        this.code = code;
        this.word = word;
        this.points = points;
    }

    /** The grade a choice counts as. */
    public static Grade chosen(boolean right) {
        return right ? CHOSEN_RIGHT : CHOSEN_WRONG;
    }

    /** What somebody says of their own answer, if it is one of the three things to say. */
    public static Optional<Grade> said(String code) {
        return Arrays.stream(values())
                .filter(grade -> grade.ordinal() < CHOSEN_RIGHT.ordinal() && grade.code.equals(code))
                .findFirst();
    }

    /** The word in forms. */
    public String code() {
        return code;
    }

    /** The words on a page. */
    public String word() {
        return word;
    }

    /** From 0 to 5, as the schedule takes it. */
    public int points() {
        return points;
    }

    /** Whether it counts as right. */
    public boolean isRight() {
        return points > CHOSEN_WRONG.points;
    }
}
