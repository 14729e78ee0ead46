package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ribmark.admin.DemoCollege.SignIn;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.ReadingGrade;
import ribmark.testing.TestDemo;

/** Whoever was marked not yet or stopped sees what was seen, where on the skeleton, and what to do next, in plain words. */
class EveryNotYetTeachesTest {

    private static final double GRADE = 7;

    private final TestDemo demo = TestDemo.once();

    @Test
    void every_not_yet_says_what_was_seen_where_it_lies_and_what_to_do() {
        List<Page> steps = demo.signIns().stream()
                .filter(one -> one.role().equals("apprentice"))
                .map(SignIn::name)
                .flatMap(this::marked)
                .toList();

        assertThat(steps).hasSizeGreaterThan(10);
        steps.forEach(EveryNotYetTeachesTest::teaches);
    }

    private Stream<Page> marked(String apprentice) {
        Browser reader = demo.as(apprentice);
        return reader.open("/feedback").links().stream()
                .filter(link -> link.matches("/feedback/[^/#]+"))
                .distinct()
                .flatMap(sheet -> reader.open(sheet).all("a[href*=/steps/]").stream()
                        .map(link -> link.attr("href"))
                        .filter(href -> href.startsWith(sheet + "/steps/"))
                        .distinct())
                .map(reader::open)
                .filter(page -> page.text().matches("(?si).*(not yet|stopped)\\. .*"));
    }

    private static void teaches(Page page) {
        String told =
                String.join(" ", page.all("main p").stream().map(p -> p.text()).toList());
        assertThat(told).as(page.path()).containsAnyOf("Next time:", "“");
        assertThat(ReadingGrade.of(told)).as(page.path() + ": " + told).isLessThan(GRADE);
        boolean touchesBones = page.text().contains("On the bones");
        if (touchesBones) {
            assertThat(page.all("#bones img")).as(page.path()).isNotEmpty();
            assertThat(page.all("#bones th")).as(page.path()).isNotEmpty();
        }
        assertThat(page.links()).as(page.path()).anyMatch(link -> link.startsWith("/steps/"));
    }
}
