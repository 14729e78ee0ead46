package ribmark.blocksheet;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Words;

/** Says under which version of the content the marks of a sheet were given, where that is not the one in use. */
public final class WordedUnder {

    private WordedUnder() {}

    /** In one sentence; empty when all were given under the version in use. */
    public static String say(List<Mark> marks, String inUse) {
        List<String> older = marks.stream()
                .flatMap(mark -> mark.worded().stream())
                .filter(worded -> !worded.version().equals(inUse))
                .map(Worded::inShort)
                .distinct()
                .toList();
        String now = Worded.inShort(inUse);
        if (!older.isEmpty()) {
            return "Worded as in version " + Words.list(older)
                    + " of the content, under which it was marked; in use now is version " + now + ".";
        }
        return marks.stream().map(Mark::worded).anyMatch(Optional::isEmpty)
                ? "How it was worded when it was marked was not kept; the wording here is that of version " + now + "."
                : "";
    }
}
