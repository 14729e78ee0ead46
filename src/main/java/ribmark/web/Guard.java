package ribmark.web;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import ribmark.basics.NotFound;

/** Looks at every request before anything else: is it from our own page, and may this role open it? */
final class Guard {

    /** The form did not come from a page of ours. */
    static final class NotOurPage extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final Function<Context, Optional<Role>> acting;

    Guard(Function<Context, Optional<Role>> acting) {
        this.acting = acting;
    }

    /** Token and Sec-Fetch-Site, on every POST, even to an address that is not there. */
    void lookAtSender(Context ctx) {
        if (ctx.method().name().equals("GET") || ctx.method().name().equals("HEAD")) {
            return;
        }
        String site = ctx.header("Sec-Fetch-Site");
        boolean elsewhere = site != null && !site.equals("same-origin") && !site.equals("none");
        if (elsewhere || !Visitor.sentOurToken(ctx)) {
            throw new NotOurPage();
        }
    }

    /** Lets the right roles in; sends whoever is not signed in to sign in; the rest find nothing. */
    boolean admits(Context ctx, Route route) {
        if (route.allow().anyone()) {
            return true;
        }
        Optional<Role> role = acting.apply(ctx);
        if (role.isEmpty() && !route.allow().roles().isEmpty()) {
            ctx.status(303).header("Location", "/sign-in" + back(ctx));
            return false;
        }
        if (!route.allow().admits(role.orElse(null))) {
            throw new NotFound();
        }
        return true;
    }

    private static String back(Context ctx) {
        boolean page = !ctx.method().name().equals("POST") && !ctx.path().equals("/");
        String asked = ctx.queryString() == null ? ctx.path() : ctx.path() + "?" + ctx.queryString();
        return page ? "?back=" + URLEncoder.encode(asked, StandardCharsets.UTF_8) : "";
    }
}
