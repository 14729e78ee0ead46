package ribmark.contentfiles;

import java.util.List;

/** One thing wrong in a content file: what, where, why it matters at the block, and what to do about it. */
public record ContentProblem(String code, String headline, Place at, List<Also> also, String why, String help) {

    /** A stretch of one line of a file, counted from one, with the line as it is written there. */
    public record Place(String file, int line, int column, int length, String shown) {}

    /** Where the other half of the cause stands, and what it is: {@code First written in}. */
    public record Also(String what, Place at) {}

    /** Keeps its own copy of the second places. */
    public ContentProblem {
        also = List.copyOf(also);
    }

    /** The file it stands in. */
    public String file() {
        return at.file();
    }

    /** The line it stands in, counted from one. */
    public int line() {
        return at.line();
    }

    /** The column it begins at, counted from one. */
    public int column() {
        return at.column();
    }
}
