package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Weight;
import ribmark.carcase.Carcase;
import ribmark.people.Acting;
import ribmark.slips.Finding;
import ribmark.slips.Model;
import ribmark.slips.Suspect;
import ribmark.weighup.Balance;
import ribmark.weighup.Numbers;
import ribmark.weighup.WeighUpScore;

/** An open question as it takes the screen: what was typed, what would fit, the list with the row in doubt, and why it is asked. */
public record QuestionView(
        UUID id,
        String title,
        String about,
        List<WeighUpView.Pair> strip,
        List<Bit> said,
        BalanceView balance,
        BeamView beam,
        List<String> why,
        Answers answers) {

    /** A stretch of a sentence; a figure stands out. */
    public record Bit(String words, boolean figure) {}

    /** The plates: take the likely weight, weigh again, keep; and whether the likely weight was only reckoned. */
    public record Answers(String use, String again, String keep, String keeps, boolean reckoned, boolean typesAgain) {}

    /** What a view is made of: the list as it stands, as it would stand, and what the weights say. */
    record Asked(Carcase carcase, Question question, Reckoning now, Optional<Reckoning> then, Finding finding) {}

    static QuestionView of(Asked asked, List<WeighUpView.Pair> strip, Acting acting, Model model) {
        SlipWords words = new SlipWords(asked.question());
        BalanceView carcase = BalanceView.ofCarcase(asked.now(), asked.carcase().title());
        BalanceView shown = shown(asked, carcase);
        return new QuestionView(
                asked.carcase().id(),
                words.title(),
                asked.question().token(),
                strip,
                said(asked, acting, words),
                shown,
                carcase.beam(),
                why(asked, words, model),
                new Answers(
                        words.use(),
                        words.again(),
                        words.keep() + " and say why",
                        words.keep(),
                        asked.question().isReckoned(),
                        false));
    }

    /** The balance of the carcase, or the inner one that lists the piece in doubt. */
    private static BalanceView shown(Asked asked, BalanceView carcase) {
        Set<String> names =
                asked.question().doubts().stream().map(Question.Doubt::name).collect(Collectors.toSet());
        return Stream.concat(
                        Stream.of(carcase),
                        asked.now().score().innerBalances().stream()
                                .map(inner -> BalanceView.ofPart(asked.now(), inner)))
                .filter(balance -> balance.pieces().stream().anyMatch(line -> names.contains(bare(line.name()))))
                .findFirst()
                .orElse(carcase)
                .doubting(names);
    }

    /** A name without the count of its readings. */
    static String bare(String name) {
        int more = name.indexOf(" (");
        return more < 0 ? name : name.substring(0, more);
    }

    private static List<Bit> said(Asked asked, Acting acting, SlipWords words) {
        Question question = asked.question();
        List<Bit> bits = new ArrayList<>();
        KeptReading reading = question.doubts().get(0).reading();
        words(
                bits,
                (reading.by().id().equals(acting.id()) ? "You" : reading.by().name()) + " typed ");
        figure(bits, reading.typed().weight().kilograms());
        switch (question.because()) {
            case PIECES_EXCHANGED -> exchanged(bits, question);
            case WEIGHED_TWICE -> words(bits, " and the piece was on the list already. With one of the two taken off");
            default -> {
                words(bits, ". With ");
                figure(
                        bits,
                        question.doubts().get(0).likely().map(Weight::kilograms).orElse(""));
                words(bits, ", " + words.how());
            }
        }
        outcome(bits, asked.now(), asked.then(), asked.carcase().name());
        return bits;
    }

    private static void exchanged(List<Bit> bits, Question question) {
        Question.Doubt other = question.doubts().get(1);
        words(bits, " for the " + question.doubts().get(0).called() + " and ");
        figure(bits, other.reading().typed().weight().kilograms());
        words(bits, " for the " + other.called() + ". The other way round, each is nearer to what is expected of it");
    }

    /** What the balance would come to. */
    static void outcome(List<Bit> bits, Reckoning now, Optional<Reckoning> put, String carcase) {
        Balance then = put.map(Reckoning::score)
                .map(WeighUpScore::balance)
                .orElse(now.score().balance());
        if (then.verdict() == Balance.Verdict.INCOMPLETE) {
            words(bits, ", it would go with what is on the list so far.");
            return;
        }
        double gap = then.gapG().doubleValue();
        words(bits, gap < 0 ? ", the pieces are " : ", the gap is ");
        figure(bits, Numbers.kilograms(Math.abs(gap)) + "\u00a0kg");
        String balances = switch (then.verdict()) {
            case BALANCED -> " balances.";
            case QUERY -> " is still a query.";
            default -> " still does not balance.";
        };
        words(bits, (gap < 0 ? " too much and " : " and ") + carcase + balances);
    }

    static void words(List<Bit> bits, String words) {
        bits.add(new Bit(words, false));
    }

    static void figure(List<Bit> bits, String figure) {
        bits.add(new Bit(figure, true));
    }

    private static List<String> why(Asked asked, SlipWords words, Model model) {
        List<String> why = new ArrayList<>(List.of(words.why()));
        if (asked.question().isReckoned()) {
            why.add(
                    "The likely weight was reckoned from the other pieces; no scale has shown it. Weighing again is surer.");
        }
        List<Suspect> others = asked.finding().amongWeighed().stream()
                .filter(s -> s.because() != asked.question().because()
                        || s.probability() != asked.question().probability())
                .toList();
        others.forEach(s -> why.add("Or else: "
                + asked.now().saying().missing(ids(s), asked.now().weighUp()) + ", "
                + s.because().words() + s.likely().map(kg -> ", perhaps " + kg).orElse("") + " ("
                + SlipWords.inAHundred(s.probability()) + ")."));
        why.add(model.text());
        return why;
    }

    private static String ids(Suspect suspect) {
        return suspect.cut() + suspect.side().map(side -> " " + side.word()).orElse("");
    }
}
