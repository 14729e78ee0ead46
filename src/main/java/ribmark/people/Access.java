package ribmark.people;

import io.javalin.http.Context;
import java.util.Optional;
import ribmark.basics.NotFound;
import ribmark.web.Role;
import ribmark.web.Visitor;

/** Who is acting in a request. */
public final class Access {

    private static final String ACTING = "acting";

    private final SessionStore sessions;

    /** Sessions say who a cookie belongs to. */
    public Access(SessionStore sessions) {
        this.sessions = sessions;
    }

    /** Whoever acts in this request, looked up once. */
    public Optional<Acting> acting(Context ctx) {
        Optional<Acting> known = ctx.attribute(ACTING);
        if (known == null) {
            known = sessions.acting(Visitor.cookie(ctx));
            ctx.attribute(ACTING, known);
        }
        return known;
    }

    /** The role of whoever acts, for the guard. */
    public Optional<Role> role(Context ctx) {
        return acting(ctx).map(Acting::role);
    }

    /** Whoever is signed in; the guard has let them in already. */
    public static Acting signedIn(Context ctx) {
        Optional<Acting> known = ctx.attribute(ACTING);
        return known == null ? nobody() : known.orElseGet(Access::nobody);
    }

    /** Forgets who acted, after signing in or out. */
    static void changed(Context ctx) {
        ctx.attribute(ACTING, null);
    }

    private static Acting nobody() {
        throw new NotFound();
    }
}
