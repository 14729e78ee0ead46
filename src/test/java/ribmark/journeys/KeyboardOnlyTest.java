package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import ribmark.blocksheet.BlockSheet;
import ribmark.competence.Mark;
import ribmark.testing.AtTheBlock;
import ribmark.testing.Chromium;
import ribmark.testing.TestApp;

/** U-20: a sheet watched, weighed and closed with Tab, Enter and Space alone, the main deed never more than fifteen stops away. */
class KeyboardOnlyTest {

    private static final int MOST = 15;

    private final AtTheBlock block = new AtTheBlock();

    @AfterEach
    void stop() {
        block.close();
    }

    @Test
    void a_sheet_is_watched_weighed_and_closed_without_touching_anything_but_keys() {
        block.open();
        try (Chromium keys = Chromium.at(block.app.address).size(Chromium.SIZES.get(0))) {
            signsIn(keys);
            watches(keys);
            weighs(keys);
            closes(keys);
            assertThat(keys.heading()).isEqualTo("Ada’s feedback on lamb 31");
        }
        BlockSheet sheet = block.app.app.sheets().closedOf(block.ada.id()).get(0);
        assertThat(sheet.marks()).extracting(ribmark.blocksheet.Mark::mark).containsExactly(Mark.UNAIDED, Mark.NOT_YET);
        assertThat(sheet.marks().get(1).faultId()).isPresent();
        assertThat(block.app.app.weighUps().of(block.lamb.id())).hasSize(1);
    }

    private static void signsIn(Chromium keys) {
        keys.open("/sign-in").tabTo("Your name here", MOST).key("Maeve");
        keys.tabTo("Password", 1).key(TestApp.PASSWORD).keyAway(Keys.ENTER);
        assertThat(keys.heading()).isEqualTo("Today at the block");
    }

    private void watches(Chromium keys) {
        keys.tabTo("Begin with step 1", MOST).keyAway(Keys.ENTER);
        keys.tabTo("Unaided", MOST).keyAway(Keys.SPACE);
        keys.tabTo("Not yet", MOST).keyAway(Keys.ENTER);
        String reason = block.app
                .app
                .curriculum()
                .breakdown()
                .steps()
                .get(1)
                .faults()
                .get(0)
                .text();
        keys.tabTo(reason, MOST).keyAway(Keys.SPACE);
    }

    private static void weighs(Chromium keys) {
        keys.tabTo("Weigh-up", MOST).keyAway(Keys.ENTER);
        keys.tabTo("Fores as parted", MOST).key(Keys.SPACE);
        keys.tabTo("Weight", MOST).key("7.310").keyAway(Keys.ENTER);
        assertThat(keys.text()).contains("Kept last: fores, 7.310 kg");
    }

    private static void closes(Chromium keys) {
        keys.tabTo("Past the weights", 2).key(Keys.ENTER);
        keys.tabTo("Ada’s sheet", 5).keyAway(Keys.ENTER);
        keys.tabTo("Read it through, then close", MOST).keyAway(Keys.ENTER);
        keys.tabTo("On to the words", MOST).key(Keys.ENTER);
        keys.tabTo("Intake: what you saw", MOST).key("Looked before touching.");
        keys.tabTo("One thing done well", 1).key("Gloves first.");
        keys.tabTo("One thing to change", 1).key("Say the ticket aloud.");
        keys.tabTo("Next step", 1).key("The same again on Friday.");
        keys.tabTo("Day", 1).key("11272026");
        keys.tabTo("Your password", 5).key(TestApp.PASSWORD);
        keys.tabTo("Close Ada’s sheet on lamb 31", 1).keyAway(Keys.SPACE);
    }
}
