package ribmark.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class StudyPagesTest {

    private final TestApp app = new TestApp();

    @AfterEach
    void stop() {
        app.close();
    }

    @Test
    void an_apprentice_learns_one_stage_at_a_time_with_the_answers_folded() {
        Page intake = app.as("Ada", Role.APPRENTICE).open("/study");

        Page wholesale = intake.follow("Wholesale");

        assertThat(intake.heading()).isEqualTo("Can you answer these? Intake");
        assertThat(wholesale.heading()).isEqualTo("Can you answer these? Wholesale");
        assertThat(wholesale.text()).contains("Cut the fore line", "Between rib 6 and rib 7", "How do you mend it?");
        assertThat(wholesale.all("details.fold[open]")).isEmpty();
        assertThat(wholesale.follow("Show me").status()).isEqualTo(200);
    }

    @Test
    void a_word_of_the_trade_says_which_bones_it_names_and_how_we_know() {
        Page words = app.as("Ada", Role.APPRENTICE).open("/study").follow("Words of the trade");

        assertThat(words.text()).contains("aitch bone", "ilium, left and right");
        assertThat(words.links()).anyMatch(link -> link.startsWith("/sources#"));
    }

    @Test
    void a_stage_that_is_not_there_leads_to_the_first() {
        assertThat(app.as("Ada", Role.APPRENTICE).open("/study?stage=nowhere").heading())
                .isEqualTo("Can you answer these? Intake");
    }

    @Test
    void study_is_for_apprentices() {
        Browser maeve = app.as("Maeve", Role.ASSESSOR);

        assertThat(maeve.open("/study").status()).isEqualTo(404);
    }
}
