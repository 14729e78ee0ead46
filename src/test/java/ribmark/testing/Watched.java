package ribmark.testing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.Draft;
import ribmark.blocksheet.Opening;
import ribmark.blocksheet.Place;
import ribmark.carcase.Carcase;
import ribmark.carcase.Decision;
import ribmark.competence.Mark;
import ribmark.curriculum.Step;
import ribmark.people.Group;
import ribmark.people.Person;
import ribmark.web.Role;

/** A small college with closed block sheets, told in few words; everybody and everything in it is invented. */
public final class Watched implements AutoCloseable {

    /** A step done on each side. */
    public static final String LEG_LINE = "middle-mark";

    /** A step done once. */
    public static final String READY = "ready-to-work";

    /** The running program. */
    public final TestApp app = new TestApp();

    private final Map<Integer, Carcase> lambs = new HashMap<>();

    /** An apprentice. */
    public Person apprentice(String name) {
        return app.person(name, Role.APPRENTICE);
    }

    /** An assessor. */
    public Person assessor(String name) {
        return app.person(name, Role.ASSESSOR);
    }

    /** Puts a tutor and apprentices into a group. */
    public Group group(String name, String tutor, String... apprentices) {
        Group group = app.app.groups().named(name);
        app.app.groups().join(group, app.person(tutor, Role.TUTOR));
        for (String apprentice : apprentices) {
            app.app.groups().join(group, apprentice(apprentice));
        }
        return group;
    }

    /** A closed sheet on which a step got the same mark on every side. */
    public UUID closed(String apprentice, String assessor, int lamb, String step, Mark mark) {
        return closed(apprentice, assessor, lamb, places(step).stream().collect(Collectors.toMap(p -> p, p -> mark)));
    }

    /** A closed sheet with these marks. */
    public UUID closed(String apprentice, String assessor, int lamb, Map<Place, Mark> marks) {
        BlockSheetStore sheets = app.app.sheets();
        UUID sheet = sheets.open(new Opening(
                lamb(lamb, assessor), apprentice(apprentice), assessor(assessor), "lamb", Set.copyOf(marks.keySet())));
        marks.forEach((place, mark) -> sheets.mark(sheet, place, mark, fault(place, mark), "", app.clock.instant()));
        Draft said = new Draft(Map.of(), "Hands well apart.", "Slower at the end.", "The same again.", "2026-12-04");
        sheets.close(sheet, java.time.LocalDate.parse(said.nextDay()), said);
        return sheet;
    }

    /** Three sheets unaided on three lambs by two assessors: all that the rule asks for. */
    public void enough(String apprentice, String step) {
        closed(apprentice, "Maeve", 27, step, Mark.UNAIDED);
        closed(apprentice, "Maeve", 29, step, Mark.UNAIDED);
        closed(apprentice, "Osric", 31, step, Mark.UNAIDED);
    }

    /** The page about somebody's evidence for a step. */
    public String evidence(String apprentice, String step) {
        return "/apprentices/" + apprentice(apprentice).id() + "/steps/" + step;
    }

    /** A form sent by hand, as an old page or another program would. */
    public Page send(Browser browser, String from, String to, Map<String, String> fields) {
        List<Map.Entry<String, String>> all = new java.util.ArrayList<>(fields.entrySet());
        String token = browser.open(from).all("input[name=token]").get(0).attr("value");
        all.add(Map.entry("token", token));
        all.add(Map.entry("key", UUID.randomUUID().toString()));
        return browser.post(to, all);
    }

    private List<Place> places(String step) {
        return step(step).sides().stream().map(side -> new Place(step, side)).toList();
    }

    /** One side of a step. */
    public static Place place(String step, Side side) {
        return new Place(step, side);
    }

    private Optional<String> fault(Place place, Mark mark) {
        return mark.startsAfresh()
                ? Optional.of(step(place.stepId()).faults().get(0).id())
                : Optional.empty();
    }

    private Step step(String id) {
        return app.app.standings().curriculum().breakdown().step(id).orElseThrow();
    }

    private Carcase lamb(int number, String by) {
        return lambs.computeIfAbsent(
                number,
                n -> app.app.carcases().add(n, Carcases.lambOf("20.120"), Decision.ACCEPT, "as seen", assessor(by)));
    }

    @Override
    public void close() {
        app.close();
    }
}
