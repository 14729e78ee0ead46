package ribmark.contentfiles;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import ribmark.contentfiles.ContentProblem.Place;

/** The text of one content file, able to point at any stretch of it. */
public final class TextFile {

    /** Ours: the largest file of a curriculum is far smaller, and a reader must not be flooded. */
    static final int LARGEST_BYTES = 1 << 20;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final String name;
    private final String text;
    private final List<String> lines;

    private TextFile(String name, String text) {
        this.name = name;
        this.text = text;
        this.lines = text.lines().toList();
    }

    /** The file as text, or nothing when it is too large or not UTF-8; why is then among the findings. */
    public static Optional<TextFile> of(String name, byte[] bytes, Findings found) {
        TextFile nothing = new TextFile(name, "");
        if (bytes.length > LARGEST_BYTES) {
            found.add(
                    "C001",
                    nothing.line(1),
                    "This file is larger than 1 MiB.",
                    "Split it, or take out what is not content.");
            return Optional.empty();
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(new TextFile(name, text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text));
        } catch (CharacterCodingException e) {
            found.add(
                    "C001", placeOfFault(name, bytes), "This file is not written in UTF-8.", "Save it anew as UTF-8.");
            return Optional.empty();
        }
    }

    private static Place placeOfFault(String name, byte[] bytes) {
        String forgiving = new String(bytes, StandardCharsets.UTF_8);
        int at = forgiving.indexOf('\uFFFD');
        int line =
                (int) forgiving.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        int column = at - forgiving.lastIndexOf('\n', at);
        return new TextFile(name, forgiving).place(line, column, 1);
    }

    String name() {
        return name;
    }

    String text() {
        return text;
    }

    int lines() {
        return lines.size();
    }

    /** A whole line, counted from one. */
    Place line(int number) {
        String shown = shown(number);
        int begins = shown.length() - shown.stripLeading().length();
        return place(number, begins + 1, Math.max(1, shown.strip().length()));
    }

    /** A stretch of a line, counted from one. */
    Place place(int line, int column, int length) {
        return new Place(name, line, column, Math.max(1, length), shown(line));
    }

    /** Where a value begins, and as much of it as stands in that line. */
    Place place(Event event) {
        Mark from = event.getStartMark().orElseThrow();
        Mark to = event.getEndMark().orElseThrow();
        int line = from.getLine() + 1;
        int rest = shown(line).stripTrailing().length() - from.getColumn();
        boolean open = to.getLine() > from.getLine() || to.getIndex() <= from.getIndex() + 1;
        return place(
                line,
                from.getColumn() + 1,
                open ? wordLength(line, from.getColumn(), rest) : to.getColumn() - from.getColumn());
    }

    Place place(Mark mark) {
        int line = Math.min(mark.getLine() + 1, Math.max(1, lines.size()));
        boolean past = mark.getLine() + 1 > lines.size();
        return past ? line(line) : place(line, mark.getColumn() + 1, 1);
    }

    /** A map or list begins at its first word: pointing at that word is enough. */
    private int wordLength(int line, int column, int rest) {
        String from = shown(line).substring(Math.min(column, shown(line).length()));
        int colon = from.indexOf(':');
        return colon > 0 ? Math.min(colon, rest) : rest;
    }

    private String shown(int line) {
        return line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
    }
}
