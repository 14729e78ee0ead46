package ribmark.slips;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.Side;

/** A line, its direction and its side, whatever the distance; without a line, that nothing was moved. */
record Group(Optional<String> line, Optional<String> towards, Side side) {

    static final Group NONE = new Group(Optional.empty(), Optional.empty(), Side.BOTH);

    static Group of(Explanation explanation) {
        return new Group(
                explanation.line(), explanation.towards(), explanation.side().orElse(Side.BOTH));
    }

    /** What a finding gives each group, the most probable first; empty when the lines were not worked out. */
    static Map<Group, Double> all(Finding finding) {
        Map<Group, Double> sums = new LinkedHashMap<>();
        finding.explanations().orElse(List.of()).forEach(e -> sums.merge(of(e), e.probability(), Double::sum));
        return sums;
    }

    static Optional<Group> first(Finding finding) {
        return all(finding).entrySet().stream()
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .map(Map.Entry::getKey);
    }
}
