package ribmark.testing;

import java.io.IOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The checked browser without scripts: opens pages as a person does, and checks each one on the way in. */
public final class Browser {

    private final String address;
    private final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(cookies)
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();

    Browser(String address) {
        this.address = address;
    }

    /** A browser pointed at a program that runs elsewhere on this machine. */
    public static Browser at(String address) {
        return new Browser(address);
    }

    /** Opens an address, following where it leads. */
    public Page open(String path) {
        return follow(get(path), path);
    }

    /** What the server says to a GET, as it stands. */
    public HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(address + path)).GET());
    }

    /** How many bytes a page takes on its way, compressed, head and body. */
    public int bytesCompressed(String path) {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address + path))
                .header("Accept-Encoding", "gzip")
                .build();
        try {
            HttpResponse<byte[]> answer = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
            int head = answer.headers().map().entrySet().stream()
                    .mapToInt(h ->
                            h.getKey().length() + String.join("", h.getValue()).length() + 4)
                    .sum();
            return head + answer.body().length;
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(broken);
        }
    }

    /** What the server says to any request, as it stands. */
    public HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(broken);
        }
    }

    /** Sends a form and follows where it leads. */
    public Page post(String path, List<Map.Entry<String, String>> fields) {
        return follow(rawPost(path, fields), path);
    }

    /** Sends a form and stays where it is. */
    public HttpResponse<String> rawPost(String path, List<Map.Entry<String, String>> fields) {
        String body = fields.stream()
                .map(f -> encoded(f.getKey()) + "=" + encoded(f.getValue()))
                .collect(Collectors.joining("&"));
        return send(HttpRequest.newBuilder(URI.create(address + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Sec-Fetch-Site", "same-origin")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** Signs in by the sign-in page; somebody with several roles keeps the first. */
    public Page signIn(String name, String password) {
        return open("/sign-in").fill("name", name).fill("password", password).press("Sign in");
    }

    /** The address of the program. */
    public String address() {
        return address;
    }

    /** The value of the cookie now. */
    public String cookie() {
        return cookies.getCookieStore().getCookies().get(0).getValue();
    }

    private Page follow(HttpResponse<String> answer, String path) {
        HttpResponse<String> last = answer;
        String at = path;
        for (int hops = 0; last.statusCode() == 303 && hops < 6; hops++) {
            at = last.headers().firstValue("Location").orElseThrow();
            last = get(at);
        }
        return new Page(this, at, last);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
