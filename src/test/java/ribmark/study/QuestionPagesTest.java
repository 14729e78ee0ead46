package ribmark.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.database.Database;
import ribmark.people.Group;
import ribmark.people.Person;
import ribmark.proof.ContentInUse;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class QuestionPagesTest {

    private final TestApp app = new TestApp();
    private final Deck deck = new Deck(ContentInUse.read(Optional.empty()).curriculum());
    private final Group group = app.app.groups().named("First year");

    @AfterEach
    void stop() {
        app.close();
    }

    /** Ten people: the first card is known to all, the second to those who know nothing else, the rest to every second. */
    private void tenAnswer() {
        Database database = app.app.database();
        StudyStore store = new StudyStore(database, app.clock);
        for (int number = 0; number < 10; number++) {
            Person person = app.person("Apprentice " + number, Role.APPRENTICE);
            app.app.groups().join(group, person);
            boolean strong = number % 2 == 0;
            for (int at = 0; at < 6; at++) {
                boolean right = at == 0 || (at == 1) != strong;
                Grade grade = right ? Grade.AT_ONCE : Grade.DID_NOT_KNOW;
                store.add(person.id(), deck.cards().get(at), 0, Optional.empty(), grade);
            }
        }
    }

    @Test
    void a_tutor_sees_which_questions_are_too_easy_and_which_mislead() {
        tenAnswer();
        app.app.groups().join(group, app.person("Petra", Role.TUTOR));

        Page page = app.as("Petra", Role.TUTOR).open("/group").follow("Which questions work?");

        assertThat(page.text()).contains("Ten apprentices have answered six questions. Only first answers count here.");
        assertThat(page.text()).contains(deck.cards().get(0).title() + " 1 Make ready to work 10 100 too easy");
        assertThat(page.text()).contains("10 50 \u22121.00 misleading");
        assertThat(page.text()).contains("All these limits are ours");
    }

    @Test
    void another_group_is_nothing_to_a_tutor_and_a_tutor_without_one_is_told() {
        tenAnswer();
        Page page = app.as("Ruben", Role.TUTOR).open("/group").follow("Which questions work?");

        assertThat(page.text()).contains("You look after no group yet.");
        app.app.groups().join(app.app.groups().named("Evening"), app.person("Ruben", Role.TUTOR));
        assertThat(app.as("Ruben", Role.TUTOR).open("/study/questions").text())
                .contains("Nobody of this group has studied here yet.");
        assertThat(app.as("Ruben", Role.TUTOR)
                        .open("/study/questions?group=" + group.id())
                        .status())
                .isEqualTo(404);
    }

    @Test
    void an_apprentice_does_not_see_how_questions_behave() {
        assertThat(app.as("Ada", Role.APPRENTICE).open("/study/questions").status())
                .isEqualTo(404);
    }
}
