package ribmark.blocksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.carcase.Carcase;
import ribmark.carcase.Decision;
import ribmark.curriculum.Step;
import ribmark.people.Person;
import ribmark.testing.AtTheBlock;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.web.Role;

class OpeningPagesTest {

    private final AtTheBlock block = new AtTheBlock();
    private final Person bram = block.app.person("Bram", Role.APPRENTICE);

    @AfterEach
    void stop() {
        block.close();
    }

    @Test
    void a_sheet_is_opened_from_today_for_the_whole_breakdown() {
        Page opened = block.maeve()
                .open("/today")
                .follow("Open a sheet on lamb 31")
                .choose("apprentice", block.ada.id().toString())
                .press("Open a sheet on lamb 31");

        assertThat(opened.heading()).isEqualTo("Ada on lamb 31");
        assertThat(opened.text()).contains("Nothing is marked yet.", "1 Make ready to work");
        assertThat(sheets()).hasSize(1);
        assertThat(sheets().get(0).scope()).hasSize(44);
    }

    @Test
    void only_chosen_stages_and_steps_are_on_the_sheet() {
        Page page = form(block.ada)
                .choose("part", "chosen")
                .choose("stages", "wholesale")
                .choose("steps", "ready-to-work");
        page.press("Open a sheet on lamb 31");

        assertThat(sheets().get(0).scope())
                .extracting(Place::stepId)
                .contains("ready-to-work", "fores-cut")
                .doesNotContain("clean-down", "legs-split");
    }

    @Test
    void a_sheet_is_opened_only_on_an_accepted_carcase() {
        Carcase held = block.lamb(34, Decision.HOLD);

        Page no = block.maeve().open("/block-sheets/new?carcase=" + held.id());
        Page posted = AtTheBlock.send(
                block.maeve(), "/block-sheets", Map.of("carcase", held.id().toString()));

        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("Lamb 34 is on hold. A sheet is opened only on an accepted carcase.");
        assertThat(posted.status()).isEqualTo(409);
        assertThat(block.maeve().open("/block-sheets/new").status()).isEqualTo(404);
        assertThat(block.maeve().open("/today").text()).doesNotContain("Lamb 34");
    }

    @Test
    void what_is_missing_is_said_beside_its_field_and_nothing_chosen_is_lost() {
        Page again = block.maeve()
                .open("/block-sheets/new?carcase=" + block.lamb.id())
                .choose("part", "chosen")
                .choose("side", "left")
                .press("Open a sheet on lamb 31");

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.problems())
                .containsExactly(
                        "Apprentice: nothing was chosen. Choose one.",
                        "Stages: nothing was ticked. Tick a stage, or single steps below.");
        assertThat(again.all("#side-2[checked]")).hasSize(1);
    }

    @Test
    void the_whole_and_a_part_are_not_chosen_together() {
        Page again = form(block.ada).choose("stages", "legs", "fores").press("Open a sheet on lamb 31");

        assertThat(again.problems())
                .containsExactly(
                        "How much: the whole breakdown was chosen, and two lines below ticked as well. Choose one or the other.");
        assertThat(again.all("[name=stages][checked]")).hasSize(2);
    }

    @Test
    void the_same_step_and_side_is_not_open_for_two_apprentices() {
        form(block.ada).press("Open a sheet on lamb 31");

        Page no = form(bram).press("Open a sheet on lamb 31");

        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("Ada has step 6, left side, of lamb 31 open with Maeve.");
        assertThat(sheets()).hasSize(1);
    }

    @Test
    void two_apprentices_share_a_lamb_one_to_each_side() {
        form(block.ada).choose("side", "left").press("Open a sheet on lamb 31");
        Page second = form(bram).choose("side", "right").press("Open a sheet on lamb 31");

        BlockSheet ada = sheets().get(0);
        BlockSheet bramsSheet = sheets().get(1);

        assertThat(second.heading()).isEqualTo("Bram on lamb 31");
        assertThat(ada.scope()).noneMatch(place -> place.side() == Side.RIGHT);
        assertThat(bramsSheet.scope()).noneMatch(place -> place.side() == Side.LEFT);
        for (Step step : block.app.app.curriculum().breakdown().steps()) {
            if (!step.eachSide()) {
                assertThat(bramsSheet.sidesOf(step.id()).isEmpty())
                        .as("done once on the carcase, so only Ada has it: " + step.id())
                        .isEqualTo(!step.operations().isEmpty());
            }
        }
    }

    @Test
    void a_second_sheet_of_the_same_person_by_the_same_assessor_is_not_opened() {
        form(block.ada).press("Open a sheet on lamb 31");

        Page no = form(block.ada).press("Open a sheet on lamb 31");

        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("You have a sheet open for Ada on lamb 31 already.");
    }

    @Test
    void the_same_form_sent_twice_opens_one_sheet() {
        Page page = form(block.ada);

        page.press("Open a sheet on lamb 31");
        page.press("Open a sheet on lamb 31");

        assertThat(sheets()).hasSize(1);
    }

    @Test
    void nobody_marks_themselves_and_nobody_with_a_closed_account_is_offered() {
        Person both = block.app.person("Nia", Role.ASSESSOR, Role.APPRENTICE);
        block.app.app.people().change(bram.id(), true, block.maeve.id());
        Browser nia = block.app.as("Nia", Role.ASSESSOR, Role.APPRENTICE);
        String address = "/block-sheets/new?carcase=" + block.lamb.id();

        assertThat(nia.open(address).all("option").stream().map(o -> o.text()))
                .containsExactly("Choose an apprentice", "Ada");
        Page no = AtTheBlock.send(
                nia,
                "/block-sheets",
                Map.of(
                        "carcase",
                        block.lamb.id().toString(),
                        "apprentice",
                        both.id().toString()));
        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("Nobody marks themselves.");
        Page closed = AtTheBlock.send(
                nia,
                "/block-sheets",
                Map.of(
                        "carcase",
                        block.lamb.id().toString(),
                        "apprentice",
                        bram.id().toString(),
                        "part",
                        "whole",
                        "side",
                        "both"));
        assertThat(closed.problems()).containsExactly("Apprentice: nothing was chosen. Choose one.");
        assertThat(sheets()).isEmpty();
    }

    @Test
    void sheets_of_others_are_listed_but_kept_by_them() {
        form(block.ada).press("Open a sheet on lamb 31");

        Page today = block.app.as("Osric", Role.ASSESSOR).open("/today");

        assertThat(today.text()).contains("You have no sheet open.", "Kept by others", "Ada on lamb 31 Maeve");
    }

    private Page form(Person apprentice) {
        return block.maeve()
                .open("/block-sheets/new?carcase=" + block.lamb.id())
                .choose("apprentice", apprentice.id().toString());
    }

    private List<BlockSheet> sheets() {
        return block.app.app.sheets().allOpen();
    }
}
