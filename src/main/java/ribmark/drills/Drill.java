package ribmark.drills;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A question made from the skeleton and the files: what is given, by ids; what is asked; the choices, of which just one is
 * right; and what a picture of it would show: bones by their ids, or a line that ran elsewhere by its words.
 */
public record Drill(
        DrillKind kind, List<String> given, String ask, List<Choice> choices, int right, List<String> shows) {

    /** More wrong choices than that only take longer to read (ours). */
    private static final int WRONG = 3;

    /** One choice: its id, its words, and what it teaches once it was taken. */
    public record Choice(String id, String words, String teaches) {}

    /** What a question is about: ids of what is given, the sentence, and the bones to show. */
    record About(DrillKind kind, List<String> given, String ask, List<String> shows) {

        /** The question with the first few of the wrong choices whose words differ, in an order of chance. */
        Drill with(Choice right, Stream<Choice> wrong, Random random) {
            Set<String> said = new HashSet<>(Set.of(right.words()));
            List<Choice> choices = new ArrayList<>(wrong.filter(choice -> said.add(choice.words()))
                    .limit(WRONG)
                    .toList());
            choices.add(right);
            Collections.shuffle(choices, random);
            return new Drill(kind, given, ask, List.copyOf(choices), choices.indexOf(right), shows);
        }
    }

    /** The choice that is right. */
    public Choice answer() {
        return choices.get(right);
    }

    static <T> List<T> shuffled(List<T> things, Random random) {
        List<T> copy = new ArrayList<>(things);
        Collections.shuffle(copy, random);
        return copy;
    }

    static <T> T oneOf(List<T> things, Random random) {
        return things.get(random.nextInt(things.size()));
    }
}
