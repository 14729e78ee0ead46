package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Dimension;
import ribmark.testing.Chromium;
import ribmark.testing.Crawl;
import ribmark.testing.Page;
import ribmark.testing.TestDemo;
import ribmark.web.Role;

/** U-17, U-14, U-01 and U-33: every page of every role in a real browser, at the three sizes. */
class EveryPageInChromiumTest {

    private static final String SMALL_TARGETS =
            "return [...document.querySelectorAll('button, .plate, summary, .choice, select, textarea, input:not([type=hidden]):not([type=radio]):not([type=checkbox])')]"
                    + ".filter(e => e.offsetParent !== null && !e.classList.contains('linklike'))"
                    + ".filter(e => e.getBoundingClientRect().height < 43.5).map(e => e.tagName + ' ' + (e.innerText || e.name)).slice(0, 5);";

    private final TestDemo demo = TestDemo.once();
    private Chromium chromium;

    @BeforeEach
    void start() {
        chromium = Chromium.at(demo.address);
    }

    @AfterEach
    void stop() {
        chromium.close();
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void every_page_can_be_used_by_everybody_at_every_size(Role role) {
        String name = demo.first(role);
        List<String> found = new ArrayList<>();
        chromium.size(Chromium.SIZES.get(0)).signIn(name, demo.password());
        for (String path : oneOfEach(role, name)) {
            for (Dimension size : Chromium.SIZES) {
                chromium.size(size).open(path);
                if (chromium.scrollsSideways()) {
                    found.add(path + " scrolls sideways at " + size.width);
                }
                if (chromium.ask(SMALL_TARGETS) instanceof List<?> small && !small.isEmpty()) {
                    found.add(path + " at " + size.width + " has small targets: " + small);
                }
            }
            chromium.violations().forEach(violation -> found.add(path + ": " + violation));
        }
        assertThat(found).isEmpty();
    }

    /** U-33: what a page sends, compressed, with its headers. */
    @ParameterizedTest
    @EnumSource(Role.class)
    void every_page_is_light(Role role) {
        List<String> heavy = new ArrayList<>();
        String name = demo.first(role);
        for (String path : oneOfEach(role, name)) {
            int bytes = demo.as(name).bytesCompressed(path);
            if (bytes > 14_000) {
                heavy.add(path + ": " + bytes);
            }
        }
        assertThat(heavy).isEmpty();
        assertThat(demo.as(name).bytesCompressed("/ribmark.css")).isLessThan(14_000);
    }

    private List<String> oneOfEach(Role role, String name) {
        Crawl crawl = new Crawl(demo.as(name), demo.app.routes(), 3, 6);
        Map<String, String> one = new LinkedHashMap<>();
        for (Map.Entry<String, Page> page : crawl.from("/").entrySet()) {
            crawl.route(page.getValue().path())
                    .ifPresent(route ->
                            one.putIfAbsent(route.path(), page.getValue().path()));
        }
        return List.copyOf(one.values());
    }
}
