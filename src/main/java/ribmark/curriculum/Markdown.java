package ribmark.curriculum;

import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jsoup.Jsoup;
import org.jsoup.safety.Safelist;

/** Turns an author's Markdown into HTML that holds nothing but paragraphs, lists and stress. */
final class Markdown {

    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER =
            HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).build();
    private static final Safelist SAFE =
            new Safelist().addTags("p", "ol", "ul", "li", "strong", "em").addAttributes("ol", "start");

    private Markdown() {}

    static String html(String markdown) {
        return Jsoup.clean(RENDERER.render(PARSER.parse(markdown)), SAFE);
    }
}
