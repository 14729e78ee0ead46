package ribmark.web;

import java.util.List;
import java.util.Map;

/** A page as a file that stands alone: its styles are inside it, and it needs nothing from the program any more. */
public final class PaperFile {

    private static final String STYLES = "styles-go-here";

    private final StyleSheet styles = new StyleSheet();
    private final Templates templates = new Templates(nobody -> new Frame("", "", false, List.of(), "", STYLES, false));

    /** Fills a template whose layout is the one for paper. */
    public String of(String template, Map<String, ?> model) {
        String page = templates.render(template, model, null);
        return page.replace(
                        "<link rel=\"stylesheet\" href=\"" + STYLES + "\">", "<style>\n" + styles.css() + "</style>")
                .replace("<link rel=\"icon\" href=\"/icon.svg\" type=\"image/svg+xml\">", "");
    }
}
