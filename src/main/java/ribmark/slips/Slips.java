package ribmark.slips;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.scoring.ReferenceTable.Row;

/** Looks a set of weights over: which entry looks like a slip, and if none does, which line the weights would fit. */
public final class Slips {

    private Slips() {}

    /**
     * Judges the entries of one carcase against the rows of a table that are its whole, as they hold for this carcase. Entries of
     * other cuts must not be among them. Refused when the spreads of the table cannot go together.
     */
    public static Finding of(Model model, List<Row> rows, Whole whole, List<Typed> entries) {
        Block block = new Block(model, rows, whole, entries);
        List<Suspect> suspects = new Suspicion(block).suspects();
        boolean doubled = Repeated.entries(block).values().stream().anyMatch(same -> same.size() > 1);
        if (!suspects.isEmpty() || doubled) {
            return new Finding(suspects, Optional.empty(), Optional.empty());
        }
        double[] shares = Logs.shares(block.logs(block.asTyped()));
        List<Explanation> all = explanations(block.departures(), shares);
        return new Finding(
                suspects,
                Optional.of(all.stream()
                        .filter(e -> e.line().isEmpty()
                                || e.probability() >= model.departures().listedFrom())
                        .toList()),
                Optional.of(saying(model.departures(), block.departures(), shares)));
    }

    private static List<Explanation> explanations(List<Departure> departures, double[] shares) {
        List<Explanation> all = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            Departure way = departures.get(i);
            all.add(new Explanation(way.line(), way.towards(), way.by(), way.side(), shares[i]));
        }
        all.sort(Comparator.comparingDouble(Explanation::probability).reversed());
        return all;
    }

    private static Say saying(Model.LineFigures figures, List<Departure> departures, double[] shares) {
        if (shares[0] >= figures.nothingFrom()) {
            return Say.NOTHING_STANDS_OUT;
        }
        Map<List<Object>, Double> ways = new LinkedHashMap<>();
        for (int i = 1; i < shares.length; i++) {
            ways.merge(departures.get(i).way(), shares[i], Double::sum);
        }
        return ways.values().stream().anyMatch(share -> share >= figures.fitsFrom()) ? Say.FITS : Say.CANNOT_TELL;
    }
}
