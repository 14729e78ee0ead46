package ribmark.weighup;

import java.util.List;
import java.util.Optional;
import ribmark.scoring.Conditions;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Vertebrae;
import ribmark.scoring.Yardstick;

/** Every weight and trim measure taken from one carcase, and the tables it is held against, the coarsest first. */
public record WeighUp(
        CarcaseReading carcase,
        Yardstick yardstick,
        List<Reading> readings,
        List<TrimReading> trim,
        String usualFormula) {

    /** Keeps its own copies. */
    public WeighUp {
        readings = List.copyOf(readings);
        trim = List.copyOf(trim);
    }

    /** Held against these tables and no others; refused without any. Many weigh-ups are scored faster by one yardstick. */
    public WeighUp(
            CarcaseReading carcase,
            List<ReferenceTable> tables,
            List<Reading> readings,
            List<TrimReading> trim,
            String usualFormula) {
        this(carcase, Yardstick.of(tables), readings, trim, usualFormula);
    }

    /** The tables, the coarsest first. */
    public List<ReferenceTable> tables() {
        return yardstick.tables();
    }

    /** The tables as they hold for this carcase. */
    WeighUp underItsConditions() {
        Conditions conditions = conditions();
        Yardstick held = yardstick.under(conditions);
        return held == yardstick
                ? this
                : new WeighUp(carcase, held, readings, on(conditions.vertebrae()), usualFormula);
    }

    private List<TrimReading> on(Vertebrae vertebrae) {
        return vertebrae.areUsual()
                ? trim
                : trim.stream().map(read -> read.on(vertebrae)).toList();
    }

    /** What the tables ask of this carcase. */
    public Conditions conditions() {
        return carcase.conditions(yardstick.first().hot()).counted(carcase.against(usualFormula));
    }

    /** Only what one block sheet freed and measured. */
    public WeighUp freedOn(String sheet) {
        return new WeighUp(
                carcase,
                yardstick,
                readings.stream().filter(r -> r.sheet().equals(sheet)).toList(),
                trim.stream().filter(r -> r.sheet().equals(sheet)).toList(),
                usualFormula);
    }

    /** Every row once, in the order of the tables; the coarser table's row goes first. */
    public List<Row> rows() {
        return yardstick.rows();
    }

    /** The row that judges this cut. */
    public Optional<Row> row(String cut) {
        return yardstick.row(cut);
    }

    /** The readings of one cut. */
    public List<Reading> of(String cut) {
        return readings.stream().filter(r -> r.cut().equals(cut)).toList();
    }

    /** The carcase once cold, with its variance. */
    Mass cold() {
        return carcase.cold(yardstick.first().hot());
    }

    /** What a reading is of the cold carcase, in percent. */
    public double percentOf(Reading reading) {
        return 100
                * reading.net().grams()
                / carcase.coldG(yardstick.first().hot()).doubleValue();
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
