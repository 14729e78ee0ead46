package ribmark.anatomy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.basics.Words;

/**
 * Reads ids as the curriculum writes them for every animal at once, and gives the ids of this one: {@code (last)} is
 * the number of the last one of the letters before it, {@code ..} runs from one number to another, {@code (s)} and
 * {@code (side)} stand for the left and then for the right.
 */
public final class Ids {

    private static final Pattern LAST = Pattern.compile("([A-Za-z]+)\\(last(?:-([0-9]{1,2}))?\\)");
    private static final Pattern RUN_END = Pattern.compile("(.*?[A-Za-z-])([0-9]{1,3})([^0-9]*)");
    private static final String RUN = "..";
    private static final String LETTER = "(s)";
    private static final String WORD = "(side)";

    private final Skeleton animal;

    private Ids(Skeleton animal) {
        this.animal = animal;
    }

    /** Ids for this animal. */
    public static Ids of(Skeleton animal) {
        return new Ids(animal);
    }

    /** Whether it stands for a left and a right. */
    public static boolean isSided(String expression) {
        return expression.contains(LETTER) || expression.contains(WORD);
    }

    /** Whether it is to be done on the left and then on the right. */
    public static boolean isSided(Operation written) {
        return written.ids().stream().anyMatch(Ids::isSided);
    }

    /** The ids one expression stands for; a sided one gives the left ones, then the right ones. */
    public List<String> expand(String expression) {
        return isSided(expression)
                ? Stream.of(Side.LEFT, Side.RIGHT)
                        .flatMap(side -> expand(expression, side).stream())
                        .toList()
                : run(expression);
    }

    /** The ids one expression stands for on one side; one without sides is the same on both. */
    public List<String> expand(String expression, Side side) {
        String letter = side == Side.LEFT ? "L" : "R";
        return run(expression.replace(LETTER, letter).replace(WORD, side.word()));
    }

    /** The ids of a whole list, in its order. */
    public List<String> expandAll(List<String> expressions) {
        return expressions.stream().flatMap(each -> expand(each).stream()).toList();
    }

    /** The operations one written operation stands for: itself, or the left and then the right; none when it names none here. */
    public List<Operation> operations(Operation written) {
        if (!isSided(written)) {
            return on(written, expandAll(written.ids())).toList();
        }
        return Stream.of(Side.LEFT, Side.RIGHT)
                .flatMap(side -> operations(written, side).stream())
                .toList();
    }

    /** What one written operation stands for on one side. */
    public List<Operation> operations(Operation written, Side side) {
        written.ids().stream()
                .filter(id -> isSided(written) && !isSided(id))
                .findFirst()
                .ifPresent(id -> {
                    throw new Refused(
                            "“" + id + "” has no side in an operation that is done for the left and the right: give it "
                                    + LETTER + " or " + WORD + ", or an operation of its own.");
                });
        return on(
                        written,
                        written.ids().stream()
                                .flatMap(id -> expand(id, side).stream())
                                .toList())
                .toList();
    }

    private static Stream<Operation> on(Operation written, List<String> ids) {
        return ids.isEmpty() ? Stream.empty() : Stream.of(written.on(ids));
    }

    private List<String> run(String expression) {
        int dots = expression.indexOf(RUN);
        if (dots < 0) {
            return List.of(counted(expression, expression, 1));
        }
        String from = counted(expression, expression.substring(0, dots), 1);
        String to = counted(expression, expression.substring(dots + RUN.length()), 0);
        return run(expression, RUN_END.matcher(from), RUN_END.matcher(to));
    }

    /** Same letters, number from one to the other, and the ending of the second for all. */
    private static List<String> run(String expression, Matcher from, Matcher to) {
        boolean readable = from.matches() && to.matches();
        if (!readable
                || !from.group(1).equals(to.group(1))
                || !List.of("", to.group(3)).contains(from.group(3))) {
            throw new Refused("“" + expression
                    + "” does not run from one id to another: write the same letters on both sides of the two points.");
        }
        int first = Integer.parseInt(from.group(2));
        int last = Integer.parseInt(to.group(2));
        if (last < first - 1) {
            throw new Refused("“" + expression + "” runs backwards in this animal, from " + first + " to " + last
                    + ": write the lower number first.");
        }
        return IntStream.rangeClosed(first, last)
                .mapToObj(number -> to.group(1) + number + to.group(3))
                .toList();
    }

    private String counted(String expression, String id, int lowest) {
        Matcher found = LAST.matcher(id);
        String read =
                found.replaceAll(last -> last.group(1) + number(expression, last.group(1), last.group(2), lowest));
        if (read.isBlank() || read.contains("(") || read.contains(")")) {
            throw new Refused("“" + expression
                    + "” cannot be read: beside an id there may stand (last), (last-1), (s), (side), or two points between"
                    + " two ids.");
        }
        return read;
    }

    private int number(String expression, String letters, String before, int lowest) {
        OptionalInt last = animal.last(letters);
        if (last.isEmpty()) {
            throw new Refused("“" + expression + "” asks for the last " + letters
                    + ", and this animal has no bones of those letters: write one of "
                    + Words.list(new ArrayList<>(animal.regions())) + ".");
        }
        int number = last.getAsInt() - (before == null ? 0 : Integer.parseInt(before));
        if (number < lowest) {
            throw new Refused("“" + expression + "” counts back past the first " + letters + ": this animal has "
                    + last.getAsInt() + ".");
        }
        return number;
    }
}
