package ribmark.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.Gzip;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Puts routes, templates, guard and error pages together into one server on the loopback address. */
public final class Site {

    /** Longest form taken, in bytes. */
    private static final long LONGEST_FORM = 256_000;

    private static final String DRAWING = "image/svg+xml";

    private final Routes routes;
    private final Function<Context, Frame> frame;
    private final Guard guard;
    private final UnaryOperator<Handler> once;
    private final StyleSheet styles = new StyleSheet();

    /** The frame's data, the acting role, and how a POST is kept once come from outside: this part knows nobody. */
    public Site(
            Routes routes,
            Function<Context, Frame> frame,
            Function<Context, Optional<Role>> acting,
            UnaryOperator<Handler> once) {
        this.routes = routes;
        this.frame = frame;
        this.guard = new Guard(acting);
        this.once = once;
        addFiles();
    }

    /** Sends the reader on to another page. */
    public static void see(Context ctx, String address) {
        ctx.status(303).header("Location", address);
    }

    /** A server that is not started yet. */
    public Javalin server() {
        return Javalin.create(this::configure);
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.jetty.modifyServer(server -> server.setStopTimeout(5000));
        config.jetty.modifyServer(server -> server.setErrorHandler(new BareErrors()));
        config.http.maxRequestSize = LONGEST_FORM;
        config.http.compressionStrategy = compression();
        config.http.defaultContentType = "text/html; charset=utf-8";
        config.fileRenderer(new Templates(ctx -> withStyles(frame.apply(ctx))));
        config.routes.before(Headers::put);
        config.routes.before(guard::lookAtSender);
        Errors.addTo(config.routes);
        routes.list().forEach(route -> add(config.routes, route));
    }

    /** Drawings are text and are sent compressed, other pictures are not. */
    private static CompressionStrategy compression() {
        CompressionStrategy gzip = new CompressionStrategy(null, new Gzip());
        gzip.setAllowedMimeTypes(List.of(DRAWING, DRAWING + ";charset=utf-8"));
        return gzip;
    }

    private Frame withStyles(Frame bare) {
        return new Frame(
                bare.person(),
                bare.role(),
                bare.manyRoles(),
                bare.places(),
                bare.token(),
                styles.address(),
                bare.demo());
    }

    private void add(RoutesConfig config, Route route) {
        Handler work = route.keyed() ? once.apply(route.handler()) : route.handler();
        Handler guarded = ctx -> {
            if (guard.admits(ctx, route)) {
                work.handle(ctx);
            }
        };
        if (route.method().equals("POST")) {
            config.post(route.path(), guarded);
        } else {
            config.get(route.path(), guarded);
            config.head(route.path(), guarded);
        }
    }

    private void addFiles() {
        routes.file(
                "/ribmark.css",
                ctx -> keepForAYear(ctx, "text/css; charset=utf-8").result(styles.css()),
                Allow.everybody());
        routes.file(
                "/icon.svg",
                ctx -> keepForAYear(ctx, DRAWING).result(StyleSheet.bytes("static/icon.svg")),
                Allow.everybody());
        routes.file(
                "/favicon.ico",
                ctx -> keepForAYear(ctx, DRAWING).result(StyleSheet.bytes("static/icon.svg")),
                Allow.everybody());
        routes.file(
                "/scripts/keypad.js",
                ctx -> keepForAYear(ctx, "text/javascript; charset=utf-8")
                        .result(StyleSheet.text("static/scripts/keypad.js")),
                Allow.everybody());
    }

    private static Context keepForAYear(Context ctx, String type) {
        return ctx.contentType(type).header("Cache-Control", "public, max-age=31536000, immutable");
    }
}
