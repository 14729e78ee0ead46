package ribmark.study;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import ribmark.basics.Words;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;

/** Questions with their figures: those that call for a look, and all of one stage. */
public record QuestionsView(String lead, List<Row> calls, List<Row> rows, String unasked, List<Behaviour> limits) {

    /** One question; figures are ready to read, empty where too few have answered. */
    public record Row(String title, Step step, String answers, String right, String withRest, Behaviour behaviour) {}

    static QuestionsView of(FirstAnswers first, Deck deck, Stage stage) {
        Map<String, ItemAnalysis.Item> items = first.items();
        List<Row> all = deck.cards().stream()
                .filter(card -> items.containsKey(card.id()))
                .map(card -> row(card, deck.step(card), items.get(card.id())))
                .toList();
        List<Card> ofStage = deck.cards().stream()
                .filter(card -> deck.step(card).stageId().equals(stage.id()))
                .toList();
        long unasked =
                ofStage.stream().filter(card -> !items.containsKey(card.id())).count();
        return new QuestionsView(
                lead(first, items.size()),
                all.stream()
                        .filter(row -> row.behaviour().calls())
                        .sorted(Comparator.comparing(Row::behaviour))
                        .toList(),
                all.stream()
                        .filter(row -> row.step().stageId().equals(stage.id()))
                        .toList(),
                unasked(ofStage.size(), (int) unasked),
                List.of(Behaviour.values()));
    }

    private static String lead(FirstAnswers first, int questions) {
        return first.people() == 0
                ? "Nobody of this group has studied here yet."
                : Words.capital(Words.count(first.people(), "apprentice has", "apprentices have")) + " answered "
                        + Words.count(questions, "question", "questions") + ". Only first answers count here.";
    }

    private static String unasked(int all, int unasked) {
        return unasked == 0
                ? ""
                : Words.capital(Words.count(unasked)) + " of the " + all
                        + " questions of this stage were not answered by anybody yet.";
    }

    private static Row row(Card card, Step step, ItemAnalysis.Item item) {
        Behaviour behaviour = Behaviour.of(item);
        boolean enough = behaviour != Behaviour.NOT_ENOUGH;
        return new Row(
                card.title(),
                step,
                Integer.toString(item.answers()),
                enough ? Long.toString(Math.round(100 * item.difficulty())) : "",
                enough ? figure(item.pointBiserial()) : "",
                behaviour);
    }

    private static String figure(OptionalDouble value) {
        return value.isEmpty()
                ? ""
                : String.format(Locale.ROOT, "%.2f", value.getAsDouble()).replace('-', '\u2212');
    }
}
