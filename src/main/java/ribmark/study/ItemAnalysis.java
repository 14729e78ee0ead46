package ribmark.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How each question behaved among the people who answered it: difficulty is the share who had it right, and the corrected
 * point-biserial is the Pearson correlation of right or wrong with the share the same person had right of all the others
 * (classical item analysis; where everybody answered everything it is the usual item-rest correlation).
 */
public final class ItemAnalysis {

    /** One question: how many answered, the share right, and the correlation where it can be worked out. */
    public record Item(int answers, double difficulty, OptionalDouble pointBiserial) {}

    private ItemAnalysis() {}

    /** The figures for each question, from who had what right; somebody who answered nothing else says nothing of the rest. */
    public static Map<String, Item> of(List<Map<String, Boolean>> people) {
        Map<String, List<double[]>> pairs = new LinkedHashMap<>();
        Map<String, int[]> counts = new LinkedHashMap<>();
        for (Map<String, Boolean> person : people) {
            long right = person.values().stream().filter(each -> each).count();
            person.forEach((item, isRight) -> {
                int one = isRight ? 1 : 0;
                int[] count = counts.computeIfAbsent(item, id -> new int[2]);
                count[0]++;
                count[1] += one;
                if (person.size() > 1) {
                    double rest = (right - one) / (double) (person.size() - 1);
                    pairs.computeIfAbsent(item, id -> new ArrayList<>()).add(new double[] {one, rest});
                }
            });
        }
        Map<String, Item> items = new LinkedHashMap<>();
        counts.forEach((item, count) -> items.put(
                item, new Item(count[0], count[1] / (double) count[0], pearson(pairs.getOrDefault(item, List.of())))));
        return items;
    }

    /** Nothing when one of the two never varies. */
    private static OptionalDouble pearson(List<double[]> pairs) {
        double x = mean(pairs, 0);
        double y = mean(pairs, 1);
        double both = 0;
        double xs = 0;
        double ys = 0;
        for (double[] pair : pairs) {
            both += (pair[0] - x) * (pair[1] - y);
            xs += (pair[0] - x) * (pair[0] - x);
            ys += (pair[1] - y) * (pair[1] - y);
        }
        boolean varies = xs > VARIES && ys > VARIES;
        return varies ? OptionalDouble.of(both / Math.sqrt(xs * ys)) : OptionalDouble.empty();
    }

    /** Below this a sum of squares is what rounding leaves of nought. */
    private static final double VARIES = 1e-12;

    private static double mean(List<double[]> pairs, int which) {
        return pairs.stream().mapToDouble(pair -> pair[which]).average().orElse(0);
    }
}
