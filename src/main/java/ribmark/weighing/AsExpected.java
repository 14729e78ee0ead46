package ribmark.weighing;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.curriculum.Cut;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.weighup.CarcaseReading;

/** One carcase against tables already moved for it. */
record AsExpected(List<ReferenceTable> tables, CarcaseReading carcase, List<KeptReading> counting)
        implements ExpectedView.Scale {

    /** What comes to the scale later than its row means is not expected by it. */
    @Override
    public Optional<Row> row(Cut cut) {
        return tables.stream()
                .filter(table -> cut.moment().isEmpty())
                .flatMap(table -> cut.rows().stream().flatMap(row -> table.row(row).stream()))
                .findFirst();
    }

    @Override
    public double carcaseG() {
        return carcase.coldG(tables.get(0).hot()).doubleValue();
    }

    @Override
    public Optional<Weight> weighed(Cut cut, Side side) {
        return counting.stream()
                .filter(kept ->
                        kept.typed().cut().equals(cut.id()) && kept.typed().side() == side)
                .map(KeptReading::net)
                .reduce(Weight::plus);
    }
}
