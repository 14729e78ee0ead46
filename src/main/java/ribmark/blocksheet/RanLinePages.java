package ribmark.blocksheet;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.NotFound;
import ribmark.basics.Side;
import ribmark.curriculum.Step;
import ribmark.moved.Way;
import ribmark.people.Access;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where the keeper of a sheet records, with one tap, where a line really ran, and takes it back. */
public final class RanLinePages {

    /** One way to tap: what is sent, and on which side. */
    public record Tap(String way, String side) {}

    private static final Allow ALLOW = Allow.of(Role.ASSESSOR);
    private static final String WAY = "way";

    private final BlockPages pages;
    private final RanLines lines;

    /** The pages stand beside those of the marks. */
    public RanLinePages(BlockPages pages, RanLines lines) {
        this.pages = pages;
        this.lines = lines;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.after("/block-sheets/{id}/steps/{step}/ran", this::show, ALLOW);
        routes.post("/block-sheets/{id}/steps/{step}/ran", this::keep, ALLOW);
        routes.post("/block-sheets/{id}/steps/{step}/ran/undo", this::undo, ALLOW);
    }

    private void show(Context ctx) {
        Walk walk = writable(ctx);
        render(ctx, walk, step(ctx, walk), Form.asked(ctx));
    }

    private void keep(Context ctx) {
        Form form = Form.typed(ctx);
        Walk walk = writable(ctx);
        Step step = step(ctx, walk);
        Optional<Way> way = ways(walk, step).stream()
                .filter(each -> String.join(" ", each.words()).equals(form.value(WAY)))
                .findFirst();
        if (way.isEmpty()) {
            form.add(WAY, "Where it ran: nothing was tapped. Tap one of these.");
            render(ctx.status(422), walk, step, form);
            return;
        }
        Way ran = way.get();
        lines.store()
                .add(
                        walk.sheet().id(),
                        new RanLine(
                                step.id(),
                                ran.line().id(),
                                ran.run().towards(),
                                ran.run().by(),
                                ran.side().word()));
        Site.see(ctx, back(walk, step, form));
    }

    private void undo(Context ctx) {
        Walk walk = writable(ctx);
        Step step = step(ctx, walk);
        if (held(walk, step).isPresent()) {
            lines.store().undo(walk.sheet().id(), step.id());
        }
        Site.see(ctx, back(walk, step, Form.typed(ctx)));
    }

    /** Whoever came from the reasons for a mark goes back to them. */
    private static String back(Walk walk, Step step, Form form) {
        String side = Side.of(form.value("side"))
                .filter(walk.sheet().sidesOf(step.id())::contains)
                .map(Side::word)
                .orElse("");
        String address = StepView.address(walk.sheet(), step.id());
        boolean reasons = List.of("not-yet", "stopped").contains(form.value("mark"));
        String asked = side.isEmpty() ? "" : "side=" + side;
        boolean fromSheet = form.value("mark").isEmpty() && side.isEmpty();
        if (fromSheet) {
            return "/block-sheets/" + walk.sheet().id();
        }
        return reasons
                ? address + "/reasons?mark=" + form.value("mark") + (asked.isEmpty() ? "" : "&" + asked)
                : address + (asked.isEmpty() || side.equals(Side.ONCE.word()) ? "" : "?" + asked);
    }

    private Walk writable(Context ctx) {
        Walk walk = pages.walk(ctx);
        walk.sheet().mayBeWrittenBy(Access.signedIn(ctx));
        return walk;
    }

    private static Step step(Context ctx, Walk walk) {
        Step step = walk.step(ctx.pathParam("step"));
        if (walk.sheet().sidesOf(step.id()).isEmpty() || ways(walk, step).isEmpty()) {
            throw new NotFound();
        }
        return step;
    }

    private static List<Way> ways(Walk walk, Step step) {
        return Way.at(walk.animal().curriculum().breakdown(), step);
    }

    private Optional<RanLines.View> held(Walk walk, Step step) {
        return lines.of(walk.sheet()).stream()
                .filter(view -> view.number() == step.number())
                .findFirst();
    }

    private void render(Context ctx, Walk walk, Step step, Form form) {
        Map<String, List<Tap>> taps = new LinkedHashMap<>();
        ways(walk, step)
                .forEach(way -> taps.computeIfAbsent(
                                way.line().name() + ", " + way.run().howFar() + " towards the "
                                        + way.run().towards(),
                                run -> new ArrayList<>())
                        .add(new Tap(String.join(" ", way.words()), side(way))));
        Map<String, Object> model = new HashMap<>();
        model.put("pairs", TicketStrip.of(walk));
        model.put("title", "Where did the line run?");
        model.put("step", step);
        model.put("at", step.number() + " of " + walk.breakdown().steps().size());
        model.put("address", StepView.address(walk.sheet(), step.id()));
        String back = back(walk, step, form);
        model.put("back", back);
        model.put("backSays", back.contains("/steps/") ? "Back to step " + step.number() : "Back to all steps");
        model.put("taps", taps);
        model.put("held", held(walk, step).orElse(null));
        model.put("form", form);
        ctx.render("blocksheet/ran.html", model);
    }

    private static String side(Way way) {
        return way.side() == Side.BOTH ? "both sides" : way.side().word() + " alone";
    }
}
