package ribmark.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class StepPagesTest {

    private final TestApp app = new TestApp();

    @AfterEach
    void stop() {
        app.close();
    }

    @Test
    void thirty_steps_are_numbered_by_their_place_in_the_order_worked() {
        Page steps = app.as("Ada", Role.APPRENTICE).open("/steps");

        List<String> rows = steps.all("main tbody th[scope=row]").stream()
                .map(Element::text)
                .toList();
        assertThat(steps.heading()).isEqualTo("Six stages, 30 steps");
        assertThat(rows).hasSize(30);
        assertThat(rows.get(0)).startsWith("1 ");
        assertThat(rows.get(29)).startsWith("30 ");
        assertThat(steps.text()).contains("left and right", "may be left out");
    }

    @Test
    void a_step_begins_with_its_caution_and_shows_what_a_reader_needs() {
        Page step = app.as("Maeve", Role.ASSESSOR).open("/steps").follow("Cut the fore line");

        assertThat(step.heading()).isEqualTo("Cut the fore line");
        assertThat(step.all("main h2").stream().map(h -> h.text().replace('\u00a0', ' ')))
                .startsWith("Caution", "Landmark", "On the bones", "How", "What good looks like", "Common faults")
                .contains("Questions", "Chosen here");
        assertThat(step.text())
                .contains("Ribs 6 and 7, left and right")
                .contains("critical: safety")
                .contains("critical: wrong line");
        assertThat(step.all("main ol li")).hasSizeGreaterThan(3);
        assertThat(step.all("footer").get(0).text()).contains("come first");
    }

    @Test
    void every_step_opens_and_every_claim_on_it_is_one_tap_from_its_source() {
        Browser maeve = app.as("Maeve", Role.ASSESSOR);
        List<String> known = maeve.open("/sources").all("tr[id]").stream()
                .map(row -> "/sources#" + row.id())
                .toList();
        for (String address : maeve.open("/steps").links()) {
            if (address.startsWith("/steps/")) {
                Page step = maeve.open(address);
                List<String> sources = step.links().stream()
                        .filter(link -> link.startsWith("/sources#"))
                        .toList();
                assertThat(step.status()).as(address).isEqualTo(200);
                assertThat(sources).as("sources of " + address).isNotEmpty().allMatch(known::contains);
                assertThat(step.all("details.fold").stream()
                                .map(d -> d.select("summary").text()))
                        .as(address)
                        .contains("How we know", "Answer");
            }
        }
    }

    @Test
    void a_limit_says_what_it_is_and_whose() {
        Page step = app.as("Tilda", Role.TUTOR).open("/steps/kidneys-and-suet");

        assertThat(step.text()).contains("at most 3 mm", "the college’s own");
    }

    @Test
    void a_reference_table_says_how_it_stands_and_where_each_figure_comes_from() {
        Page table = app.as("Ada", Role.APPRENTICE).open("/sources").follow("Lamb in three, kidneys and their fat");

        assertThat(table.text()).contains("provisional", "36.3", "judgement");
    }

    @Test
    void a_step_that_is_not_there_is_not_there() {
        assertThat(app.as("Ada", Role.APPRENTICE).open("/steps/no-such-step").status())
                .isEqualTo(404);
    }

    @Test
    void the_administrator_sees_what_was_proved_and_cannot_open_the_steps() {
        Browser petra = app.as("Petra", Role.ADMINISTRATOR);

        Page content = petra.open("/content");

        assertThat(content.heading()).isEqualTo("The content is sound");
        assertThat(content.text()).contains("30 steps", "139 bones", "323 joints", "Without the step");
        assertThat(petra.open("/steps").status()).isEqualTo(404);
        assertThat(content.follow("Sources of every figure").status()).isEqualTo(200);
    }
}
