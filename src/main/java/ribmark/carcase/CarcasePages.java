package ribmark.carcase;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Ids;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Person;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where staff take a carcase in, look it up, decide again about it, and write what was counted on it. */
public final class CarcasePages {

    /** One carcase as listed. */
    public record Row(UUID id, String title, String standing, String weight, String killed, String cameIn) {}

    private static final Allow STAFF = Allow.of(Role.ASSESSOR, Role.TUTOR);

    private final CarcaseStore carcases;
    private final Curriculum curriculum;
    private final Clock clock;
    private final ZoneId zone;

    /** The content names scales, limits and the usual animal; the zone is the college's. */
    public CarcasePages(CarcaseStore carcases, Curriculum curriculum, Clock clock, ZoneId zone) {
        this.carcases = carcases;
        this.curriculum = curriculum;
        this.clock = clock;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/carcases", this::list, STAFF);
        routes.page("/carcases/new", this::blank, STAFF);
        routes.post("/carcases", this::add, STAFF);
        routes.page("/carcases/{id}", this::show, STAFF);
        routes.post("/carcases/{id}/decision", this::decide, STAFF);
        routes.post("/carcases/{id}/count", this::count, STAFF);
    }

    private void list(Context ctx) {
        ctx.render(
                "carcase/carcases.html",
                Map.of("rows", carcases.all().stream().map(this::row).toList()));
    }

    private Row row(Carcase carcase) {
        return new Row(
                carcase.id(),
                carcase.title(),
                carcase.decision().standing(),
                carcase.weightInWords(),
                Words.day(carcase.ticket().killedOn()),
                Words.day(carcase.recordedAt(), zone));
    }

    private void blank(Context ctx) {
        renderIntake(ctx, Form.blank());
    }

    private void add(Context ctx) {
        Form form = Form.typed(ctx);
        Optional<Intake> intake = new IntakeForm(form, curriculum, nextName(), today()).read();
        intake.ifPresent(read -> onlyOnce(form, read.ticket()));
        if (form.wrong()) {
            renderIntake(ctx.status(422), form);
            return;
        }
        Decision decision = Decision.of(form.value("decision")).orElseThrow();
        Carcase carcase = carcases.add(intake.orElseThrow(), decision, form.value("reason"), by(ctx));
        keepCount(carcase, CountForm.read(form, curriculum), ctx);
        Site.see(ctx, "/carcases/" + carcase.id());
    }

    /** One carcase, one intake; and the number said on the page is the one it gets. */
    private void onlyOnce(Form form, Ticket ticket) {
        carcases.of(ticket)
                .ifPresent(known -> form.add(
                        "killNumber",
                        "Kill number: " + ticket.killNumber() + " of " + Words.day(ticket.killedOn())
                                + " was recorded before, as " + known.name() + ". Read the ticket again."));
        if (!form.value("number").equals(Integer.toString(carcases.nextNumber()))) {
            form.add(
                    "sure",
                    "I read the ticket against the carcase: another one was recorded meanwhile, so this is now "
                            + nextName() + ". Label it so, and send it again.");
        }
    }

    private void show(Context ctx) {
        render(ctx, find(ctx), Form.blank());
    }

    private void decide(Context ctx) {
        Carcase carcase = find(ctx);
        carcase.mustBeOpen();
        Form form = Form.typed(ctx);
        DecisionForm read = DecisionForm.read(form, carcase);
        if (form.wrong()) {
            render(ctx.status(422), carcase, form);
            return;
        }
        carcases.decide(carcase, read.decision().orElseThrow(), read.reason(), by(ctx));
        Site.see(ctx, "/carcases/" + carcase.id());
    }

    private void count(Context ctx) {
        Carcase carcase = find(ctx);
        Form form = Form.typed(ctx);
        CountForm read = CountForm.read(form, curriculum);
        if (!form.wrong() && !read.isThere()) {
            form.add(
                    "thoracic",
                    "Pairs of ribs: nothing was typed, and no loin vertebrae either. Type what you counted.");
        }
        if (form.wrong()) {
            render(ctx.status(422), carcase, form);
            return;
        }
        keepCount(carcase, read, ctx);
        Site.see(ctx, "/carcases/" + carcase.id());
    }

    private void keepCount(Carcase carcase, CountForm read, Context ctx) {
        if (read.isThere()) {
            carcases.count(carcase, read.thoracic(), read.lumbar(), by(ctx));
        }
    }

    private Carcase find(Context ctx) {
        return carcases.find(Ids.of(ctx.pathParam("id")));
    }

    private static Person by(Context ctx) {
        return Access.signedIn(ctx).person();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    private String nextName() {
        return curriculum.breakdown().id() + "\u00a0" + carcases.nextNumber();
    }

    private void render(Context ctx, Carcase carcase, Form form) {
        CarcaseView view = new CarcaseView(carcase, curriculum, Access.signedIn(ctx), zone);
        ctx.render("carcase/carcase.html", Map.of("view", view, "form", form));
    }

    private void renderIntake(Context ctx, Form form) {
        IntakeView view = new IntakeView(curriculum, carcases.nextNumber());
        ctx.render("carcase/intake.html", Map.of("view", view, "form", form));
    }
}
