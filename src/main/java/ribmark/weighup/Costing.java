package ribmark.weighup;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.scoring.Cost;
import ribmark.scoring.Cost.Part;
import ribmark.scoring.Prices;
import ribmark.scoring.ReferenceTable.Row;

/** What a weigh-up was worth beside the breakdown its table expects, where the college has prices. */
public record Costing(Cost cost, List<String> unpriced) {

    /** Keeps its own copy. */
    public Costing {
        unpriced = List.copyOf(unpriced);
    }

    /** Every cut weighed whole at its moment; where it was weighed again in parts that have prices, the parts instead. */
    static Optional<Costing> of(WeighUpScore score, Optional<Prices> prices) {
        if (prices.isEmpty() || !score.isScored()) {
            return Optional.empty();
        }
        List<ScoredCut> whole =
                score.cuts().stream().filter(cut -> cut.side() == Side.BOTH).toList();
        List<ScoredCut> priced = whole.stream()
                .filter(cut -> prices.get().of(cut.cut()).isPresent())
                .toList();
        List<Part> parts = new ArrayList<>();
        for (ScoredCut cut : priced) {
            if (priced.stream().noneMatch(other -> isOutOf(score.weighUp(), other, cut))) {
                parts.add(part(score.weighUp(), cut, prices.get().of(cut.cut()).get()));
            }
        }
        List<String> without = whole.stream()
                .filter(cut -> !priced.contains(cut))
                .map(cut -> cut.yield().row().name())
                .toList();
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(new Costing(new Cost(prices.get().currency(), parts), without));
    }

    private static boolean isOutOf(WeighUp weighUp, ScoredCut part, ScoredCut whole) {
        return weighUp.wholeOf(part.yield().row()).filter(whole.cut()::equals).isPresent();
    }

    private static Part part(WeighUp weighUp, ScoredCut cut, BigDecimal perKg) {
        Row row = cut.yield().row();
        BigDecimal carcase = weighUp.carcase().coldG(weighUp.tables().get(0).hot());
        BigDecimal expected =
                carcase.multiply(BigDecimal.valueOf(row.expected())).movePointLeft(2);
        BigDecimal grams = BigDecimal.valueOf(Balances.net(cut.readings()).grams());
        return new Part(cut.cut(), row.name(), grams, expected, perKg);
    }

    /** All of it in one sentence, and that it judges nobody. */
    public String sentence() {
        BigDecimal total = cost.total(2);
        String less = total.signum() < 0 ? " less" : " more";
        return "At the college’s own prices this breakdown was worth "
                + total.abs().toPlainString() + "\u00a0" + cost.currency() + less
                + " than the one the table expects. It judges nobody.";
    }

    /** A line for each cut, adding up to the sentence. */
    public List<String> lines() {
        List<BigDecimal> rounded = cost.rounded(2);
        List<String> lines = new ArrayList<>();
        for (int at = 0; at < rounded.size(); at++) {
            Part part = cost.parts().get(at);
            lines.add(part.name() + ": "
                    + signed(part.moreG().movePointLeft(3).setScale(3, java.math.RoundingMode.HALF_EVEN))
                    + "\u00a0kg at " + part.perKg().toPlainString() + " a kilogram: " + signed(rounded.get(at))
                    + "\u00a0" + cost.currency());
        }
        if (!unpriced.isEmpty()) {
            lines.add("Without a price: " + ribmark.basics.Words.list(unpriced));
        }
        return lines;
    }

    private static String signed(BigDecimal number) {
        return (number.signum() < 0 ? "−" : "+") + number.abs().toPlainString();
    }
}
