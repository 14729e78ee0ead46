package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.carcase.Carcase;
import ribmark.slips.Cause;
import ribmark.slips.Finding;
import ribmark.slips.Model;
import ribmark.weighing.QuestionView.Answers;
import ribmark.weighing.QuestionView.Bit;

/** The question about a carcase's own weight as it takes the screen. */
final class CarcaseQuestionView {

    /** What a view is made of: the list as it stands, as it would stand, and what the weights say. */
    record Asked(CarcaseQuestion question, Reckoning now, Optional<Reckoning> then, Finding finding) {}

    private CarcaseQuestionView() {}

    static QuestionView of(Asked asked, List<WeighUpView.Pair> strip, Model model) {
        CarcaseQuestion question = asked.question();
        Carcase carcase = question.carcase();
        BalanceView balance = BalanceView.ofCarcase(asked.now(), carcase.title());
        String likely = (question.isReckoned() ? "about " : "") + question.likely();
        return new QuestionView(
                carcase.id(),
                title(carcase),
                question.token(),
                strip,
                said(asked),
                balance,
                balance.beam(),
                why(asked, model),
                new Answers(
                        "Use " + likely,
                        "Weigh " + carcase.name() + " again",
                        "Keep " + carcase.ownWeight() + " and say why",
                        "Keep " + carcase.ownWeight(),
                        question.isReckoned(),
                        true));
    }

    static String title(Carcase carcase) {
        return "Is the weight of " + carcase.name() + " right?";
    }

    private static List<Bit> said(Asked asked) {
        CarcaseQuestion question = asked.question();
        Carcase carcase = question.carcase();
        List<Bit> bits = new ArrayList<>();
        QuestionView.words(bits, carcase.title() + " whole was written down as ");
        QuestionView.figure(bits, carcase.ownWeight().kilograms());
        QuestionView.words(bits, ". With ");
        QuestionView.figure(bits, question.likely().kilograms());
        QuestionView.words(bits, ", " + how(question));
        QuestionView.outcome(bits, asked.now(), asked.then(), carcase.name());
        return bits;
    }

    private static String how(CarcaseQuestion question) {
        return question.because() == Cause.SOMETHING_ELSE
                ? "about what its pieces come to"
                : SlipWords.how(question.because(), "it");
    }

    private static List<String> why(Asked asked, Model model) {
        CarcaseQuestion question = asked.question();
        List<String> why =
                new ArrayList<>(List.of(SlipWords.why(question.because(), question.probability(), "carcase")));
        if (question.isReckoned()) {
            why.add("The likely weight was reckoned from the pieces; no scale has shown it. Weighing again is surer.");
        }
        why.add("Once it is apart, all its pieces on the scale together, or its ticket, can speak for it.");
        why.add(model.text());
        return why;
    }
}
