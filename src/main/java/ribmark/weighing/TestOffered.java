package ribmark.weighing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.carcase.Carcase;
import ribmark.scoring.Conditions;
import ribmark.scoring.OwnTable;
import ribmark.scoring.ReferenceTable;
import ribmark.weighup.Balance;
import ribmark.weighup.WeighUpScore;

/** Whether a weigh-up could count as a cutting test, and what it would teach; {@code whyNot} is one sentence. */
record TestOffered(boolean isWeighed, Optional<String> whyNot, Map<String, Double> percents, Conditions conditions) {

    /** A carcase that an apprentice was watched on teaches nothing, nor does one that does not balance. */
    static TestOffered of(Carcase carcase, Optional<WeighUpScore> score, boolean watched, List<ReferenceTable> tables) {
        if (score.isEmpty()) {
            return new TestOffered(
                    false, Optional.of("Nothing of " + carcase.name() + " was weighed yet."), Map.of(), null);
        }
        Conditions conditions = score.get().weighUp().conditions();
        Map<String, Double> percents = percents(score.get());
        return new TestOffered(true, whyNot(carcase, score.get(), watched, tables, percents), percents, conditions);
    }

    private static Optional<String> whyNot(
            Carcase carcase,
            WeighUpScore score,
            boolean watched,
            List<ReferenceTable> tables,
            Map<String, Double> percents) {
        if (watched) {
            return Optional.of("An apprentice was watched on " + carcase.name()
                    + ". A cutting test is cut by somebody competent, the whole carcase.");
        }
        if (score.balance().verdict() != Balance.Verdict.BALANCED) {
            return Optional.of(carcase.title() + " is not balanced: "
                    + score.balance().verdict().word() + ". Only a balanced weigh-up can be a cutting test.");
        }
        Conditions conditions = score.weighUp().conditions();
        List<String> reasons = tables.stream()
                .filter(table -> table.whyNot(conditions).isEmpty())
                .flatMap(table -> OwnTable.whyNot(table, conditions, percents).stream())
                .toList();
        long usable = tables.stream()
                .filter(table -> table.whyNot(conditions).isEmpty())
                .count();
        return reasons.size() < usable
                ? Optional.empty()
                : Optional.of("No table can learn from " + carcase.name() + ": " + reasons.get(0) + ".");
    }

    /** What both sides of each cut came to, at the moment its row means. */
    private static Map<String, Double> percents(WeighUpScore score) {
        Map<String, Double> percents = new HashMap<>();
        score.cuts().stream()
                .filter(cut -> cut.side() == Side.BOTH)
                .forEach(cut -> percents.put(cut.cut(), cut.yield().percent()));
        return percents;
    }
}
