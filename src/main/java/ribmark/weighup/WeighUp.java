package ribmark.weighup;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.scoring.Conditions;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;

/** Every weight and trim measure taken from one carcase, and the tables it is held against, the coarsest first. */
public record WeighUp(
        CarcaseReading carcase,
        List<ReferenceTable> tables,
        List<Reading> readings,
        List<TrimReading> trim,
        String usualFormula) {

    /** Refuses a weigh-up without a table; keeps its own copies. */
    public WeighUp {
        if (tables.isEmpty()) {
            throw new IllegalArgumentException("A weigh-up needs a reference table");
        }
        tables = List.copyOf(tables);
        readings = List.copyOf(readings);
        trim = List.copyOf(trim);
    }

    /** The tables as they hold for this carcase. */
    WeighUp underItsConditions() {
        Conditions conditions = conditions();
        return new WeighUp(
                carcase,
                tables.stream().map(table -> table.under(conditions)).toList(),
                readings,
                trim.stream().map(read -> read.on(conditions.vertebrae())).toList(),
                usualFormula);
    }

    /** What the tables ask of this carcase. */
    public Conditions conditions() {
        return carcase.conditions(tables.get(0).hot()).counted(carcase.against(usualFormula));
    }

    /** Only what one block sheet freed and measured. */
    public WeighUp freedOn(String sheet) {
        return new WeighUp(
                carcase,
                tables,
                readings.stream().filter(r -> r.sheet().equals(sheet)).toList(),
                trim.stream().filter(r -> r.sheet().equals(sheet)).toList(),
                usualFormula);
    }

    /** Every row once, in the order of the tables; the coarser table's row goes first. */
    public List<Row> rows() {
        return tables.stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> row(row.cut()).filter(first -> first == row).isPresent())
                .toList();
    }

    /** The row that judges this cut. */
    public Optional<Row> row(String cut) {
        return tables.stream().flatMap(table -> table.row(cut).stream()).findFirst();
    }

    /** The readings of one cut. */
    public List<Reading> of(String cut) {
        return readings.stream().filter(r -> r.cut().equals(cut)).toList();
    }

    /** What a reading is of the cold carcase, in percent. */
    public double percentOf(Reading reading) {
        return 100 * reading.net().grams() / carcase.coldG(tables.get(0).hot()).doubleValue();
    }

    /** Which sides of a cut have a weight: both when it was weighed as one. */
    public Optional<Side> weighedSides(String cut) {
        List<Side> sides = of(cut).stream().map(Reading::side).distinct().toList();
        if (sides.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(sides.size() == 1 && sides.get(0) != Side.ONCE ? sides.get(0) : Side.BOTH);
    }

    /** The larger piece of the named tables that a row's cut comes out of; nothing when it comes straight off the carcase. */
    public Optional<String> wholeOf(Row row) {
        return row.partOf().stream().filter(whole -> row(whole).isPresent()).findFirst();
    }

    /** The larger piece a reading came out of, by its row or as it says itself. */
    public Optional<String> wholeOf(Reading reading) {
        Optional<Row> row = row(reading.cut());
        if (row.isPresent()) {
            return wholeOf(row.get());
        }
        return Optional.of(reading.partOf()).filter(whole -> row(whole).isPresent());
    }
}
