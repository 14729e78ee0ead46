package ribmark.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;

/** How a "no" is said: one sentence for the reader, never anything of the inside. */
final class Errors {

    private static final Logger LOG = LoggerFactory.getLogger(Errors.class);

    private Errors() {}

    static void addTo(RoutesConfig routes) {
        routes.exception(NotFound.class, (no, ctx) -> nothingHere(ctx));
        routes.exception(Refused.class, (no, ctx) -> say(ctx, 409, "That cannot be done", no.getMessage()));
        routes.exception(
                Guard.NotOurPage.class,
                (no, ctx) -> say(
                        ctx,
                        403,
                        "This page has grown old",
                        "It was opened before you signed in or out, or came from elsewhere. Nothing was kept. Open it again and send it once more."));
        routes.exception(HttpResponseException.class, (no, ctx) -> ofStatus(ctx, no.getStatus()));
        routes.exception(Exception.class, (fault, ctx) -> fault(ctx, fault));
        routes.error(404, Errors::bareNothing);
    }

    private static void ofStatus(Context ctx, int status) {
        if (status == 404 || status == 405) {
            nothingHere(ctx);
        } else if (status == 413) {
            say(ctx, 413, "That is too much at once", "Nothing was kept. Shorten what you typed and send it again.");
        } else if (ctx.attribute("why") != null) {
            say(ctx, status, status == 422 ? "This page was sent before" : "Nothing was kept", ctx.attribute("why"));
        } else {
            say(ctx, status, "That cannot be done", "Nothing was kept. Go back and try it another way.");
        }
    }

    private static void bareNothing(Context ctx) {
        if (ctx.attribute("said") == null) {
            nothingHere(ctx);
        }
    }

    private static void nothingHere(Context ctx) {
        say(ctx, 404, "There is nothing here", "The address is not known, or what it shows is not yours to see.");
    }

    private static void fault(Context ctx, Exception fault) {
        String number = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("fault {} at {} {}", number, ctx.method(), ctx.path(), fault);
        say(
                ctx,
                500,
                "The program is at fault",
                "It was not you. Nothing was kept. Tell the administrator number " + number + ".");
    }

    static void say(Context ctx, int status, String heading, String sentence) {
        ctx.attribute("said", true);
        ctx.status(status);
        try {
            ctx.render("message.html", new HashMap<>(Map.of("title", heading, "sentence", sentence)));
        } catch (RuntimeException noPage) {
            LOG.error("message page", noPage);
            ctx.contentType("text/plain; charset=utf-8").result(heading + ". " + sentence);
        }
    }
}
