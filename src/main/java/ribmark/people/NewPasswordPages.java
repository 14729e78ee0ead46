package ribmark.people;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import ribmark.basics.NotFound;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where a one-time link leads: somebody chooses a password, or the first administrator begins. */
public final class NewPasswordPages {

    private static final String PAGE = "people/new-password.html";

    private final PeopleStore people;
    private final Passwords passwords;
    private final SessionStore sessions;
    private final OneTimeLinks links;

    /** A chosen password ends every session that was open. */
    public NewPasswordPages(PeopleStore people, Passwords passwords, SessionStore sessions, OneTimeLinks links) {
        this.people = people;
        this.passwords = passwords;
        this.sessions = sessions;
        this.links = links;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.after("/new-password/{link}", this::show, Allow.everybody());
        routes.post("/new-password/{link}", this::save, Allow.everybody());
    }

    private void show(Context ctx) {
        render(ctx, links.personOf(ctx.pathParam("link")), Form.blank());
    }

    private void save(Context ctx) {
        Optional<UUID> person = links.personOf(ctx.pathParam("link"));
        if (person.isEmpty() && !people.isEmpty()) {
            throw new NotFound();
        }
        Form form = Form.typed(ctx);
        String name = person.isEmpty() ? form.words("name", "Your name", "Type the name you will sign in with.") : "";
        String typed = Optional.ofNullable(ctx.formParam("password")).orElse("");
        Passwords.checkNew(form, "password", typed);
        if (form.wrong()) {
            render(ctx.status(422), person, form);
            return;
        }
        UUID id = person.orElseGet(() ->
                people.add(name, Set.of(Role.ADMINISTRATOR), Optional.empty()).id());
        passwords.set(id, typed);
        sessions.endAll(id);
        links.used(ctx.pathParam("link"));
        Site.see(ctx, "/sign-in");
    }

    private void render(Context ctx, Optional<UUID> person, Form form) {
        String name = person.map(people::find).map(Person::name).orElse("");
        ctx.render(PAGE, Map.of("form", form, "name", name, "link", ctx.pathParam("link")));
    }
}
