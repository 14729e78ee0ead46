package ribmark.study;

import ribmark.basics.Words;
import ribmark.curriculum.Step;
import ribmark.drills.Drill;

/** An answer as it is read right after it was given: what was right, where it lies, and when it is asked again. */
public record AnswerView(
        String title,
        boolean isSame,
        String question,
        String chosen,
        String teaches,
        String right,
        String why,
        String again,
        Step step,
        String next) {

    static AnswerView of(StudyAnswer answer, Card card, Step step, Practice practice, String ofStage) {
        Asked asked = card.ask(answer.seed());
        boolean same = asked.digest().equals(answer.digest());
        boolean wrong = same && !answer.right() && answer.chosen().isPresent();
        Drill.Choice taken = wrong ? asked.choices().get(answer.chosen().get()) : null;
        return new AnswerView(
                title(answer),
                same,
                same ? asked.ask() : card.title(),
                wrong ? taken.words() : "",
                wrong ? taken.teaches() : "",
                same && !asked.isOpen() ? asked.choices().get(asked.right()).words() : "",
                same ? asked.answer() : "The question was changed since you answered it.",
                again(card, practice),
                step,
                "/study/practice" + ofStage);
    }

    private static String title(StudyAnswer answer) {
        if (answer.chosen().isPresent()) {
            return answer.right() ? "That is right" : "That is another one";
        }
        return answer.right() ? "You knew it" : "You know it now";
    }

    private static String again(Card card, Practice practice) {
        return practice.dueDay(card.id())
                .map(day -> day.equals(practice.today())
                        ? "It is asked once more today."
                        : "It is asked again on " + Words.day(day) + ".")
                .orElse("");
    }
}
