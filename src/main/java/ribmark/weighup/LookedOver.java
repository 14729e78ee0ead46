package ribmark.weighup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.scoring.ReferenceTable.Hot;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.slips.Cause;
import ribmark.slips.Finding;
import ribmark.slips.Model;
import ribmark.slips.Slips;
import ribmark.slips.Suspect;
import ribmark.slips.Typed;
import ribmark.slips.Whole;

/**
 * Hands the weights of one carcase to the search for slips and moved lines: once as the larger pieces the carcase was parted into,
 * and where some were weighed again in parts, once more with the parts in their place. The finer one speaks of the lines.
 */
final class LookedOver {

    private final WeighUpScore score;
    private final WeighUp weighUp;
    private final Model model;

    private LookedOver(WeighUpScore score, Model model) {
        this.score = score;
        this.weighUp = score.weighUp();
        this.model = model;
    }

    /** Nothing when the spreads of a table cannot go together for this carcase. */
    static Optional<Finding> of(WeighUpScore score, Model model) {
        LookedOver over = new LookedOver(score, model);
        List<Row> coarse = over.parts(Optional.empty()).toList();
        List<Row> fine = coarse.stream().flatMap(over::finest).toList();
        Optional<Finding> larger = over.find(coarse);
        return fine.equals(coarse)
                ? larger
                : larger.flatMap(l -> over.find(fine).map(f -> both(l, f)));
    }

    private Stream<Row> parts(Optional<String> of) {
        return weighUp.rows().stream().filter(row -> weighUp.wholeOf(row).equals(of));
    }

    /** A row, or its parts when any of them was weighed. */
    private Stream<Row> finest(Row row) {
        List<Row> parts = parts(Optional.of(row.cut())).flatMap(this::finest).toList();
        boolean weighed =
                parts.stream().anyMatch(part -> !weighUp.of(part.cut()).isEmpty());
        return weighed ? parts.stream() : Stream.of(row);
    }

    private Optional<Finding> find(List<Row> rows) {
        if (Model.whyNotWhole(rows.stream().mapToDouble(Row::sd).toArray()).isPresent()) {
            return Optional.empty();
        }
        Finding found = Slips.of(model, rows, whole(), entries(rows));
        List<Suspect> suspects =
                found.suspects().stream().filter(this::isMissed).toList();
        return Optional.of(new Finding(suspects, found.explanations(), found.saying()));
    }

    private Whole whole() {
        CarcaseReading carcase = weighUp.carcase();
        Hot toCold = carcase.hot() ? weighUp.tables().get(0).hot() : new Hot(1, 0);
        return new Whole(Balances.CARCASE, carcase.typed(), carcase.weight(), toCold, carcase.scale());
    }

    /** The readings of these rows at their moment, in an order of their own, so that the order typed changes nothing. */
    private List<Typed> entries(List<Row> rows) {
        List<Typed> entries = new ArrayList<>();
        for (Row row : rows) {
            if (WeighUpScore.atItsMoment(weighUp, row)) {
                weighUp.of(row.cut()).stream()
                        .map(r -> new Typed(r.cut(), r.side(), r.typed(), r.weight(), r.tare(), r.scale()))
                        .sorted(Comparator.comparing(Typed::side)
                                .thenComparing(Typed::gross)
                                .thenComparing(Typed::text))
                        .forEach(entries::add);
            }
        }
        return entries;
    }

    /** A missing piece is only told where the balance misses it too: one weighed at another moment, or in parts, is not missing. */
    private boolean isMissed(Suspect suspect) {
        String name =
                suspect.cut() + suspect.side().map(side -> " " + side.word()).orElse("");
        return suspect.because() != Cause.PIECE_MISSING
                || Stream.concat(Stream.of(score.balance()), score.innerBalances().stream())
                        .anyMatch(balance -> balance.missing().contains(name));
    }

    private static Finding both(Finding larger, Finding finer) {
        Map<List<Object>, Suspect> suspects = new LinkedHashMap<>();
        Stream.concat(larger.suspects().stream(), finer.suspects().stream())
                .forEach(s -> suspects.merge(
                        List.of(s.cut(), s.side(), s.because(), s.likely()),
                        s,
                        (one, other) -> one.probability() >= other.probability() ? one : other));
        List<Suspect> sorted = suspects.values().stream()
                .sorted(Comparator.comparingDouble(Suspect::probability).reversed())
                .toList();
        return sorted.isEmpty() ? finer : new Finding(sorted, Optional.empty(), Optional.empty());
    }
}
