package ribmark.weighupfile;

import java.util.List;
import java.util.Optional;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.Prices;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.TrimMeasure;
import ribmark.slips.Model;

/**
 * What a weigh-up of one breakdown can be held against: its tables and trim measures, the model by which slips and moved lines are
 * looked for, if it has one, and how wrong a scale may be whose class nobody told, and the
 * college’s own prices; {@code formula} counts the vertebrae of the usual
 * animal.
 */
public record References(
        String breakdown,
        String formula,
        List<ReferenceTable> tables,
        List<TrimMeasure> trim,
        Optional<Model> weighing,
        Optional<PermissibleErrors> permissible,
        Optional<Prices> prices) {

    /** Pieces that are balanced and never scored. */
    public static final List<String> BALANCED_ONLY = List.of("bone", "trim", "waste");

    /** Keeps its own copies. */
    public References {
        tables = List.copyOf(tables);
        trim = List.copyOf(trim);
    }

    /** The table with this id, if there is one. */
    public Optional<ReferenceTable> table(String id) {
        return tables.stream().filter(table -> table.id().equals(id)).findFirst();
    }

    /** The trim measure with this id, if there is one. */
    public Optional<TrimMeasure> measure(String id) {
        return trim.stream().filter(measure -> measure.id().equals(id)).findFirst();
    }
}
