package ribmark.blocksheet;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.Refused;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.AskedAgain;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where the assessor reads a sheet through, says in words what was seen, and puts their name to it. */
public final class ClosingPages {

    private static final Allow ALLOW = Allow.of(Role.ASSESSOR);

    private final BlockSheetStore sheets;
    private final Supplier<Curriculum> curriculum;
    private final AskedAgain password;
    private final Clock clock;
    private final ZoneId zone;

    /** Closing asks for the password again; days are days in the college's own zone. */
    public ClosingPages(
            BlockSheetStore sheets, Supplier<Curriculum> curriculum, AskedAgain password, Clock clock, ZoneId zone) {
        this.sheets = sheets;
        this.curriculum = curriculum;
        this.password = password;
        this.clock = clock;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/block-sheets/{id}/closing", this::show, ALLOW);
        routes.post("/block-sheets/{id}/closing", this::close, ALLOW);
    }

    private void show(Context ctx) {
        Walk walk = walk(ctx);
        if (!walk.sheet().isOpen()
                || !walk.sheet().isKeptBy(Access.signedIn(ctx).id())) {
            Site.see(ctx, address(walk.sheet()));
            return;
        }
        render(ctx, walk, ClosingForm.found(walk, sheets.draft(walk.sheet().id())));
    }

    private void close(Context ctx) {
        Acting acting = Access.signedIn(ctx);
        Walk walk = walk(ctx);
        walk.sheet().mayBeWrittenBy(acting);
        Form form = Form.typed(ctx);
        ClosingForm closing = new ClosingForm(walk, form);
        if (form.value("deed").equals("leave")) {
            leave(ctx, walk, form, closing);
            return;
        }
        if (walk.sheet().marks().isEmpty()) {
            throw new Refused("Nothing is marked on this sheet yet. Mark at least one step before you close it.");
        }
        closing.check(LocalDate.ofInstant(clock.instant(), zone));
        password.check(ctx, form, acting);
        if (form.wrong()) {
            render(ctx.status(422), walk, form);
            return;
        }
        keepWords(closing, walk.sheet());
        sheets.close(walk.sheet().id(), closing.day().orElseThrow(), closing.said());
        Site.see(ctx, "/feedback/" + walk.sheet().id());
    }

    /** Nothing typed is lost when the sheet stays open. */
    private void leave(Context ctx, Walk walk, Form form, ClosingForm closing) {
        closing.checkLengths();
        if (form.wrong()) {
            render(ctx.status(422), walk, form);
            return;
        }
        keepWords(closing, walk.sheet());
        if (!sheets.draft(walk.sheet().id()).equals(Optional.of(closing.said()))) {
            sheets.draft(walk.sheet().id(), closing.said());
        }
        Site.see(ctx, address(walk.sheet()));
    }

    private void keepWords(ClosingForm closing, BlockSheet sheet) {
        closing.changedWords()
                .forEach((mark, words) ->
                        sheets.mark(sheet.id(), mark.place(), mark.mark(), mark.faultId(), words, mark.observedAt()));
    }

    private Walk walk(Context ctx) {
        BlockSheet sheet = sheets.find(Ids.of(ctx.pathParam("id")), Access.signedIn(ctx));
        return Walk.of(sheet, curriculum.get());
    }

    private static String address(BlockSheet sheet) {
        return "/block-sheets/" + sheet.id();
    }

    private void render(Context ctx, Walk walk, Form form) {
        BlockSheet sheet = walk.sheet();
        ClosingForm closing = new ClosingForm(walk, form);
        Map<String, Object> model = new HashMap<>();
        model.put("form", form);
        model.put("sheet", sheet);
        model.put("carcase", sheet.carcase().name());
        model.put("pairs", TicketStrip.of(sheet, Words.day(sheet.openedAt(), zone)));
        model.put("view", SheetView.marked(walk, step -> StepView.address(sheet, step.id())));
        model.put("marked", !sheet.marks().isEmpty());
        model.put("beside", closing.beside());
        model.put("seen", closing.seen());
        model.put("seenHint", "One sentence " + sheet.apprentice().name() + " can use.");
        model.put("steps", steps(walk));
        model.put("when", when(sheet));
        ctx.render("blocksheet/closing.html", model);
    }

    private static String steps(Walk walk) {
        int seen = (int) walk.steps().stream()
                .filter(step -> SheetView.isSeen(walk.sheet(), step))
                .count();
        return seen == 1 ? "this one step" : "these " + Words.count(seen) + " steps";
    }

    private String when(BlockSheet sheet) {
        String opened = Words.day(sheet.openedAt(), zone);
        return opened.equals(Words.day(clock.instant(), zone)) ? "today" : "since " + opened;
    }
}
