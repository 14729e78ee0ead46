package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Refused;
import ribmark.basics.Weight;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.people.Acting;
import ribmark.slips.Cause;
import ribmark.slips.Finding;
import ribmark.weighing.SlipAnswer.Choice;

/** Which question is open on a carcase, and what an answer does: nothing is changed, readings are struck and new ones kept. */
public final class Answering {

    private final WeighUpStore store;
    private final WeighedCarcases weighed;
    private final SlipAnswerStore answers;
    private final CarcaseStore carcases;

    /** Answers are kept beside the readings they are about, and a later weight of a carcase beside the first. */
    public Answering(WeighUpStore store, WeighedCarcases weighed, SlipAnswerStore answers, CarcaseStore carcases) {
        this.store = store;
        this.carcases = carcases;
        this.weighed = weighed;
        this.answers = answers;
    }

    /** The question open on a carcase whose weights were looked over already. */
    Optional<Question> open(Carcase carcase, Reckoning reckoning, Optional<Finding> finding) {
        return finding.filter(f -> !f.amongWeighed().isEmpty()).flatMap(f -> {
            List<SlipAnswer> given = answers.of(carcase.id());
            return Question.open(reckoning, f, given, CarcaseQuestion.isKept(carcase, given));
        });
    }

    /** The question open about the carcase's own weight; a piece is asked about before it where it is doubted as much. */
    Optional<CarcaseQuestion> ofCarcase(Carcase carcase, Reckoning reckoning, Optional<Finding> finding) {
        return open(carcase, reckoning, finding).isPresent()
                ? Optional.empty()
                : finding.flatMap(f -> CarcaseQuestion.open(carcase, f, answers.of(carcase.id())));
    }

    /** The same, looked over now, with everything needed to ask it. */
    Optional<CarcaseQuestionView.Asked> askedOfCarcase(Carcase carcase) {
        List<KeptReading> counting = weighed.counting(carcase);
        return weighed.reckon(carcase, counting, List.of())
                .flatMap(now -> weighed.finding(now)
                        .flatMap(finding -> ofCarcase(carcase, now, Optional.of(finding))
                                .map(question -> new CarcaseQuestionView.Asked(
                                        question,
                                        now,
                                        weighed.reckon(carcase.weighing(question.likely()), counting, List.of()),
                                        finding))));
    }

    /** Answers the question about the carcase's own weight; typed is what the scale showed when it was weighed again. */
    void answer(CarcaseQuestion question, Choice choice, String typed, String why, Acting by) {
        Optional<UUID> used = switch (choice) {
            case USE ->
                Optional.of(carcases.weighAgain(question.carcase(), question.likely(), Optional.empty(), by.person()));
            case AGAIN ->
                Optional.of(carcases.weighAgain(
                        question.carcase(), Weight.ofKilograms(typed), Optional.of(typed.strip()), by.person()));
            case KEEP -> Optional.empty();
        };
        answers.add(question, choice, used, why, by);
    }

    /** Answers whichever question is open about the carcase's own weight. */
    public void answerOfCarcase(Carcase carcase, Choice choice, String typed, String why, Acting by) {
        CarcaseQuestion question = askedOfCarcase(carcase)
                .map(CarcaseQuestionView.Asked::question)
                .orElseThrow(() -> new Refused("No question is open on the weight of " + carcase.name() + "."));
        answer(question, choice, typed, why, by);
    }

    /** The same, looked over now, with everything needed to ask it. */
    Optional<QuestionView.Asked> asked(Carcase carcase) {
        List<KeptReading> counting = weighed.counting(carcase);
        return weighed.reckon(carcase, counting, List.of())
                .flatMap(now -> weighed.finding(now)
                        .flatMap(finding -> open(carcase, now, Optional.of(finding))
                                .map(question -> new QuestionView.Asked(
                                        carcase,
                                        question,
                                        now,
                                        weighed.reckon(carcase, question.putRight(counting), List.of()),
                                        finding))));
    }

    /** Answers the question open on a carcase; why is only needed where the weight stays. */
    public void answer(Carcase carcase, Choice choice, String why, Acting by) {
        Question question = asked(carcase)
                .map(QuestionView.Asked::question)
                .orElseThrow(() -> new Refused("No question is open on " + carcase.name() + "."));
        answer(carcase, question, choice, why, by);
    }

    void answer(Carcase carcase, Question question, Choice choice, String why, Acting by) {
        switch (choice) {
            case USE -> use(carcase, question, by);
            case AGAIN -> again(carcase, question, by);
            case KEEP -> answers.add(carcase.id(), question, choice, List.of(), why, by);
        }
    }

    private void use(Carcase carcase, Question question, Acting by) {
        SlipWords words = new SlipWords(question);
        List<UUID> used = new ArrayList<>();
        for (Question.Doubt doubt : question.doubts()) {
            store.strike(doubt.reading(), words.struck(Choice.USE, doubt), by);
            question.meant(doubt).ifPresent(typed -> used.add(store.keep(carcase.id(), typed, by)));
        }
        answers.add(carcase.id(), question, Choice.USE, used, "", by);
    }

    /** What was weighed twice is weighed once again, so every reading of the piece comes off. */
    private void again(Carcase carcase, Question question, Acting by) {
        SlipWords words = new SlipWords(question);
        Question.Doubt first = question.doubts().get(0);
        question.doubts().forEach(doubt -> store.strike(doubt.reading(), words.struck(Choice.AGAIN, doubt), by));
        if (question.because() == Cause.WEIGHED_TWICE) {
            weighed.counting(carcase).stream()
                    .filter(kept -> kept.isOfSamePiece(first.reading()))
                    .forEach(kept -> store.strike(kept, words.struck(Choice.AGAIN, first), by));
        }
        answers.add(carcase.id(), question, Choice.AGAIN, List.of(), "", by);
    }
}
