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
import ribmark.scoring.Conditions;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.Vertebrae;
import ribmark.slips.Finding;
import ribmark.weighup.CarcaseReading;
import ribmark.weighup.TrimReading;

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
        reckon(sheet.carcase(), List.of(sheet.id())).ifPresent(reckoning -> {
            List<PageLine> freed = reckoning.lines(sheet.id());
            lines.addAll(freed);
            if (!freed.isEmpty()) {
                lines.addAll(findingLines(reckoning, sheet.carcase(), finding(reckoning)));
            }
        });
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
        return reckon(carcase, counting(carcase), sheets);
    }

    /** What is on the list of a carcase now. */
    List<KeptReading> counting(Carcase carcase) {
        return store.of(carcase.id()).stream().filter(KeptReading::counts).toList();
    }

    /** The same with these readings on the list. */
    Optional<Reckoning> reckon(Carcase carcase, List<KeptReading> counting, Collection<UUID> sheets) {
        return reckon(carcase, counting, sheets, newest(counting));
    }

    /** The same by the tables as they stand now. */
    Optional<Reckoning> reckonNow(Carcase carcase) {
        return reckon(carcase, counting(carcase), List.of(), OwnTables.NOW);
    }

    /** The newest record of the readings on the list. */
    private static long newest(List<KeptReading> counting) {
        return counting.stream().mapToLong(KeptReading::evidenceSeq).max().orElse(OwnTables.NOW);
    }

    private Optional<Reckoning> reckon(
            Carcase carcase, List<KeptReading> counting, Collection<UUID> sheets, long record) {
        if (counting.isEmpty()) {
            return Optional.empty();
        }
        Curriculum content = curriculum.get();
        CarcaseReading reading = Reckoning.reading(content, carcase);
        Judging judging = ownTables.judging(content, Reckoning.conditions(content, reading), carcase.id(), record);
        Curriculum judged = content.judgedBy(judging.tables());
        return Optional.of(new Reckoning(judged, reading, Pieces.of(judged, reading), counting, trim(sheets)));
    }

    /** The version of the tables a carcase is judged by: as they stood when it was weighed, or as they stand now. */
    Judging judging(Carcase carcase, boolean now) {
        Curriculum content = curriculum.get();
        CarcaseReading reading = Reckoning.reading(content, carcase);
        long record = now ? OwnTables.NOW : newest(counting(carcase));
        return ownTables.judging(content, Reckoning.conditions(content, reading), carcase.id(), record);
    }

    /** What is expected of each piece of this carcase, by the tables that may judge it, and what was weighed so far. */
    ExpectedView.Scale expected(Carcase carcase) {
        Curriculum content = curriculum.get();
        CarcaseReading reading = Reckoning.reading(content, carcase);
        Conditions conditions = Reckoning.conditions(content, reading);
        List<ReferenceTable> tables = judging(carcase, false).tables().stream()
                .filter(table -> table.whyNot(conditions).isEmpty())
                .map(table -> table.under(conditions))
                .toList();
        return new AsExpected(tables, reading, counting(carcase));
    }

    /** What the weights say of slips among themselves and of moved lines; nothing where the content has no model of them. */
    Optional<Finding> finding(Reckoning reckoning) {
        return reckoning.score().finding(curriculum.get().weighing());
    }

    /** What the weights would fit, in lines to read. */
    List<PageLine> findingLines(Reckoning reckoning, Carcase carcase, Optional<Finding> finding) {
        return FindingLines.of(reckoning, carcase, curriculum.get().weighing(), finding);
    }
}
