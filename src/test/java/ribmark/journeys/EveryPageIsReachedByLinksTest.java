package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ribmark.testing.Crawl;
import ribmark.testing.Page;
import ribmark.testing.TestDemo;
import ribmark.web.Role;
import ribmark.web.Route;

/** In the demo, whoever only clicks gets to every page of their role within six clicks, and changes nothing by it. */
class EveryPageIsReachedByLinksTest {

    private static final int CLICKS = 6;
    private static final int OF_EACH = Integer.getInteger("drills", 12);

    private final TestDemo demo = TestDemo.once();

    /** S-42 too: everything in the tables is the same afterwards. */
    @ParameterizedTest
    @EnumSource(Role.class)
    void every_page_of_a_role_is_reached_by_links_alone(Role role) {
        Map<String, List<String>> before = demo.everything();
        Crawl crawl = new Crawl(demo.as(demo.first(role)), demo.app.routes(), OF_EACH, CLICKS);

        Map<String, Page> pages = crawl.from("/");

        pages.forEach((path, page) -> assertThat(page.status()).as(path).isEqualTo(200));
        assertThat(reached(pages, crawl)).containsAll(mayOpen(role));
        assertThat(demo.everything()).isEqualTo(before);
    }

    private TreeSet<String> mayOpen(Role role) {
        return demo.app.routes().stream()
                .filter(route -> route.shows().equals("page") && route.allow().admits(role))
                .map(Route::path)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Where a link led elsewhere in the end, both count: the address it named answered, and so did the page. */
    private static TreeSet<String> reached(Map<String, Page> pages, Crawl crawl) {
        return pages.entrySet().stream()
                .flatMap(entry -> crawl.route(entry.getKey()).stream())
                .map(Route::path)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
