package ribmark.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ribmark.testing.TestApp;
import ribmark.testing.Weighing;

/** Looking weights over costs no more than the rest of the page: the page with it takes at most twice the page without. */
class SuspicionIsNotFeltTest {

    private static final int WARMING = 60;
    private static final int TIMES = 61;

    @Test
    void the_weigh_up_page_takes_at_most_twice_what_it_takes_without() {
        try (TestApp app = new TestApp()) {
            Weighing on = new Weighing(app, "20.120");
            on.weigh("fores.fores.once", "7.310");
            on.weigh("middle.middle.once", "5.420");
            on.weigh("legs.legs-chump-on.once", "6.640");
            on.weigh("kidneys.kidneys.once", "0.100");
            on.weigh("kidney-fat.kidney-fat.once", "0.610");
            on.weigh("scrag.scrag.once", "0.760");
            on.weigh("single-fore.shoulders.left", "3.260");
            on.weigh("single-fore.shoulders.right", "3.270");
            on.weigh("best-end.best-ends.left", "1.000");
            on.weigh("best-end.best-ends.right", "1.010");
            on.weigh("loin.loins.left", "1.000");
            on.weigh("loin.loins.right", "1.005");
            on.weigh("breasts.breasts.once", "1.385");
            Reckoning reckoning = app.app.weighed().reckon(on.lamb, List.of()).orElseThrow();

            for (int i = 0; i < WARMING; i++) {
                on.browser.get(on.path());
                lookOver(app, reckoning);
            }
            List<Long> pages = new ArrayList<>();
            List<Long> looks = new ArrayList<>();
            for (int i = 0; i < TIMES; i++) {
                pages.add(nanos(() -> on.browser.get(on.path())));
                looks.add(nanos(() -> lookOver(app, reckoning)));
            }
            double page = median(pages);
            double look = median(looks);
            System.out.printf(
                    "weigh-up page %.2f ms, of which looking over %.2f ms: %.2f times the page without%n",
                    page / 1e6, look / 1e6, page / (page - look));
            assertThat(page / (page - look)).isBetween(1.0, 2.0);
        }
    }

    private static Optional<?> lookOver(TestApp app, Reckoning reckoning) {
        return app.app.weighed().finding(reckoning);
    }

    private static long nanos(Runnable work) {
        long begun = System.nanoTime();
        work.run();
        return System.nanoTime() - begun;
    }

    private static long median(List<Long> times) {
        return times.stream().sorted().toList().get(times.size() / 2);
    }
}
