package ribmark.testing;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.Draft;
import ribmark.blocksheet.Opening;
import ribmark.blocksheet.Place;
import ribmark.carcase.Carcase;
import ribmark.carcase.Decision;
import ribmark.competence.Mark;
import ribmark.people.Person;

/** Block sheets as they come about in tests, straight into the tables; everything on them is invented. */
public final class Sheets {

    private final TestApp app;
    private final BlockSheetStore store;

    /** The sheets of this program. */
    public Sheets(TestApp app) {
        this.app = app;
        this.store = app.app.sheets();
    }

    /** An open sheet on a lamb of its own: the cut along the fore line on both sides, and the saw. */
    public UUID opened(int lamb, Person apprentice, Person assessor) {
        Carcase carcase = app.app.carcases().add(lamb, Carcases.lambOf("20.120"), Decision.ACCEPT, "as seen", assessor);
        Set<Place> scope = new LinkedHashSet<>(List.of(
                new Place("fores-cut", Side.LEFT),
                new Place("fores-cut", Side.RIGHT),
                new Place("fores-saw", Side.ONCE)));
        return store.open(new Opening(carcase, apprentice, assessor, "lamb", scope));
    }

    /** The same, marked and closed: unaided on the left, a fault on the right, prompted at the saw. */
    public UUID closed(int lamb, Person apprentice, Person assessor) {
        UUID sheet = opened(lamb, apprentice, assessor);
        mark(sheet, "fores-cut", Side.LEFT, Mark.UNAIDED, null, "");
        mark(sheet, "fores-cut", Side.RIGHT, Mark.NOT_YET, "rides-up", "Twice, near the chine.");
        mark(sheet, "fores-saw", Side.ONCE, Mark.PROMPTED, null, "You started a finger off the disc.");
        close(sheet);
        return sheet;
    }

    /** The same, unaided everywhere. */
    public UUID unaided(int lamb, Person apprentice, Person assessor) {
        UUID sheet = opened(lamb, apprentice, assessor);
        mark(sheet, "fores-cut", Side.LEFT, Mark.UNAIDED, null, "");
        mark(sheet, "fores-cut", Side.RIGHT, Mark.UNAIDED, null, "");
        mark(sheet, "fores-saw", Side.ONCE, Mark.UNAIDED, null, "");
        close(sheet);
        return sheet;
    }

    private void mark(UUID sheet, String step, Side side, Mark mark, String fault, String words) {
        store.mark(sheet, new Place(step, side), mark, Optional.ofNullable(fault), words, app.clock.instant());
    }

    private void close(UUID sheet) {
        LocalDate day =
                LocalDate.ofInstant(app.clock.instant(), app.clock.getZone()).plusDays(2);
        store.close(
                sheet,
                day,
                new Draft(
                        Map.of("wholesale", "Both sides counted from inside."),
                        "Your outside hand never came near the point.",
                        "Aim both cuts at the gristle.",
                        "Cut the right side again on Friday.",
                        day.toString()));
    }
}
