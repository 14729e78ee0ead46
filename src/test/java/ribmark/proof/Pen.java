package ribmark.proof;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import ribmark.contentfiles.ContentFiles;

/** Puts slips of the pen into content: finds where one can be made, makes it, and knows where it stands. */
final class Pen {

    /** Where something stands in a file. */
    record Spot(String file, int start, int end) {}

    private final Map<String, String> files = new TreeMap<>();
    private final Random random;

    Pen(ContentFiles sound, Random random) {
        sound.paths()
                .forEach(path -> files.put(path, new String(sound.bytes(path).orElseThrow(), StandardCharsets.UTF_8)));
        this.random = random;
    }

    String text(String file) {
        return files.get(file);
    }

    List<String> files(String named) {
        return files.keySet().stream().filter(path -> path.matches(named)).toList();
    }

    Random random() {
        return random;
    }

    <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** Every stretch the group of a pattern finds in the files of this name. */
    List<Spot> spots(String named, String pattern) {
        Pattern compiled = Pattern.compile(pattern, Pattern.MULTILINE);
        List<Spot> spots = new ArrayList<>();
        for (String file : files(named)) {
            compiled.matcher(files.get(file))
                    .results()
                    .map(found -> group(file, found))
                    .forEach(spots::add);
        }
        return spots;
    }

    private static Spot group(String file, MatchResult found) {
        return new Spot(file, found.start(1), found.end(1));
    }

    String at(Spot spot) {
        return files.get(spot.file()).substring(spot.start(), spot.end());
    }

    /** Within every stretch one pattern finds, every stretch another finds. */
    List<Spot> within(List<Spot> outer, String pattern) {
        Pattern compiled = Pattern.compile(pattern);
        List<Spot> spots = new ArrayList<>();
        for (Spot spot : outer) {
            compiled.matcher(at(spot))
                    .results()
                    .map(found -> new Spot(spot.file(), spot.start() + found.start(1), spot.start() + found.end(1)))
                    .forEach(spots::add);
        }
        return spots;
    }

    /** Something else in place of one of these; nothing when it would read the same. */
    Optional<Mutant> change(String kind, List<Spot> spots, UnaryOperator<String> slip) {
        if (spots.isEmpty()) {
            return Optional.empty();
        }
        Spot spot = any(spots);
        String before = at(spot);
        String after = slip.apply(before);
        return before.equals(after) ? Optional.empty() : Optional.of(replaced(kind, spot, after, true));
    }

    /** The same where the fault shows only in what follows from it. */
    Optional<Mutant> changeNowhere(String kind, List<Spot> spots, UnaryOperator<String> slip) {
        return change(kind, spots, slip)
                .map(m -> new Mutant(m.kind(), m.file(), m.text(), Mutant.NOWHERE, 0, m.shown()));
    }

    Mutant replaced(String kind, Spot spot, String after, boolean placed) {
        String text = files.get(spot.file());
        String changed = text.substring(0, spot.start()) + after + text.substring(spot.end());
        int line = (int) text.substring(0, spot.start())
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
        int lineStart = text.lastIndexOf('\n', spot.start() - 1) + 1;
        String shown = at(spot).strip() + " -> " + after.strip();
        return new Mutant(
                kind,
                spot.file(),
                changed,
                placed ? line : Mutant.NOWHERE,
                placed ? valueStart(text, lineStart, spot.start()) - lineStart + 1 : 0,
                shown.length() > 120 ? shown.substring(0, 120) + "…" : shown);
    }

    /** Where the value begins that this position is in: after the last bracket, comma or colon before it. */
    private static int valueStart(String text, int lineStart, int position) {
        int start = position;
        if (position == lineStart) {
            return position;
        }
        while (start > lineStart && "[{,:".indexOf(text.charAt(start - 1)) < 0 && !text.startsWith("- ", start - 2)) {
            start--;
        }
        while (text.charAt(start) == ' ') {
            start++;
        }
        return start;
    }

    /** One letter wrong, missing, added, or two exchanged: the same length of word at least three letters long. */
    String typo(String word) {
        int at = 1 + random.nextInt(word.length() - 1);
        char letter = (char) ((Character.isUpperCase(word.charAt(at)) ? 'A' : 'a') + random.nextInt(26));
        return switch (random.nextInt(4)) {
            case 0 -> word.substring(0, at) + word.substring(at + 1);
            case 1 -> word.substring(0, at) + letter + word.substring(at);
            case 2 -> word.substring(0, at) + letter + word.substring(at + 1);
            default -> word.substring(0, at - 1) + word.charAt(at) + word.charAt(at - 1) + word.substring(at + 1);
        };
    }
}
