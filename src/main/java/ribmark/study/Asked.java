package ribmark.study;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import ribmark.drills.Drill;
import ribmark.drills.DrillKind;

/** A question put to somebody: with choices, or open, and then they say themselves how well they knew it. The bones it is about are shown with it or after it. */
public record Asked(
        String ask, List<Drill.Choice> choices, int right, String answer, List<String> shows, boolean isShownFirst) {

    static Asked open(String ask, String answer) {
        return new Asked(ask, List.of(), -1, answer, List.of(), false);
    }

    static Asked of(Drill drill) {
        return new Asked(
                drill.ask(),
                drill.choices(),
                drill.right(),
                drill.answer().teaches(),
                drill.shows(),
                drill.kind() == DrillKind.NAME_BONE);
    }

    /** Whether the reader says the answer to themselves and judges it. */
    public boolean isOpen() {
        return choices.isEmpty();
    }

    /** A digest of all its words: when it differs, the question was changed meanwhile. */
    public String digest() {
        String text = ask + "\n" + answer + "\n"
                + choices.stream().map(Drill.Choice::words).collect(Collectors.joining("\n"));
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
