package ribmark.blocksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.competence.Mark;
import ribmark.testing.AtTheBlock;
import ribmark.testing.Page;
import ribmark.web.Role;

class RanLinePagesTest {

    private static final String LEFT = "Left alone, The fore line, one rib towards the head";

    private final AtTheBlock block = new AtTheBlock();

    @AfterEach
    void stop() {
        block.close();
    }

    private String address() {
        return "/block-sheets/" + sheet().id();
    }

    private BlockSheet sheet() {
        return block.app.app.sheets().all().get(0);
    }

    private RanLineStore store() {
        return new RanLineStore(block.app.app.database(), block.app.app.log());
    }

    private void mark(Mark mark) {
        block.app
                .app
                .sheets()
                .mark(sheet().id(), new Place("fores-saw", Side.ONCE), mark, Optional.empty(), "seen", Instant.EPOCH);
    }

    @Test
    void one_tap_records_where_the_line_ran_and_another_takes_it_back() {
        block.open();
        String step = address() + "/steps/fores-saw";
        mark(Mark.UNAIDED);
        assertThat(block.maeve().open(address()).text()).doesNotContain("Where the line");
        mark(Mark.PROMPTED);

        Page page = block.maeve().open(address()).follow("Where the line of step 8 ran");
        assertThat(page.heading()).isEqualTo("Where did the line run?");
        assertThat(page.press(LEFT).path()).isEqualTo(address());
        assertThat(store().allOf(sheet().id())).containsExactly(new RanLine("fores-saw", "fores", "head", 1, "left"));
        assertThat(block.maeve().open(address()).text())
                .contains("The fore line ran one rib towards the head on the left.", "Left rib 6 and left costal");

        block.maeve().open(step + "/ran").press("Undo: it ran where it should");
        assertThat(store().allOf(sheet().id())).isEmpty();
        assertThat(block.maeve().open(address()).text()).doesNotContain("Left rib 6");
        assertThat(block.app.app.verify().holds()).isTrue();
    }

    @Test
    void from_the_reasons_it_is_one_tap_more_and_leads_back_to_them() {
        block.open();
        Page reasons =
                block.maeve().open(address() + "/steps/fores-cut?side=left").press("Not yet");
        Page back = reasons.follow("Where the line ran").press(LEFT);
        assertThat(back.heading()).isEqualTo("Not yet: what was seen?");
        back.press("Line slid into another space");
        assertThat(sheet().mark("fores-cut", Side.LEFT)).isPresent();
        assertThat(store().allOf(sheet().id())).hasSize(1);
    }

    @Test
    void the_newest_counts_and_the_log_is_compared_with_the_table() throws Exception {
        block.open();
        store().add(sheet().id(), new RanLine("fores-saw", "fores", "head", 1, "left"));
        store().add(sheet().id(), new RanLine("fores-saw", "fores", "tail", 2, "both"));
        assertThat(store().allOf(sheet().id())).containsExactly(new RanLine("fores-saw", "fores", "tail", 2, "both"));
        assertThat(block.app.app.verify().holds()).isTrue();
    }

    @Test
    void the_apprentice_reads_it_in_the_feedback_with_its_picture() {
        block.open();
        mark(Mark.NOT_YET);
        BlockSheet sheet = sheet();
        store().add(sheet.id(), new RanLine("fores-saw", "fores", "head", 1, "left"));
        block.app
                .app
                .sheets()
                .close(
                        sheet.id(),
                        LocalDate.of(2026, 12, 1),
                        new Draft(Map.of("wholesale", "seen"), "well", "change", "next", "2026-12-01"));

        Page feedback = block.app.as("Ada", Role.APPRENTICE).open("/feedback/" + sheet.id());
        assertThat(feedback.text()).contains("The fore line ran one rib towards the head on the left.");
        assertThat(feedback.all("#ran figure img")).hasSize(1);
        assertThat(feedback.text()).contains("dotted line Where it ran: one rib towards the head on the left.");
        Page bones = feedback.follow("Bone by bone, step 8");
        assertThat(bones.heading()).isEqualTo("The fore line ran one rib towards the head on the left");
        assertThat(block.maeve()
                        .open("/block-sheets/" + sheet.id() + "/steps/fores-saw/ran")
                        .status())
                .isEqualTo(409);
    }

    @Test
    void what_is_not_one_of_the_ways_is_said_and_kept_nowhere() {
        block.open();
        Page page =
                AtTheBlock.send(block.maeve(), address() + "/steps/fores-saw/ran", Map.of("way", "fores up 7 left"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.problems()).isEqualTo(List.of("Where it ran: nothing was tapped. Tap one of these."));
        assertThat(store().allOf(sheet().id())).isEmpty();
        assertThat(block.maeve().open(address() + "/steps/knuckle/ran").status())
                .isEqualTo(404);
    }
}
