package ribmark.proof;

import java.util.List;
import ribmark.contentfiles.ContentProblem;

/** One fault put into sound content: its kind, the file as it reads then, and the place the check must point at, if it has one. */
record Mutant(String kind, String file, String text, int line, int column, String shown) {

    /** A fault that shows only in what follows from it has no place. */
    static final int NOWHERE = 0;

    /** Whether the check could point at it. */
    boolean hasPlace() {
        return line != NOWHERE;
    }

    /** Whether a problem, or one of the other places it names, is in the line of the fault. */
    boolean isInLineOf(List<ContentProblem> problems) {
        return problems.stream()
                .anyMatch(problem ->
                        isHere(problem.at()) || problem.also().stream().anyMatch(also -> isHere(also.at())));
    }

    /** Whether a problem, or one of the other places it names, is in the column of the fault. */
    boolean isInColumnOf(List<ContentProblem> problems) {
        return problems.stream()
                .anyMatch(problem -> isHere(problem.at()) && problem.column() == column
                        || problem.also().stream()
                                .anyMatch(also -> isHere(also.at()) && also.at().column() == column));
    }

    private boolean isHere(ContentProblem.Place place) {
        return place.file().equals(file) && place.line() == line;
    }

    @Override
    public String toString() {
        return kind + ": " + file + (hasPlace() ? ":" + line + ":" + column : "") + "  " + shown;
    }
}
