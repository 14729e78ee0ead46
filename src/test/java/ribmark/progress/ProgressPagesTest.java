package ribmark.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.Watched.LEG_LINE;
import static ribmark.testing.Watched.READY;

import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.competence.Mark;
import ribmark.people.Group;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Watched;
import ribmark.web.Role;

class ProgressPagesTest {

    private final Watched college = new Watched();

    @AfterEach
    void stop() {
        college.close();
    }

    @Test
    void a_tutor_sees_who_waits_who_is_stuck_and_who_was_not_seen() {
        college.group("First year", "Petra", "Ada", "Bram", "Cerys");
        college.closed("Bram", "Maeve", 21, READY, Mark.PROMPTED);
        college.app.clock.move(Duration.ofDays(19));
        college.enough("Ada", READY);
        for (int lamb = 33; lamb < 36; lamb++) {
            college.closed("Ada", "Maeve", lamb, LEG_LINE, Mark.NOT_YET);
        }

        Page page = petra().open("/group");

        assertThat(page.heading()).isEqualTo("First year");
        assertThat(page.text())
                .contains("Three apprentices,")
                .contains("One step waits for a signature.")
                .contains("close 0 1 to sign; step " + number(LEG_LINE) + " not yet three times")
                .contains("close 0 not seen for 19 days")
                .contains("close 0 not seen yet");
        assertThat(page.all(".ribs--row")).hasSize(3);
        assertThat(page.all(".ribs--row").get(0).attr("aria-label")).startsWith("1 ready to sign, 1 practising,");
    }

    @Test
    void one_stage_at_a_time_names_stand_under_their_standing_and_lead_to_the_evidence() {
        college.group("First year", "Petra", "Ada");
        college.closed("Ada", "Maeve", 29, LEG_LINE, Mark.UNAIDED);

        Page page = petra().open("/group").follow("wholesale");
        String evidence = college.evidence("Ada", LEG_LINE);

        assertThat(page.all("td[data-caption='thin evidence'] a[href='" + evidence + "']"))
                .hasSize(1);
        assertThat(page.all(".plates a[aria-current=true]").get(0).text()).isEqualTo("wholesale");
        assertThat(petra().open(evidence).heading()).startsWith("Not enough yet:");
    }

    @Test
    void a_tutor_of_two_groups_goes_from_one_to_the_other_and_never_to_anothers() {
        college.group("First year", "Petra", "Ada");
        college.group("Second year", "Petra", "Bram");
        Group third = college.group("Third year", "Quill", "Cerys");
        Browser petra = petra();

        assertThat(petra.open("/group").follow("Second year").text())
                .contains("Bram")
                .doesNotContain("Ada");
        assertThat(petra.open("/group?group=" + third.id()).status()).isEqualTo(404);
        assertThat(petra.open("/group?group=nonsense").status()).isEqualTo(404);
        assertThat(petra.open("/group?stage=nonsense").status()).isEqualTo(404);
        assertThat(petra.open("/apprentices/" + college.apprentice("Cerys").id())
                        .status())
                .isEqualTo(404);
    }

    @Test
    void a_tutor_without_a_group_is_told_who_makes_one() {
        assertThat(petra().open("/group").heading()).isEqualTo("You look after no group yet");
    }

    @Test
    void an_apprentice_reads_all_steps_in_words_with_what_is_still_needed() {
        college.enough("Ada", READY);
        college.closed("Ada", "Maeve", 29, LEG_LINE, Mark.UNAIDED);
        String own = "/apprentices/" + college.apprentice("Ada").id();

        Page page = college.app.as("Ada", Role.APPRENTICE).open(own);

        assertThat(page.heading()).isEqualTo("Where do you stand?");
        assertThat(page.text())
                .contains("ready to sign a signature")
                .contains(
                        "thin evidence two more sheets: unaided on both sides, on two carcases other than lamb 29, at least one"
                                + " closed by somebody other than Maeve")
                .contains("25 Nov 2026 lamb 29 Maeve 1");
        assertThat(page.all("tbody th a")).hasSizeGreaterThan(29);
        assertThat(college.app.as("Bram", Role.APPRENTICE).open(own).status()).isEqualTo(404);
    }

    @Test
    void an_assessor_sees_everybody() {
        college.apprentice("Ada");
        college.apprentice("Bram");

        Page page = college.app.as("Maeve", Role.ASSESSOR).open("/apprentices");

        assertThat(page.heading()).isEqualTo("Where does everybody stand?");
        assertThat(page.follow("Bram").heading()).isEqualTo("Where does Bram stand?");
    }

    private Browser petra() {
        return college.app.as("Petra", Role.TUTOR);
    }

    private int number(String step) {
        return college.app
                .app
                .standings()
                .curriculum()
                .breakdown()
                .step(step)
                .orElseThrow()
                .number();
    }
}
