package ribmark.study;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import ribmark.basics.Words;
import ribmark.curriculum.Step;
import ribmark.web.Choice;

/** A card as it is put on a page. */
public record CardView(
        String id, String title, Asked asked, List<Choice> choices, List<Grade> grades, String digest, String more) {

    private static final Pattern STAGE = Pattern.compile("[a-z-]+");

    static CardView of(Card card, Asked asked, Step step, int more) {
        return new CardView(
                card.id(),
                title(card, step),
                asked,
                IntStream.range(0, asked.choices().size())
                        .mapToObj(at -> Choice.of(
                                Integer.toString(at), asked.choices().get(at).words()))
                        .toList(),
                List.of(Grade.AT_ONCE, Grade.WITH_EFFORT, Grade.DID_NOT_KNOW),
                asked.digest(),
                more > 0 ? Words.capital(Words.count(more, "more waits", "more wait")) + " after this one." : "");
    }

    /** What kind of card it is; the number of its step stays away where it would give the answer. */
    static String title(Card card, Step step) {
        String kind = card.id().substring(0, card.id().indexOf('/'));
        return switch (kind) {
            case "drill" -> card.title().substring(0, card.title().indexOf(':'));
            case "fault" -> "How do you mend it?";
            case "term" -> "A word of the trade";
            default -> "A question on “" + step.title() + "”";
        };
    }

    /** The end of an address that keeps to one stage. */
    static String ofStage(String stage) {
        return STAGE.matcher(stage).matches() ? "?stage=" + stage : "";
    }
}
