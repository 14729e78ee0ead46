package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Dimension;
import ribmark.testing.Chromium;
import ribmark.testing.Crawl;
import ribmark.testing.Page;
import ribmark.testing.TestDemo;
import ribmark.web.Role;

/** U-14: whoever sets letters, words and lines further apart (WCAG 2.2, 1.4.12: the four distances) loses nothing sideways. */
class TextSpacingTest {

    private static final String SPACED =
            "const sheet = document.styleSheets[0]; sheet.insertRule('* { line-height: 1.5 !important;"
                    + " letter-spacing: .12em !important; word-spacing: .16em !important }', sheet.cssRules.length);"
                    + "sheet.insertRule('p { margin-bottom: 2em !important }', sheet.cssRules.length);";

    /** Whatever makes room by going away, innermost only. */
    private static final String CULPRITS =
            "return [...document.querySelectorAll('main *')].filter(e => { if (e.children.length) return false;"
                    + "e.style.display = 'none'; const fits = document.documentElement.scrollWidth <= innerWidth;"
                    + "e.style.display = ''; return fits; })"
                    + ".map(e => e.tagName + ' ' + e.textContent.trim().slice(0, 30)).slice(0, 5);";

    private final TestDemo demo = TestDemo.once();

    @ParameterizedTest
    @EnumSource(Role.class)
    void nothing_scrolls_sideways_with_text_set_wide(Role role) {
        String name = demo.first(role);
        List<String> found = new ArrayList<>();
        try (Chromium browser = Chromium.at(demo.address)) {
            browser.size(Chromium.SIZES.get(0)).signIn(name, demo.password());
            for (String path : oneOfEach(name)) {
                for (Dimension size : Chromium.SIZES) {
                    browser.size(size).open(path).ask(SPACED);
                    if (browser.scrollsSideways()) {
                        found.add(path + " at " + size.width + ": " + browser.ask(CULPRITS));
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }

    private List<String> oneOfEach(String name) {
        Crawl crawl = new Crawl(demo.as(name), demo.app.routes(), 2, 6);
        Map<String, String> one = new LinkedHashMap<>();
        for (Map.Entry<String, Page> page : crawl.from("/").entrySet()) {
            crawl.route(page.getValue().path())
                    .ifPresent(route ->
                            one.putIfAbsent(route.path(), page.getValue().path()));
        }
        return List.copyOf(one.values());
    }
}
