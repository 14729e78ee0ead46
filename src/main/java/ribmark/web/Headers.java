package ribmark.web;

import io.javalin.http.Context;

/** What every answer carries, errors and files too. */
final class Headers {

    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private Headers() {}

    static void put(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("X-Frame-Options", "DENY");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        ctx.header("Cross-Origin-Embedder-Policy", "require-corp");
        ctx.header("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
        ctx.header("Cache-Control", "no-store");
    }
}
