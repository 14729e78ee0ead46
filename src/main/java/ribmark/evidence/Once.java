package ribmark.evidence;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import ribmark.database.Database;

/**
 * Makes a repeated POST harmless: what a form asked for under its key is done once, and sent again it gets the same answer. The
 * whole deed is one transaction. Status codes follow the IETF draft on the Idempotency-Key header: 400 without a key, 422 for a
 * key that was used for something else.
 */
public final class Once {

    private record Answered(String fingerprint, String location) {}

    /** Undoes what a handler wrote when it did not end in "see there". */
    private static final class NothingKept extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NothingKept() {
            super(null, null, false, false);
        }
    }

    private static final String EVEN_IF_REFUSED = "even-if-refused";

    private final Database database;
    private final EvidenceLog log;
    private final Clock clock;
    private final Function<Context, String> who;

    /** Who is acting comes from outside: the same key from another person is another deed. */
    public Once(Database database, EvidenceLog log, Clock clock, Function<Context, String> who) {
        this.database = database;
        this.log = log;
        this.clock = clock;
        this.who = who;
    }

    /** Something to keep although the form it came with is shown again and nothing of that is kept: a wrong password. */
    public static void evenIfRefused(Context ctx, Runnable deed) {
        ctx.attribute(EVEN_IF_REFUSED, deed);
    }

    /** The handler, done once for each key. */
    public Handler keep(Handler deed) {
        return ctx -> {
            String key = key(ctx);
            try {
                database.write(handle -> answer(handle, ctx, key, deed));
            } catch (NothingKept shownAgain) {
                // the page with its problems is already the answer
                Optional.ofNullable(ctx.<Runnable>attribute(EVEN_IF_REFUSED)).ifPresent(Runnable::run);
            }
        };
    }

    private void answer(Handle handle, Context ctx, String key, Handler deed) {
        String fingerprint = fingerprint(ctx);
        Optional<Answered> before = answered(handle, key);
        if (before.isPresent()) {
            replay(ctx, before.get(), fingerprint);
            return;
        }
        log.under(key, () -> perform(ctx, deed));
        if (ctx.statusCode() != 303) {
            throw new NothingKept();
        }
        handle.execute(
                "insert into answered (form_key, fingerprint, location, answered_at) values (?, ?, ?, ?)",
                key,
                fingerprint,
                ctx.res().getHeader("Location"),
                clock.instant());
    }

    private static void replay(Context ctx, Answered before, String fingerprint) {
        if (!before.fingerprint().equals(fingerprint)) {
            throw no(
                    ctx,
                    422,
                    "It was kept the first time with another answer. Open the page again to see how it stands, then change it there.");
        }
        ctx.status(303).header("Location", before.location());
    }

    private static void perform(Context ctx, Handler deed) {
        try {
            deed.handle(ctx);
        } catch (RuntimeException said) {
            throw said;
        } catch (Exception fault) {
            throw new IllegalStateException(fault);
        }
    }

    private static Optional<Answered> answered(Handle handle, String key) {
        return handle.createQuery("select fingerprint, location from answered where form_key = :key")
                .bind("key", key)
                .map((row, ctx) -> new Answered(row.getString("fingerprint"), row.getString("location")))
                .findOne();
    }

    private String fingerprint(Context ctx) {
        Map<String, Object> sent = new TreeMap<>(ctx.formParamMap());
        sent.remove("token");
        sent.remove("password");
        return Digest.of(who.apply(ctx) + "\n" + ctx.path() + "\n" + sent);
    }

    private static String key(Context ctx) {
        try {
            return UUID.fromString(String.valueOf(ctx.formParam("key"))).toString();
        } catch (IllegalArgumentException noKey) {
            throw no(
                    ctx,
                    400,
                    "The page came without its key, so it could have been kept twice. Nothing was kept. Open it again and send it once more.");
        }
    }

    private static HttpResponseException no(Context ctx, int status, String why) {
        ctx.attribute("why", why);
        return new HttpResponseException(status, why, Map.of());
    }
}
