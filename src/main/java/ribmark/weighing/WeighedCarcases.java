package ribmark.weighing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import ribmark.blocksheet.BlockSheet;
import ribmark.carcase.Carcase;
import ribmark.curriculum.Curriculum;
import ribmark.cuttingtests.OwnTables;
import ribmark.cuttingtests.OwnTables.Judging;
import ribmark.scoring.Vertebrae;

/** The weigh-ups of the college, each reckoned afresh from what was typed. */
public final class WeighedCarcases {

    private final WeighUpStore store;
    private final OwnTables ownTables;
    private final Supplier<Curriculum> curriculum;

    /** The curriculum brings tables, scales and limits; cutting tests have moved the tables. */
    public WeighedCarcases(WeighUpStore store, OwnTables ownTables, Supplier<Curriculum> curriculum) {
        this.store = store;
        this.ownTables = ownTables;
        this.curriculum = curriculum;
    }

    /** What the apprentice of this sheet freed and how it was trimmed, line by line; the very lines the assessor sees. */
    public List<PageLine> forSheet(BlockSheet sheet) {
        List<PageLine> lines = new ArrayList<>();
        reckon(sheet.carcase(), List.of()).ifPresent(reckoning -> lines.addAll(reckoning.lines(sheet.id())));
        lines.addAll(trimLines(sheet));
        return lines;
    }

    /** The trim measures of a sheet against their limits. */
    List<PageLine> trimLines(BlockSheet sheet) {
        Saying saying = new Saying(curriculum.get());
        return trim(sheet).stream().map(saying::trim).toList();
    }

    /** The trim measures of one sheet against the limits of its own carcase. */
    List<TrimReading> trim(BlockSheet sheet) {
        Vertebrae vertebrae = Reckoning.vertebrae(curriculum.get(), sheet.carcase());
        return trim(List.of(sheet.id())).stream()
                .map(read -> read.on(vertebrae))
                .toList();
    }

    /** The trim measures of some sheets, as the content now limits them on the usual animal. */
    private List<TrimReading> trim(Collection<UUID> sheets) {
        List<TrimReading> readings = new ArrayList<>();
        for (KeptTrim kept : store.trimOf(sheets)) {
            curriculum.get().trim().stream()
                    .filter(measure -> measure.id().equals(kept.measure()))
                    .forEach(measure -> readings.add(new TrimReading(
                            measure,
                            new BigDecimal(kept.value()),
                            measure.division(),
                            kept.side(),
                            kept.sheet().toString())));
        }
        return readings;
    }

    /**
     * The carcase reckoned through by the tables as they stood when its newest counting weight was kept, so that a later cutting test
     * changes no score; nothing when nothing was weighed.
     */
    Optional<Reckoning> reckon(Carcase carcase, Collection<UUID> sheets) {
        List<KeptReading> counting = counting(carcase);
        return counting.isEmpty()
                ? Optional.empty()
                : Optional.of(reckon(
                        carcase,
                        sheets,
                        counting,
                        counting.get(counting.size() - 1).evidenceSeq()));
    }

    /** The same by the tables as they stand now. */
    Optional<Reckoning> reckonNow(Carcase carcase) {
        List<KeptReading> counting = counting(carcase);
        return counting.isEmpty() ? Optional.empty() : Optional.of(reckon(carcase, List.of(), counting, OwnTables.NOW));
    }

    private List<KeptReading> counting(Carcase carcase) {
        return store.of(carcase.id()).stream().filter(KeptReading::counts).toList();
    }

    private Reckoning reckon(Carcase carcase, Collection<UUID> sheets, List<KeptReading> counting, long record) {
        Curriculum content = curriculum.get();
        CarcaseReading reading = Reckoning.reading(content, carcase);
        Judging judging = ownTables.judging(content, Reckoning.conditions(content, reading), carcase.id(), record);
        Curriculum judged = content.judgedBy(judging.tables());
        return new Reckoning(judged, reading, Pieces.of(judged, reading), counting, trim(sheets));
    }

    /** The version of the tables a carcase is judged by: as they stood when it was weighed, or as they stand now. */
    Judging judging(Carcase carcase, boolean now) {
        Curriculum content = curriculum.get();
        CarcaseReading reading = Reckoning.reading(content, carcase);
        long record = now
                ? OwnTables.NOW
                : counting(carcase).stream()
                        .mapToLong(KeptReading::evidenceSeq)
                        .max()
                        .orElse(OwnTables.NOW);
        return ownTables.judging(content, Reckoning.conditions(content, reading), carcase.id(), record);
    }
}
