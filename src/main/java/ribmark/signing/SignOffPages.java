package ribmark.signing;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Ids;
import ribmark.blocksheet.Mark;
import ribmark.blocksheet.WordedUnder;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.Apprentices;
import ribmark.people.AskedAgain;
import ribmark.people.Person;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where the evidence for a step hangs, where an assessor puts their name to it, and where a name is taken back. */
public final class SignOffPages {

    private final Standings standings;
    private final SignOffStore signOffs;
    private final Apprentices apprentices;
    private final AskedAgain password;

    /** Passwords, because whoever signs types theirs again. */
    public SignOffPages(Standings standings, SignOffStore signOffs, Apprentices apprentices, AskedAgain password) {
        this.standings = standings;
        this.signOffs = signOffs;
        this.apprentices = apprentices;
        this.password = password;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/to-sign", this::list, Allow.of(Role.ASSESSOR));
        routes.page(
                "/apprentices/{id}/steps/{step}",
                this::show,
                Allow.of(Role.ASSESSOR, Role.TUTOR).own(Role.APPRENTICE));
        routes.post("/apprentices/{id}/steps/{step}/sign-off", this::sign, Allow.of(Role.ASSESSOR));
        routes.post("/sign-offs/{id}/withdrawal", this::withdraw, Allow.of(Role.ASSESSOR, Role.TUTOR));
    }

    private void list(Context ctx) {
        Acting reader = Access.signedIn(ctx);
        ctx.render(
                "signing/to-sign.html",
                Map.of("page", ToSignView.of(standings.records(apprentices.all(reader)), reader)));
    }

    private void show(Context ctx) {
        render(ctx, record(ctx), Form.blank());
    }

    private void sign(Context ctx) {
        Acting assessor = Access.signedIn(ctx);
        StepRecord record = record(ctx);
        Signing.mustBeAllowed(record, assessor, standings.zone());
        Form form = Form.typed(ctx);
        String convinced = form.words("convinced", "What convinced you", "Write what you saw, in a sentence.");
        password.check(ctx, form, assessor);
        if (form.wrong()) {
            render(ctx.status(422), record, form);
            return;
        }
        signOffs.sign(record.apprentice().id(), record.step().id(), assessor.person(), counting(record), convinced);
        Site.see(ctx, record.address());
    }

    private static List<UUID> counting(StepRecord record) {
        return record.derived().tally().counting().stream()
                .map(sheet -> UUID.fromString(sheet.sheet()))
                .toList();
    }

    private void withdraw(Context ctx) {
        Acting reader = Access.signedIn(ctx);
        SignOff signOff = signOffs.find(Ids.of(ctx.pathParam("id")));
        Person apprentice = apprentices.find(signOff.apprenticeId(), reader);
        signOff.mustStand();
        StepRecord record = standings.record(apprentice).step(signOff.stepId());
        Form form = Form.typed(ctx);
        String reason = form.words("reason", "Why it is taken back", "Write what was wrong with it, in a sentence.");
        if (form.wrong()) {
            render(ctx.status(422), record, form);
            return;
        }
        signOffs.withdraw(signOff, reader.person(), reason);
        Site.see(ctx, record.address());
    }

    private StepRecord record(Context ctx) {
        Person apprentice = apprentices.find(Ids.of(ctx.pathParam("id")), Access.signedIn(ctx));
        return standings.record(apprentice).step(ctx.pathParam("step"));
    }

    private void render(Context ctx, StepRecord record, Form form) {
        EvidenceView page = EvidenceView.of(record, standings, Access.signedIn(ctx));
        List<Mark> marks = record.seen().stream()
                .flatMap(sheet -> sheet.marksOf(record.step().id()).stream())
                .toList();
        String worded = WordedUnder.say(marks, standings.curriculum().version());
        ctx.render("signing/evidence.html", Map.of("page", page, "form", form, "worded", worded));
    }
}
