package ribmark.anatomy;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribmark.basics.Refused;

/** A name as written in an operation: the id of a bone or joint, and the halves after it. */
record Ident(String id, Halves halves) {

    private static final Pattern ID = Pattern.compile("[A-Za-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*");
    private static final Pattern NUMBERED = Pattern.compile("([A-Za-z]+)([1-9][0-9]*)([LR]?)");

    /** Letters, number and side letter of an id that is one of a row of like bones. */
    record Numbered(String letters, int number, String ending) {}

    /** Refuses an id that could not be written in an operation. */
    static void check(String id) {
        if (id == null || !ID.matcher(id).matches()) {
            throw new Refused("“" + (id == null ? "" : id)
                    + "” is not an id: start with a letter, then letters, figures and single hyphens.");
        }
    }

    static Ident read(String written) {
        List<String> words = List.of(written.split("\\.", -1));
        Halves halves = Halves.read(words.subList(1, words.size()))
                .orElseThrow(() -> new Refused("“" + written
                        + "” names no part: write the id, then .left or .right if it was sawn on the midline, then .near"
                        + " or .far for each saw across."));
        return new Ident(words.get(0), halves);
    }

    static Optional<Numbered> numbered(String id) {
        Matcher found = NUMBERED.matcher(id);
        return found.matches() && found.group(2).length() < 4
                ? Optional.of(new Numbered(found.group(1), Integer.parseInt(found.group(2)), found.group(3)))
                : Optional.empty();
    }

    @Override
    public String toString() {
        return id + halves;
    }
}
