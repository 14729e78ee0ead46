package ribmark.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A page as opened, checked on opening; its methods are what a reader can see and do. */
public final class Page {

    private final Browser browser;
    private final String path;
    private final HttpResponse<String> answer;
    private final Document document;
    private final Map<String, List<String>> filled = new LinkedHashMap<>();

    Page(Browser browser, String path, HttpResponse<String> answer) {
        this.browser = browser;
        this.path = path;
        this.answer = answer;
        this.document = Jsoup.parse(answer.body(), browser.address() + path);
        if (answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
            PageRules.check(document, path);
        }
    }

    /** The status the server gave. */
    public int status() {
        return answer.statusCode();
    }

    /** Where the browser ended up. */
    public String path() {
        return path;
    }

    /** The one main heading. */
    public String heading() {
        return document.select("h1").text();
    }

    /** Everything a reader sees in the main part. */
    public String text() {
        return document.select("main").text().replace('\u00a0', ' ');
    }

    /** The body as sent. */
    public String body() {
        return answer.body();
    }

    /** The sentences on the slip of corrections. */
    public List<String> problems() {
        return document.select("#slip a").eachText().stream()
                .map(t -> t.replace('\u00a0', ' '))
                .toList();
    }

    /** Elements by a selector, for what has no words. */
    public List<Element> all(String selector) {
        return document.select(selector);
    }

    /** The addresses of all links on the page. */
    public List<String> links() {
        return document.select("a[href]").eachAttr("href");
    }

    /** Follows the first link that reads so, or begins so. */
    public Page follow(String words) {
        Element link = document.select("a[href]").stream()
                .filter(a -> says(a, words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No link says “" + words + "” on " + path + ": "
                        + document.select("a[href]").eachText()));
        return browser.open(link.attr("href"));
    }

    /** Types into a field. */
    public Page fill(String field, String value) {
        assertThat(document.select("[name=" + field + "]"))
                .as("a field named " + field + " on " + path)
                .isNotEmpty();
        filled.put(field, List.of(value));
        return this;
    }

    /** Takes choices, radio or several. */
    public Page choose(String field, String... values) {
        for (String value : values) {
            assertThat(document.select("[name=" + field + "][value=" + value + "], [name=" + field + "] option[value="
                            + value + "]"))
                    .as("a choice " + value + " of " + field + " on " + path)
                    .isNotEmpty();
        }
        filled.put(field, List.of(values));
        return this;
    }

    /** Presses the button that reads so, or begins so, and follows where it leads. */
    public Page press(String words) {
        Element button = button(words);
        return browser.post(target(button), fields(button));
    }

    /** Presses the button and stays, to see what the server says. */
    public HttpResponse<String> pressAndStay(String words) {
        Element button = button(words);
        return browser.rawPost(target(button), fields(button));
    }

    /** What a button's form would send. */
    public List<Map.Entry<String, String>> fieldsOf(String words) {
        return fields(button(words));
    }

    /** Whether there is such a button. */
    public boolean offers(String words) {
        return document.select("button").stream().anyMatch(b -> says(b, words));
    }

    private Element button(String words) {
        return document.select("button").stream()
                .filter(b -> says(b, words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No button says “" + words + "” on " + path + ": "
                        + document.select("button").eachText()));
    }

    private static boolean says(Element element, String words) {
        String text = element.text().replace('\u00a0', ' ').replace('’', '\'');
        return text.startsWith(words.replace('’', '\''));
    }

    private String target(Element button) {
        String own = button.attr("formaction");
        return own.isEmpty() ? button.closest("form").attr("action") : own;
    }

    private List<Map.Entry<String, String>> fields(Element button) {
        Element form = button.closest("form");
        List<Map.Entry<String, String>> sent = new ArrayList<>();
        for (Element field : form.select("input[name], textarea[name], select[name]")) {
            String name = field.attr("name");
            if (!filled.containsKey(name) && counts(field)) {
                sent.add(Map.entry(name, value(field)));
            }
        }
        filled.forEach((name, values) -> {
            if (!form.select("[name=" + name + "]").isEmpty()) {
                values.forEach(v -> sent.add(Map.entry(name, v)));
            }
        });
        if (!button.attr("name").isEmpty()) {
            sent.add(Map.entry(button.attr("name"), button.attr("value")));
        }
        return sent;
    }

    private static boolean counts(Element field) {
        boolean box = field.attr("type").equals("radio") || field.attr("type").equals("checkbox");
        return !box || field.hasAttr("checked");
    }

    private static String value(Element field) {
        if (field.tagName().equals("textarea")) {
            return field.wholeText();
        }
        if (field.tagName().equals("select")) {
            Element chosen = field.selectFirst("option[selected]");
            Element first = field.selectFirst("option");
            return chosen != null ? chosen.attr("value") : first == null ? "" : first.attr("value");
        }
        return field.attr("value");
    }
}
