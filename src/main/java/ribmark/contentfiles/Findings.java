package ribmark.contentfiles;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.ContentProblem.Place;

/** Everything found wrong in one run, one entry for each cause. */
public final class Findings {

    private final Map<String, ContentProblem> all = new LinkedHashMap<>();

    /** The reason why it matters comes with the code; headline and help are written for this very place. */
    public void add(String code, Node at, String headline, String help, Also... also) {
        add(code, at.place(), headline, help, also);
    }

    /** As above, for a place that belongs to no value. */
    public void add(String code, Place at, String headline, String help, Also... also) {
        String cause = code + "|" + at.file() + "|" + at.line() + "|" + at.column() + "|" + headline;
        all.putIfAbsent(
                cause,
                new ContentProblem(
                        code, headline, at, Arrays.asList(also), Codes.of(code).why(), help));
    }

    /** Says this of a file in place of all that was found in it, because it is the cause of the rest. */
    public void addInstead(String code, Node file, String headline, String help) {
        all.values().removeIf(problem -> problem.file().equals(file.file()));
        add(code, file, headline, help);
    }

    /** Whether nothing was found wrong. */
    public boolean none() {
        return all.isEmpty();
    }

    /** Whether anything was found in these files whose code begins so. */
    public boolean any(List<String> beginnings, List<Node> files) {
        Set<String> names = files.stream().map(Node::file).collect(Collectors.toSet());
        return all.values().stream()
                .filter(problem -> names.contains(problem.file()))
                .anyMatch(problem -> beginnings.stream().anyMatch(problem.code()::startsWith));
    }

    /** In the order of files and lines. */
    public List<ContentProblem> list() {
        List<ContentProblem> sorted = new ArrayList<>(all.values());
        sorted.sort(Comparator.comparing(ContentProblem::file)
                .thenComparingInt(ContentProblem::line)
                .thenComparingInt(ContentProblem::column));
        return List.copyOf(sorted);
    }
}
