package ribmark.people;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.web.Visitor;

/** Signing in and out, and choosing the role to act in. */
public final class SignInPages {

    private static final String SIGN_IN = "people/sign-in.html";

    private final PeopleStore people;
    private final Passwords passwords;
    private final SessionStore sessions;
    private final Access access;
    private final Guesses guesses;

    /** What is needed to know somebody again. */
    public SignInPages(PeopleStore people, Passwords passwords, SessionStore sessions, Access access, Guesses guesses) {
        this.people = people;
        this.passwords = passwords;
        this.sessions = sessions;
        this.access = access;
        this.guesses = guesses;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/sign-in", this::show, Allow.everybody());
        routes.postWithoutKey("/sign-in", this::signIn, Allow.everybody());
        routes.postWithoutKey("/sign-out", this::signOut, Allow.everybody());
        routes.page("/role", this::showRoles, Allow.signedIn());
        routes.postWithoutKey("/role", this::choose, Allow.signedIn());
    }

    private void show(Context ctx) {
        ctx.render(SIGN_IN, Map.of("form", Form.blank().with("back", back(ctx.queryParam("back")))));
    }

    private void signIn(Context ctx) {
        Form form = Form.typed(ctx);
        String typed = Optional.ofNullable(ctx.formParam("password")).orElse("");
        String name = form.words("name", "Name", "Type the name your account goes by.");
        if (typed.isEmpty()) {
            form.add("password", "Password: nothing was typed. Type the password you chose.");
        }
        if (!form.wrong() && guesses.tooMany(name)) {
            tooMany(ctx, form);
            return;
        }
        Optional<Person> person = form.wrong() ? Optional.empty() : known(name, typed);
        if (person.isEmpty()) {
            sayNo(ctx, form);
            return;
        }
        guesses.right(name);
        enter(ctx, person.get(), form.value("back"));
    }

    private Optional<Person> known(String name, String typed) {
        Optional<Person> person =
                people.named(name).filter(p -> !p.disabled() && !p.roles().isEmpty());
        if (person.isEmpty()) {
            passwords.checkNobody(typed);
        }
        Optional<Person> known = person.filter(p -> passwords.isTheirs(p.id(), typed));
        if (known.isEmpty()) {
            guesses.wrong(name);
        }
        return known;
    }

    private static void sayNo(Context ctx, Form form) {
        if (!form.wrong()) {
            form.add(
                    "password",
                    "Name and password do not belong together. Type both again, or ask your administrator for a new link.");
        }
        ctx.status(422).render(SIGN_IN, Map.of("form", form));
    }

    private static void tooMany(Context ctx, Form form) {
        form.add(
                "password",
                "Too many passwords were tried for this name. Wait a quarter of an hour, or ask your administrator for a new link.");
        ctx.status(429).render(SIGN_IN, Map.of("form", form));
    }

    private void enter(Context ctx, Person person, String back) {
        sessions.end(Visitor.cookie(ctx));
        sessions.open(Visitor.fresh(ctx), person.id(), person.rolesInOrder().get(0));
        Access.changed(ctx);
        Site.see(ctx, person.roles().size() > 1 ? "/role" : back(back));
    }

    private void signOut(Context ctx) {
        sessions.end(Visitor.cookie(ctx));
        Visitor.fresh(ctx);
        Access.changed(ctx);
        Site.see(ctx, "/sign-in");
    }

    private void showRoles(Context ctx) {
        Acting acting = Access.signedIn(ctx);
        ctx.render(
                "people/role.html",
                Map.of("acting", acting, "roles", acting.person().rolesInOrder()));
    }

    private void choose(Context ctx) {
        Acting acting = Access.signedIn(ctx);
        Role.of(Form.typed(ctx).value("role"))
                .filter(acting.person()::is)
                .ifPresent(role -> sessions.actAs(Visitor.cookie(ctx), role));
        Access.changed(ctx);
        Site.see(ctx, "/");
    }

    /** Only an address of ours is gone back to. */
    private static String back(String asked) {
        boolean ours = asked != null && asked.matches("/[A-Za-z0-9][A-Za-z0-9/_-]{0,200}([?][A-Za-z0-9=&_.-]{0,200})?");
        return ours ? asked : "/";
    }
}
