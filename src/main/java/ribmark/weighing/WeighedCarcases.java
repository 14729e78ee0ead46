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
import ribmark.scoring.Vertebrae;

/** The weigh-ups of the college, each reckoned afresh from what was typed. */
public final class WeighedCarcases {

    private final WeighUpStore store;
    private final Supplier<Curriculum> curriculum;

    /** The curriculum brings tables, scales and limits. */
    public WeighedCarcases(WeighUpStore store, Supplier<Curriculum> curriculum) {
        this.store = store;
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

    /** The carcase reckoned through; nothing when nothing was weighed. */
    Optional<Reckoning> reckon(Carcase carcase, Collection<UUID> sheets) {
        List<KeptReading> counting =
                store.of(carcase.id()).stream().filter(KeptReading::counts).toList();
        if (counting.isEmpty()) {
            return Optional.empty();
        }
        Curriculum content = curriculum.get();
        CarcaseReading reading = Reckoning.reading(content, carcase);
        return Optional.of(new Reckoning(content, reading, Pieces.of(content, reading), counting, trim(sheets)));
    }
}
