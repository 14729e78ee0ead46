package ribmark.web;

import io.javalin.http.Context;
import java.util.Map;

/** What every answer carries, errors and files too. */
final class Headers {

    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** Their names and what they say. */
    static final Map<String, String> ALL = Map.of(
            "Content-Security-Policy", POLICY,
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "same-origin",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin",
            "Cross-Origin-Embedder-Policy", "require-corp",
            "Permissions-Policy", "camera=(), microphone=(), geolocation=()",
            "Cache-Control", "no-store");

    private Headers() {}

    static void put(Context ctx) {
        ALL.forEach(ctx::header);
    }
}
