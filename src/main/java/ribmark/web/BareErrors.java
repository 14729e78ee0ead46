package ribmark.web;

import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** What is answered to a request so broken that it never became one of ours: the same headers, one plain sentence. */
final class BareErrors extends ErrorHandler {

    private static final String PAGE = """
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8"><title>That cannot be read · Ribmark</title>
            <meta name="viewport" content="width=device-width"><link rel="icon" href="/icon.svg">
            <link rel="stylesheet" href="/ribmark.css"></head>
            <body><main id="content"><h1>That cannot be read</h1>
            <p>The address or what came with it is broken or too long. <a href="/">Begin at the first page</a>.</p>
            </main></body></html>
            """;

    @Override
    protected void generateResponse(
            Request request, Response response, int code, String message, Throwable cause, Callback callback) {
        Headers.ALL.forEach(response.getHeaders()::put);
        response.getHeaders().put("Content-Type", "text/html; charset=utf-8");
        response.write(true, StandardCharsets.UTF_8.encode(PAGE), callback);
    }
}
