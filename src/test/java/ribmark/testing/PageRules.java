package ribmark.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** What holds for every page: a rule added here protects all of them at once. */
final class PageRules {

    private PageRules() {}

    static void check(Document page, String path) {
        assertThat(page.select("html").attr("lang")).as("language of " + path).isNotEmpty();
        assertThat(page.select("h1")).as("main headings of " + path).hasSize(1);
        assertThat(page.select("h1").text())
                .as("words of the main heading of " + path)
                .isNotEmpty();
        String title = page.title().replaceFirst("^Check: ", "");
        assertThat(title).as("title of " + path).startsWith(page.select("h1").text());
        assertThat(page.select("main")).as("main of " + path).hasSize(1);
        List<String> ids = page.select("[id]").eachAttr("id");
        assertThat(ids).as("ids of " + path).doesNotHaveDuplicates();
        forms(page, path);
        labels(page, path);
        nothingInline(page, path);
        wording(page, path);
    }

    private static void forms(Document page, String path) {
        for (Element form : page.select("form")) {
            assertThat(form.attr("action")).as("action of a form on " + path).isNotEmpty();
            if (form.attr("method").equalsIgnoreCase("post")) {
                assertThat(form.select("input[name=token]"))
                        .as("token of a form on " + path)
                        .hasSize(1);
            }
        }
    }

    private static void labels(Document page, String path) {
        for (Element field : page.select("input:not([type=hidden]), textarea, select")) {
            boolean labelled =
                    !page.select("label[for=" + field.id() + "]").isEmpty() || field.closest("label") != null;
            assertThat(labelled).as("a label for " + field + " on " + path).isTrue();
        }
        for (Element group : page.select("fieldset")) {
            assertThat(group.select("> legend"))
                    .as("legend of a group on " + path)
                    .hasSize(1);
        }
    }

    private static void nothingInline(Document page, String path) {
        assertThat(page.select("[style], style, script:not([src]), [onclick], [onload]"))
                .as("inline style or script on " + path)
                .isEmpty();
        assertThat(page.select("a[href^=http], a[href^=javascript]"))
                .as("foreign links on " + path)
                .isEmpty();
        assertThat(page.select("table:not(:has(caption))"))
                .as("tables without a caption on " + path)
                .isEmpty();
    }

    private static void wording(Document page, String path) {
        String words = page.body().text().toLowerCase(java.util.Locale.ROOT);
        for (String never : List.of("invalid", "illegal", "forbidden", "please", "sorry", "oops", "error occurred")) {
            assertThat(words).as("wording of " + path).doesNotContainPattern("\\b" + never + "\\b");
        }
        assertThat(words)
                .as("an unfilled place on " + path)
                .doesNotContain("${")
                .doesNotContain("null");
    }
}
