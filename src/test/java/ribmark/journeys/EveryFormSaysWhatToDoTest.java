package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ribmark.testing.Browser;
import ribmark.testing.Crawl;
import ribmark.testing.Page;
import ribmark.testing.TestDemo;
import ribmark.web.Role;

/** U-26: every form of every page, sent with nothing, with nonsense and with far too much, says what to do or does its work. */
class EveryFormSaysWhatToDoTest {

    private static final String NONSENSE = "’; drop table evidence; -- <script>alert(1)</script> ${7*7} =1+1 \u202e";

    private final TestDemo demo = TestDemo.fresh();

    @ParameterizedTest
    @EnumSource(Role.class)
    void every_form_answers_in_plain_words(Role role) {
        Browser browser = demo.as(demo.first(role));
        Map<String, Page> pages = new Crawl(browser, demo.app.routes(), 2, 6).from("/");
        Set<String> sent = new HashSet<>();
        pages.forEach((path, page) -> page.all("main form").stream()
                .filter(form -> sent.add(form.attr("action").replaceAll("[0-9a-f-]{36}", "{id}")))
                .forEach(form -> {
                    for (String typed : List.of("", NONSENSE, "9".repeat(3000))) {
                        check(path, form, sent(browser, form, typed));
                    }
                }));
        assertThat(sent).isNotEmpty();
        assertThat(demo.app.verify().holds()).isTrue();
    }

    /** What is asked in an address can be no longer than the server reads of one. */
    private static HttpResponse<String> sent(Browser browser, Element form, String typed) {
        if (form.attr("method").equals("post")) {
            return browser.rawPost(form.attr("action"), filled(form, typed));
        }
        String asked = filled(form, typed.substring(0, Math.min(1000, typed.length()))).stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .distinct()
                .collect(Collectors.joining("&"));
        return browser.get(form.attr("action") + "?" + asked);
    }

    private static List<Map.Entry<String, String>> filled(Element form, String typed) {
        List<Map.Entry<String, String>> fields = new ArrayList<>();
        for (Element field : form.select("input[name], textarea[name], select[name]")) {
            String name = field.attr("name");
            String value = switch (name) {
                case "token" -> field.attr("value");
                case "key" -> UUID.randomUUID().toString();
                default -> typed;
            };
            fields.add(Map.entry(name, value));
        }
        for (Element button : form.select("button[name]").stream().limit(1).toList()) {
            fields.add(Map.entry(button.attr("name"), typed));
        }
        return fields;
    }

    private static void check(String path, Element form, HttpResponse<String> answer) {
        String where = form.attr("action") + " on " + path;
        assertThat(answer.statusCode())
                .as(where + ": " + answer.body())
                .isIn(form.attr("method").equals("post") ? List.of(303, 404, 409, 422) : List.of(200, 422));
        Document page = Jsoup.parse(answer.body());
        assertThat(answer.body())
                .as(where)
                .doesNotContain("<script>alert(1)")
                .doesNotContain("Exception")
                .doesNotContain("49 ");
        if (answer.statusCode() == 422) {
            assertThat(page.title()).as(where).startsWith("Check: ");
            assertThat(page.select("#slip[tabindex=-1]")).as(where).hasSize(1);
            assertThat(page.select("#slip a")).as(where).isNotEmpty();
            for (Element link : page.select("#slip a")) {
                Element field = page.getElementById(link.attr("href").substring(1));
                assertThat(field)
                        .as(where + ": the field of “" + link.text() + "”")
                        .isNotNull();
                assertThat(page.select("#" + field.id() + "-problem").text())
                        .as(where)
                        .endsWith(link.text());
            }
        }
    }
}
