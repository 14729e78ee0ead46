package ribmark.people;

import io.javalin.http.Context;
import java.util.Optional;
import ribmark.evidence.Once;
import ribmark.web.Form;

/** The password asked once more where a name is put to something; who guesses at it waits, as at signing in. */
public final class AskedAgain {

    private static final String FIELD = "password";

    private final Passwords passwords;
    private final Guesses guesses;

    /** Wrong ones are counted with those of signing in. */
    public AskedAgain(Passwords passwords, Guesses guesses) {
        this.passwords = passwords;
        this.guesses = guesses;
    }

    /** Adds a problem unless it is theirs; the password is read as sent and never kept with what was typed. */
    public void check(Context ctx, Form form, Acting acting) {
        String typed = Optional.ofNullable(ctx.formParam(FIELD)).orElse("");
        String name = acting.name();
        if (typed.isEmpty()) {
            form.add(FIELD, "Your password: nothing was typed. Type the one you sign in with.");
        } else if (guesses.tooMany(name)) {
            form.add(
                    FIELD,
                    "Your password: too many were tried for your name. Wait a quarter of an hour, then type it again.");
        } else if (!passwords.isTheirs(acting.id(), typed)) {
            form.add(FIELD, "Your password: it is not the one you sign in with. Type it again.");
            Once.evenIfRefused(ctx, () -> guesses.wrong(name));
        }
    }
}
