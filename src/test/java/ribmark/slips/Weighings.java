package ribmark.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.Scale;
import ribmark.testing.Tables;

/** Sets of weights to be looked over, typed the way a person types them. */
final class Weighings {

    static final Model MODEL = Tables.lamb().weighing().orElseThrow();

    private final ReferenceTable table;
    private final List<Typed> entries = new ArrayList<>();
    private Whole whole;
    private Scale scale = Tables.BLOCK;

    private Weighings(ReferenceTable table) {
        this.table = table;
    }

    static Weighings of(ReferenceTable table, String carcase) {
        Weighings weighings = new Weighings(table);
        weighings.whole = Whole.cold("carcase", Weight.ofKilograms(carcase), Tables.BLOCK);
        return weighings;
    }

    Weighings on(Scale other) {
        scale = other;
        return this;
    }

    Weighings and(String cut, String kilograms) {
        return and(cut, Side.ONCE, kilograms);
    }

    Weighings and(String cut, Side side, String kilograms) {
        Weight gross = Weight.ofKilograms(kilograms);
        entries.add(new Typed(cut, side, kilograms, gross, Optional.empty(), scale));
        return this;
    }

    Weighings onTray(String cut, String kilograms, long trayG) {
        Weight gross = Weight.ofKilograms(kilograms);
        entries.add(new Typed(cut, Side.ONCE, kilograms, gross, Optional.of(new Weight(trayG)), scale));
        return this;
    }

    Finding find() {
        return Slips.of(MODEL, table.rows(), whole, entries);
    }

    Block block() {
        return new Block(MODEL, table.rows(), whole, entries);
    }

    Suspicion suspicion() {
        return new Suspicion(block());
    }
}
