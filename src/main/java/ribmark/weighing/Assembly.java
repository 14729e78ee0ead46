package ribmark.weighing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Scale;
import ribmark.weighup.Balance;
import ribmark.weighup.Balances;
import ribmark.weighup.CarcaseReading;
import ribmark.weighup.Reading;
import ribmark.weighup.TrimReading;
import ribmark.weighup.WeighUp;
import ribmark.weighup.WeighUpScore;

/**
 * Puts the readings of a carcase together as one weigh-up. A cut may come to the scale at several levels, as a pair and again as
 * halves: then the finest complete one at its moment is judged; a coarser one is held against it, a finer one is a part of it.
 */
final class Assembly {

    /** How a weight is called that was taken later than its row means. */
    static final String LATER = "later, trimmed or boned since";

    /** A kept reading as it counts in the weigh-up, with the row it is judged by or the piece it came out of. */
    record Placed(KeptReading kept, Reading reading) {}

    private final Curriculum curriculum;
    private final Pieces pieces;
    private final List<KeptReading> counting;
    private final List<ReferenceTable> tables;
    private final Lineage lineage;
    private final Map<String, String> judged = new LinkedHashMap<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Placed> coarser = new ArrayList<>();

    Assembly(Curriculum curriculum, Pieces pieces, List<KeptReading> counting) {
        this.curriculum = curriculum;
        this.pieces = pieces;
        this.counting = counting;
        this.lineage = new Lineage(curriculum);
        Set<String> rows = counting.stream()
                .flatMap(reading -> row(reading).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        this.tables = TableChoice.of(pieces.tables(), rows);
        rows.forEach(row -> judged.put(row, levelJudged(row)));
        counting.forEach(this::place);
    }

    /** Everything as one weigh-up. */
    WeighUp weighUp(CarcaseReading carcase, List<TrimReading> trim) {
        return new WeighUp(
                carcase,
                tables,
                placed.stream().map(Placed::reading).toList(),
                trim,
                curriculum.breakdown().formula().toString());
    }

    List<Placed> placed() {
        return List.copyOf(placed);
    }

    /** Readings of a cut that was weighed again in its parts, by the cut: they are compared, not added. */
    Map<String, List<Placed>> coarser() {
        return coarser.stream()
                .collect(Collectors.groupingBy(p -> p.kept().typed().cut(), LinkedHashMap::new, Collectors.toList()));
    }

    /** The row a reading was taken for, while a table knows it. */
    private Optional<String> row(KeptReading reading) {
        return reading.typed()
                .row()
                .filter(row -> pieces.tables().stream()
                        .anyMatch(table -> table.row(row).isPresent()));
    }

    private String levelJudged(String row) {
        return ofRow(row)
                .map(reading -> reading.typed().cut())
                .distinct()
                .max(Comparator.<String, Boolean>comparing(cut -> atItsMoment(row, cut))
                        .thenComparing(this::isComplete)
                        .thenComparing(this::order))
                .orElseThrow();
    }

    private Stream<KeptReading> ofRow(String row) {
        return counting.stream()
                .filter(reading -> row(reading).filter(row::equals).isPresent());
    }

    private boolean atItsMoment(String row, String cut) {
        return ofRow(row)
                .filter(reading -> reading.typed().cut().equals(cut))
                .allMatch(reading -> moment(reading).isEmpty());
    }

    private boolean isComplete(String cut) {
        Set<Side> weighed = counting.stream()
                .filter(reading -> reading.typed().cut().equals(cut))
                .map(reading -> reading.typed().side())
                .collect(Collectors.toSet());
        return curriculum.cut(cut).filter(c -> weighed.containsAll(c.sides())).isPresent();
    }

    private int order(String cut) {
        Side side = curriculum.cut(cut).map(c -> c.sides().get(0)).orElse(Side.ONCE);
        return pieces.order(cut, side);
    }

    private void place(KeptReading kept) {
        String cut = kept.typed().cut();
        Optional<String> row = row(kept);
        if (row.isEmpty()) {
            placed.add(new Placed(kept, part(kept)));
        } else if (judged.get(row.get()).equals(cut)) {
            placed.add(new Placed(kept, reading(kept, row.get(), moment(kept), "")));
        } else if (order(cut) < order(judged.get(row.get()))) {
            coarser.add(new Placed(kept, reading(kept, cut, "", "")));
        } else {
            placed.add(new Placed(kept, part(kept)));
        }
    }

    private Reading part(KeptReading kept) {
        var typed = kept.typed();
        Optional<String> whole = typed.partOf()
                .or(() -> lineage.wholeOf(
                        new Lineage.Of(typed.cut(), typed.side()),
                        row -> tables.stream().anyMatch(table -> table.row(row).isPresent())));
        return reading(kept, typed.cut(), "", whole.orElse(""));
    }

    private Reading reading(KeptReading kept, String cut, String moment, String partOf) {
        var typed = kept.typed();
        String sheet = typed.sheet().map(Object::toString).orElse("");
        Reading reading = new Reading(
                cut, typed.side(), typed.weight(), typed.tare(), scale(typed.scale()), moment, sheet, partOf);
        return typed.text().map(reading::asTyped).orElse(reading);
    }

    private String moment(KeptReading kept) {
        return kept.typed().later()
                ? LATER
                : curriculum.cut(kept.typed().cut()).flatMap(c -> c.moment()).orElse("");
    }

    private Scale scale(String id) {
        return scale(curriculum, id);
    }

    /** The scale with this id; one that is no longer listed counts as the roughest there is. */
    static Scale scale(Curriculum curriculum, String id) {
        return curriculum
                .scale(id)
                .orElseGet(() -> curriculum.scales().stream()
                        .max(Comparator.comparingDouble(Scale::varianceG2))
                        .orElseThrow());
    }

    /** The inner balances with every piece named that has no weight yet, and each coarser weight held against its parts. */
    List<Balance> inner(WeighUpScore score) {
        List<Balance> balances = new ArrayList<>();
        score.innerBalances().forEach(balance -> balances.add(completed(score.weighUp(), balance)));
        coarser().forEach((cut, whole) -> balances.add(heldAgainst(cut, whole, score)));
        return balances;
    }

    private Balance completed(WeighUp weighUp, Balance balance) {
        Set<Lineage.Of> weighed = placed.stream()
                .filter(p -> weighUp.wholeOf(p.reading())
                        .filter(balance.of()::equals)
                        .isPresent())
                .map(Assembly::of)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<Lineage.Of> known = new LinkedHashSet<>();
        weighUp.rows().stream()
                .filter(row -> weighUp.wholeOf(row).filter(balance.of()::equals).isPresent())
                .forEach(row -> known.addAll(cutsOf(row)));
        String whole = judged.get(balance.of());
        List<Lineage.Of> sides = curriculum.cut(whole).orElseThrow().sides().stream()
                .map(side -> new Lineage.Of(whole, side))
                .toList();
        return missingToo(
                balance, lineage.missing(sides, weighed, known).stream().map(Lineage.Of::toString));
    }

    private List<Lineage.Of> cutsOf(Row row) {
        return curriculum.cuts().stream()
                .filter(cut -> cut.rows().contains(row.cut()))
                .flatMap(cut -> cut.sides().stream().map(side -> new Lineage.Of(cut.id(), side)))
                .toList();
    }

    private static Lineage.Of of(Placed placed) {
        return new Lineage.Of(placed.kept().typed().cut(), placed.kept().typed().side());
    }

    private static Balance missingToo(Balance balance, Stream<String> more) {
        List<String> missing = Stream.concat(balance.missing().stream(), more).toList();
        return new Balance(
                balance.of(),
                balance.wholeG(),
                balance.wholeVarianceG2(),
                balance.partsG(),
                balance.partsVarianceG2(),
                missing,
                balance.limits());
    }

    private Balance heldAgainst(String cut, List<Placed> whole, WeighUpScore score) {
        String row = whole.get(0).kept().typed().row().orElseThrow();
        Mass together = Balances.sum(whole.stream().map(Placed::reading).toList());
        Mass parts = Balances.sum(score.weighUp().of(row));
        List<String> missing = score.balance().missing().stream()
                .filter(name -> name.startsWith(row + " "))
                .toList();
        return new Balance(
                cut,
                BigDecimal.valueOf((long) together.grams()),
                together.varianceG2(),
                (long) parts.grams(),
                parts.varianceG2(),
                missing,
                score.balance().limits());
    }
}
