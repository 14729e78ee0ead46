package ribmark.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.basics.Side;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.testing.Weighing;
import ribmark.web.Role;

/** Cutting tests move the tables; scores stay tied to the table they were given under. Weights are invented. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScorePagesTest {

    private final TestApp app = new TestApp();

    @AfterAll
    void stop() {
        app.close();
    }

    private Weighing weighed(String fores, String legs) {
        Weighing on = new Weighing(app, "20.000");
        on.weigh("fores.fores.once", fores);
        on.weigh("middle.middle.once", "5.380");
        on.weigh("legs.legs-chump-on.once", legs);
        on.weigh("kidneys.kidneys.once", "0.100");
        on.weigh("kidney-fat.kidney-fat.once", "0.640");
        return on;
    }

    private static Page scores(Weighing on) {
        return on.browser.open(on.path() + "/scores");
    }

    private static String version(String row) {
        return row.replaceFirst("(?s).*version (\\S+).*", "$1");
    }

    /**
     * By hand: the test's fores are 6.800 of 20.000 kg weighed, 34.0 %, so one test beside a table worth five makes
     * (5 × 36.3 + 34.0)/6 = 35.92; its legs 7.080, 35.4 %: (5 × 33.1 + 35.4)/6 = 33.48. Spread of the fores √((5 × 2.25 + 5 × 2.3²/6)/6)
     * = 1.616.
     */
    @Test
    void a_cutting_test_moves_the_table_and_leaves_older_scores_as_they_were() {
        Weighing before = weighed("7.260", "6.620");
        assertThat(before.open().text()).contains("Fores: 7.260 kg. 36.3 % of the carcase. Expected 36.3 %.");
        String kept =
                scores(before).press("Keep the score of").all("tbody tr").get(0).text();
        assertThat(kept).contains("uk-primals, version ");

        Weighing test = weighed("6.800", "7.080");
        assertThat(scores(test).press("Enter lamb").problems())
                .containsExactly("Who cut it: nothing was typed. Write the name of whoever cut the whole carcase.");
        Page entered = scores(test).fill("who", "Rhun").press("Enter lamb");
        assertThat(entered.text()).contains("Counts as a cutting test, cut by Rhun; entered ");

        Page table = test.browser.open("/tables/uk-primals");
        assertThat(table.text())
                .contains("The table as it came counts like five carcases")
                .contains("Fores 36.30 ± 1.50 1 35.92 ± 1.62 83 % borrowed, 17 % own")
                .contains("Rhun");
        assertThat(test.open().text()).as("it does not teach itself").contains("Expected 36.3 %.");

        Weighing after = weighed("7.184", "6.696");
        assertThat(after.open().text())
                .contains("Fores: 7.184 kg. 35.9 % of the carcase. Expected 35.9 %.")
                .contains("1 so far; 83 % is still borrowed from the table");
        assertThat(before.open().text())
                .as("scored by the table of its day")
                .contains("Fores: 7.260 kg. 36.3 % of the carcase. Expected 36.3 %.");
        Page again = scores(before).press("Score lamb");
        assertThat(again.all("tbody tr")).hasSize(2);
        assertThat(again.all("tbody tr").get(0).text())
                .as("the old score, to the letter")
                .isEqualTo(kept);
        assertThat(version(again.all("tbody tr").get(1).text())).isNotEqualTo(version(kept));
        assertThat(again.text()).contains("Expected: 36.30 ± 1.50").contains("Expected: 35.92 ± 1.62");

        scores(test).fill("why", "the saw ran off").press("Take lamb");
        assertThat(scores(test).text()).contains("counts no more").contains("the saw ran off");
        assertThat(test.browser.open("/tables/uk-primals").text()).contains("Fores 36.30 ± 1.50 0 36.30 ± 1.50");
        assertThat(after.open().text()).as("still the table of its day").contains("Expected 35.9 %.");
        assertThat(app.app.verify().holds()).isTrue();
    }

    @Test
    void a_watched_carcase_or_one_that_does_not_balance_is_no_cutting_test() {
        Weighing unfinished = new Weighing(app, "20.000");
        unfinished.weigh("fores.fores.once", "7.260");
        assertThat(scores(unfinished).text()).contains("Only a balanced weigh-up can be a cutting test.");
        assertThat(scores(unfinished).offers("Enter lamb")).isFalse();

        Weighing watched = weighed("7.260", "6.620");
        watched.sheet("Ada", Side.BOTH, "fores-cut");
        assertThat(scores(watched).text()).contains("An apprentice was watched on");
    }

    @Test
    void a_tutor_reads_and_an_apprentice_finds_nothing() {
        Weighing on = weighed("7.260", "6.620");
        Page tutor = app.as("Tavish", Role.TUTOR).open(on.path() + "/scores");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.offers("Enter lamb")).isFalse();
        assertThat(app.as("Ada", Role.APPRENTICE).get(on.path() + "/scores").statusCode())
                .isEqualTo(404);
        assertThat(app.as("Ada", Role.APPRENTICE).get("/tables/uk-primals").statusCode())
                .isEqualTo(404);
    }
}
