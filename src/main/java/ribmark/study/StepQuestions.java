package ribmark.study;

import java.util.List;
import java.util.stream.Stream;
import ribmark.curriculum.Step;

/** One step to learn: where the cut runs, and what may be asked about it. */
public record StepQuestions(Step step, List<Ask> asks) {

    /** A question and what to answer. */
    public record Ask(String question, String answer) {}

    static StepQuestions of(Step step) {
        Stream<Ask> questions = step.questions().stream().map(q -> new Ask(q.ask(), q.answer()));
        Stream<Ask> faults = step.faults().stream().map(fault -> new Ask(said(fault), fault.mend()));
        return new StepQuestions(step, Stream.concat(questions, faults).toList());
    }

    private static String said(Step.Fault fault) {
        String why = fault.critical().map(c -> " (critical: " + c.word() + ")").orElse("");
        return fault.text() + why + ". How do you mend it?";
    }
}
