package ribmark.blocksheet;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.PeopleStore;
import ribmark.people.Person;
import ribmark.web.Allow;
import ribmark.web.Choice;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where an assessor opens a block sheet on an accepted carcase. */
public final class OpeningPages {

    private static final Allow ALLOW = Allow.of(Role.ASSESSOR);

    private final BlockSheetStore sheets;
    private final CarcaseStore carcases;
    private final PeopleStore people;
    private final Supplier<Curriculum> curriculum;

    /** Who can be watched, on what, and doing what. */
    public OpeningPages(
            BlockSheetStore sheets, CarcaseStore carcases, PeopleStore people, Supplier<Curriculum> curriculum) {
        this.sheets = sheets;
        this.carcases = carcases;
        this.people = people;
        this.curriculum = curriculum;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/block-sheets/new", this::blank, ALLOW);
        routes.post("/block-sheets", this::open, ALLOW);
    }

    private void blank(Context ctx) {
        Carcase carcase = accepted(ctx.queryParam("carcase"));
        Form form = Form.blank().with("part", OpeningForm.WHOLE).with("side", "both");
        render(ctx, carcase, form);
    }

    private void open(Context ctx) {
        Form form = Form.typed(ctx);
        Carcase carcase = accepted(form.value("carcase"));
        List<Person> apprentices = apprentices(Access.signedIn(ctx));
        refuseOneself(ctx, form);
        form.oneOf(
                "apprentice",
                "Apprentice",
                apprentices.stream().map(p -> p.id().toString()).toList());
        OpeningForm typed = new OpeningForm(curriculum.get().breakdown(), form);
        Set<Place> scope = typed.scope();
        if (form.wrong()) {
            render(ctx.status(422), carcase, form);
            return;
        }
        Person apprentice = people.find(Ids.of(form.value("apprentice")));
        Breakdown breakdown = curriculum.get().breakdown();
        Opening asked = new Opening(carcase, apprentice, Access.signedIn(ctx).person(), breakdown.id(), scope);
        UUID id = sheets.open(besideOthers(asked, breakdown, typed.oneSide()));
        Site.see(ctx, "/block-sheets/" + id);
    }

    /** Two may share a carcase, but no cut is made twice: what somebody else has open is refused, or left out where one side was asked for. */
    private Opening besideOthers(Opening asked, Breakdown breakdown, boolean oneSide) {
        List<BlockSheet> open = sheets.openOf(asked.carcase().id());
        refuseTwice(asked, open);
        Opening left = asked;
        if (oneSide) {
            List<Place> taken = new ArrayList<>();
            Opening all = asked;
            open.stream()
                    .filter(sheet -> !all.inTheWay(List.of(sheet), all.scope()).isEmpty())
                    .forEach(sheet -> taken.addAll(sheet.scope()));
            taken.removeIf(place -> place.side() != Side.ONCE);
            taken.retainAll(OpeningForm.worked(breakdown, asked.scope()));
            left = asked.without(taken);
        }
        List<BlockSheet> inTheWay = left.inTheWay(open, OpeningForm.worked(breakdown, left.scope()));
        if (!inTheWay.isEmpty()) {
            throw new Refused(taken(left, inTheWay.get(0), breakdown));
        }
        return left;
    }

    private static void refuseTwice(Opening asked, List<BlockSheet> open) {
        open.stream()
                .filter(sheet ->
                        sheet.apprentice().id().equals(asked.apprentice().id()))
                .filter(sheet -> sheet.isKeptBy(asked.assessor().id()))
                .filter(sheet -> sheet.scope().stream().anyMatch(asked.scope()::contains))
                .findFirst()
                .ifPresent(sheet -> {
                    throw new Refused(
                            "You have a sheet open for " + sheet.apprentice().name() + " on "
                                    + sheet.carcase().name() + " already. Go on with that one; it is under Today.");
                });
    }

    private static String taken(Opening asked, BlockSheet other, Breakdown breakdown) {
        Place place = OpeningForm.worked(breakdown, asked.scope()).stream()
                .filter(other.scope()::contains)
                .findFirst()
                .orElseThrow();
        String side = place.side() == Side.ONCE ? "" : ", " + place.side().word() + " side,";
        return other.apprentice().name() + " has step "
                + breakdown.step(place.stepId()).orElseThrow().number() + side + " of "
                + asked.carcase().name() + " open with " + other.assessor().name()
                + ". Choose the other side, other steps or another carcase.";
    }

    private static void refuseOneself(Context ctx, Form form) {
        if (form.value("apprentice").equals(Access.signedIn(ctx).id().toString())) {
            throw new Refused("Nobody marks themselves. Another assessor opens this sheet.");
        }
    }

    private Carcase accepted(String id) {
        Carcase carcase = carcases.find(Ids.of(String.valueOf(id)));
        if (!carcase.isAccepted()) {
            throw new Refused(carcase.title() + " is " + carcase.decision().standing()
                    + ". A sheet is opened only on an accepted carcase.");
        }
        return carcase;
    }

    private List<Person> apprentices(Acting acting) {
        return people.allWho(Role.APPRENTICE).stream()
                .filter(person -> !person.id().equals(acting.id()))
                .toList();
    }

    private void render(Context ctx, Carcase carcase, Form form) {
        Breakdown breakdown = curriculum.get().breakdown();
        List<Choice> names = new ArrayList<>(List.of(Choice.of("", "Choose an apprentice")));
        apprentices(Access.signedIn(ctx)).forEach(p -> names.add(Choice.of(p.id().toString(), p.name())));
        Map<String, Object> model = new HashMap<>();
        model.put("form", form);
        model.put("carcase", carcase);
        model.put("title", "Open a sheet on " + carcase.name());
        model.put("names", names);
        model.put("parts", OpeningForm.parts(breakdown));
        model.put("sides", OpeningForm.sides());
        model.put("stages", OpeningForm.stages(breakdown));
        model.put("steps", OpeningForm.steps(breakdown));
        model.put("ticked", !form.all("steps").isEmpty());
        model.put("open", open(carcase));
        ctx.render("blocksheet/opening.html", model);
    }

    private List<String> open(Carcase carcase) {
        return sheets.openOf(carcase.id()).stream()
                .map(sheet -> sheet.apprentice().name() + ", "
                        + Words.count(
                                (int) sheet.scope().stream()
                                        .map(Place::stepId)
                                        .distinct()
                                        .count(),
                                "step",
                                "steps")
                        + sidesOf(sheet) + ", with " + sheet.assessor().name() + ".")
                .toList();
    }

    private static String sidesOf(BlockSheet sheet) {
        boolean left = sheet.scope().stream().anyMatch(place -> place.side() == Side.LEFT);
        boolean right = sheet.scope().stream().anyMatch(place -> place.side() == Side.RIGHT);
        return left == right ? "" : left ? ", left side" : ", right side";
    }
}
