package ribmark.slips;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the weights say of themselves; the lines are not worked out while an entry is suspected, absent or there twice. */
public record Finding(List<Suspect> suspects, Optional<List<Explanation>> explanations, Optional<Say> saying) {

    /** Keeps its own copies. */
    public Finding {
        suspects = List.copyOf(suspects);
        explanations = explanations.map(List::copyOf);
    }

    /** The suspects among what was weighed: those that only say that a piece has no weight yet are left out. */
    public List<Suspect> amongWeighed() {
        return suspects.stream().filter(s -> s.because() != Cause.PIECE_MISSING).toList();
    }

    /**
     * The line the weights would fit, at its likeliest distance and with the probability of all its distances together; nothing
     * unless {@link Say#FITS}.
     */
    public Optional<Explanation> fitting() {
        return saying.filter(Say.FITS::equals).flatMap(fits -> fits());
    }

    private Optional<Explanation> fits() {
        List<Explanation> lines = explanations.orElseThrow().stream()
                .filter(e -> e.line().isPresent())
                .toList();
        Map<List<Object>, Double> ways = new LinkedHashMap<>();
        lines.forEach(e -> ways.merge(e.way(), e.probability(), Double::sum));
        return lines.stream()
                .max(Comparator.<Explanation>comparingDouble(e -> ways.get(e.way()))
                        .thenComparingDouble(Explanation::probability))
                .map(e -> new Explanation(e.line(), e.towards(), e.by(), e.side(), ways.get(e.way())));
    }
}
