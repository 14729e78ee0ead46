package ribmark.competence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** How far assessors agree who judged the same things; what cannot be worked out says why. */
public record Agreement(
        int items,
        int assessors,
        int ratings,
        OptionalDouble percentAgreement,
        OptionalDouble cohenKappa,
        Map<String, String> notComputable) {

    /** How ratings are to be read: as names, as steps in an order, or as measurements. */
    public enum Level {
        NOMINAL,
        ORDINAL,
        INTERVAL
    }

    private static final String ONLY_TWO = "This edition works out percent agreement and Cohen's kappa only.";
    /** Names of the measures this edition does not work out. */
    public static final List<String> NOT_WORKED_OUT =
            List.of("weightedKappaLinear", "fleissKappa", "krippendorffAlpha", "gwetAc1", "iccTwoWayRandomSingle");

    /** Keeps its own copy of the reasons, in order. */
    public Agreement {
        notComputable = Collections.unmodifiableMap(new LinkedHashMap<>(notComputable));
    }

    /** Works it out from every rating; nobody may have rated one thing twice. */
    public static Agreement of(List<Rating> ratings, Level level) {
        Map<String, Map<String, String>> byItem = new TreeMap<>();
        Map<String, Integer> assessors = new TreeMap<>();
        for (Rating rating : ratings) {
            byItem.computeIfAbsent(rating.item(), item -> new TreeMap<>()).put(rating.assessor(), rating.rating());
            assessors.merge(rating.assessor(), 1, Integer::sum);
        }
        Map<String, String> reasons = new LinkedHashMap<>();
        OptionalDouble percent = percent(byItem, reasons);
        OptionalDouble kappa = kappa(byItem, List.copyOf(assessors.keySet()), level, reasons);
        NOT_WORKED_OUT.forEach(name -> reasons.put(name, ONLY_TWO));
        return new Agreement(byItem.size(), assessors.size(), ratings.size(), percent, kappa, reasons);
    }

    /** The mean over the things judged at least twice of the share of pairs that agree, in percent. */
    private static OptionalDouble percent(Map<String, Map<String, String>> byItem, Map<String, String> reasons) {
        OptionalDouble mean = byItem.values().stream()
                .filter(ratings -> ratings.size() > 1)
                .mapToDouble(ratings -> agreeingPairs(List.copyOf(ratings.values())))
                .average();
        if (mean.isEmpty()) {
            reasons.put("percentAgreement", "Nothing was judged by more than one assessor.");
            return mean;
        }
        return OptionalDouble.of(100 * mean.getAsDouble());
    }

    private static double agreeingPairs(List<String> ratings) {
        int agreeing = 0;
        for (int one = 0; one < ratings.size(); one++) {
            for (int other = one + 1; other < ratings.size(); other++) {
                agreeing += ratings.get(one).equals(ratings.get(other)) ? 1 : 0;
            }
        }
        return 2.0 * agreeing / (ratings.size() * (ratings.size() - 1));
    }

    private static OptionalDouble kappa(
            Map<String, Map<String, String>> byItem, List<String> assessors, Level level, Map<String, String> reasons) {
        String why = null;
        List<Map<String, String>> both = new ArrayList<>();
        if (level == Level.INTERVAL) {
            why = "Kappa is for ratings in classes, not for measurements.";
        } else if (assessors.size() != 2) {
            why = "Kappa compares two assessors; here there are " + assessors.size() + ".";
        } else {
            byItem.values().stream().filter(ratings -> ratings.size() == 2).forEach(both::add);
            why = both.isEmpty() ? "The two assessors judged nothing in common." : null;
        }
        OptionalDouble kappa = why == null ? kappa(both, assessors.get(0), assessors.get(1)) : OptionalDouble.empty();
        if (kappa.isEmpty()) {
            reasons.put(
                    "cohenKappa", why == null ? "Only one rating was ever used, so chance alone agrees fully." : why);
        }
        return kappa;
    }

    /** (observed − chance)/(1 − chance), chance from how often each uses each class (Cohen, Educational and Psychological Measurement 20, 1960; from memory). */
    private static OptionalDouble kappa(List<Map<String, String>> both, String one, String other) {
        Map<String, Integer> ofOne = new HashMap<>();
        Map<String, Integer> ofOther = new HashMap<>();
        double agreed = 0;
        for (Map<String, String> ratings : both) {
            ofOne.merge(ratings.get(one), 1, Integer::sum);
            ofOther.merge(ratings.get(other), 1, Integer::sum);
            agreed += ratings.get(one).equals(ratings.get(other)) ? 1 : 0;
        }
        double n = both.size();
        double chance = ofOne.entrySet().stream()
                .mapToDouble(e -> e.getValue() * (double) ofOther.getOrDefault(e.getKey(), 0))
                .sum();
        boolean certain = chance == n * n;
        return certain
                ? OptionalDouble.empty()
                : OptionalDouble.of((agreed / n - chance / (n * n)) / (1 - chance / (n * n)));
    }
}
