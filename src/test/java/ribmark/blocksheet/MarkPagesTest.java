package ribmark.blocksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.competence.Mark;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Step;
import ribmark.people.Group;
import ribmark.people.Person;
import ribmark.testing.AtTheBlock;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.web.Role;

class MarkPagesTest {

    private final AtTheBlock block = new AtTheBlock();
    private final Breakdown lamb = block.app.app.curriculum().breakdown();

    @AfterEach
    void stop() {
        block.close();
    }

    @Test
    void a_whole_lamb_takes_one_tap_for_each_step_and_side_and_ends_at_the_review() {
        Page page = block.open().follow("Begin with step 1");
        int taps = 0;
        while (page.offers("Unaided")) {
            page = page.press("Unaided");
            taps++;
        }
        BlockSheet sheet = sheet();

        assertThat(page.heading()).isEqualTo("Read it through, then close");
        assertThat(taps).isEqualTo(sheet.scope().size()).isLessThanOrEqualTo(60);
        assertThat(sheet.marks()).hasSameSizeAs(sheet.scope()).allMatch(m -> m.mark() == Mark.UNAIDED);
        assertThat(sheet.marks()).extracting(ribmark.blocksheet.Mark::place).containsExactlyElementsOf(sheet.scope());
    }

    @Test
    void one_tap_leads_to_the_other_side_and_then_to_the_next_step() {
        Step sided = sided();
        block.open();

        Page right = open(sided, Side.LEFT).press("Unaided");
        Page next = right.press("Prompted");

        assertThat(right.heading()).isEqualTo(sided.title());
        assertThat(right.text()).contains("Left unaided").contains("Right mark it now");
        assertThat(next.heading()).isEqualTo(after(sided).title());
        assertThat(sheet().mark(sided.id(), Side.RIGHT))
                .map(ribmark.blocksheet.Mark::mark)
                .contains(Mark.PROMPTED);
    }

    @Test
    void not_yet_is_kept_with_the_reason_tapped_on_the_next_screen() {
        Step step = critical();
        Step.Fault fault = step.faults().stream()
                .filter(f -> f.critical().isPresent())
                .findFirst()
                .orElseThrow();
        block.open();

        Page reasons = open(step, step.sides().get(0)).press("Not yet");
        boolean keptBefore = !sheet().marks().isEmpty();
        reasons.press(fault.text());

        assertThat(reasons.heading()).isEqualTo("Not yet: what was seen?");
        assertThat(reasons.text())
                .contains("critical: " + fault.critical().orElseThrow().word());
        assertThat(keptBefore).isFalse();
        assertThat(sheet().marks().get(0).faultId()).contains(fault.id());
        assertThat(block.maeve().open("/block-sheets/" + sheet().id()).text()).contains(fault.text() + ".");
    }

    @Test
    void something_else_keeps_the_mark_and_leaves_the_words_for_later() {
        Step step = sided();
        block.open();

        open(step, Side.LEFT).press("Not yet").press("Something else: say it in words later");

        assertThat(sheet().marks().get(0).lacksReason()).isTrue();
    }

    @Test
    void stopped_is_kept_by_one_tap_and_then_points_to_first_aid() {
        Step step = sided();
        block.open();

        Page reasons = open(step, Side.LEFT).press("Stopped");
        BlockSheet atOnce = sheet();
        Page next = reasons.press(step.faults().get(0).text());

        assertThat(atOnce.marks())
                .hasSize(1)
                .allMatch(m -> m.mark() == Mark.STOPPED && m.faultId().isEmpty());
        assertThat(reasons.text()).contains("first aid, then the site’s accident book");
        assertThat(next.heading())
                .as("a stop ends the step")
                .isEqualTo(after(step).title());
        assertThat(sheet().marks().get(0).faultId())
                .contains(step.faults().get(0).id());
        assertThat(sheet().marks().get(0).observedAt())
                .isEqualTo(atOnce.marks().get(0).observedAt());
    }

    @Test
    void not_yet_can_still_become_stopped_on_the_reasons_screen() {
        Step step = sided();
        block.open();

        Page stopped = open(step, Side.LEFT).press("Not yet").press("Stopped");

        assertThat(stopped.heading()).isEqualTo("Stopped: what was seen?");
        assertThat(sheet().marks()).hasSize(1).allMatch(m -> m.mark() == Mark.STOPPED);
    }

    @Test
    void a_stopped_step_takes_no_other_mark_until_the_stop_is_undone() {
        Step step = sided();
        block.open();
        open(step, Side.LEFT).press("Stopped");

        Page over = mark(step, "left", "unaided");
        Page stopped = open(step, Side.LEFT);
        Page free = stopped.press("undo");

        assertThat(over.status()).isEqualTo(409);
        assertThat(over.text()).contains("a stop ends the step");
        assertThat(stopped.offers("Unaided")).isFalse();
        assertThat(free.offers("Unaided")).isTrue();
        assertThat(sheet().marks()).isEmpty();
    }

    @Test
    void every_mark_is_undone_by_one_tap() {
        block.open();
        for (Mark mark : Mark.values()) {
            Step step = sided();
            block.app
                    .app
                    .sheets()
                    .mark(sheet().id(), new Place(step.id(), Side.LEFT), mark, Optional.empty(), "", now());

            Page after = open(step, Side.LEFT).press("undo left");

            assertThat(sheet().marks()).isEmpty();
            assertThat(after.heading()).isEqualTo(step.title());
        }
    }

    @Test
    void the_same_form_sent_twice_is_kept_once() {
        block.open();
        Page page = open(sided(), Side.LEFT);

        page.press("Prompted");
        Page again = page.press("Prompted");

        assertThat(again.status()).isEqualTo(200);
        assertThat(rows("marks")).isEqualTo(1);
    }

    @Test
    void only_the_keeper_marks() {
        block.open();
        BlockSheet sheet = sheet();
        Step step = sided();
        Browser osric = block.app.as("Osric", Role.ASSESSOR);
        String address = StepView.address(sheet, step.id());

        assertThat(osric.open(address).offers("Unaided")).isFalse();
        assertThat(osric.open(address).text()).contains("Maeve keeps this sheet and marks it.");
        for (String deed : List.of("/mark", "/undo", "/answer")) {
            Page no = AtTheBlock.send(osric, address + deed, Map.of("side", "left", "mark", "unaided"));
            assertThat(no.status()).isEqualTo(409);
            assertThat(no.text()).contains("Only Maeve, who keeps this sheet, marks and closes it.");
        }
        assertThat(AtTheBlock.send(osric, "/block-sheets/" + sheet.id() + "/closing", Map.of())
                        .status())
                .isEqualTo(409);
        assertThat(sheet().marks()).isEmpty();
    }

    @Test
    void tutors_read_the_sheets_of_their_group_and_apprentices_none_that_is_open() {
        block.open();
        String address = "/block-sheets/" + sheet().id();
        Person tamsin = block.app.person("Tamsin", Role.TUTOR);
        Group group = block.app.app.groups().named("First year");
        block.app.app.groups().join(group, block.ada);
        block.app.app.groups().join(group, tamsin);

        assertThat(block.app.as("Tamsin", Role.TUTOR).open(address).heading()).isEqualTo("Ada on lamb 31");
        assertThat(block.app.as("Una", Role.TUTOR).get(address).statusCode()).isEqualTo(404);
        assertThat(block.app.as("Ada", Role.APPRENTICE).get(address).statusCode())
                .isEqualTo(404);
    }

    @Test
    void a_step_or_side_that_is_not_on_the_sheet_is_not_marked() {
        Step step = sided();
        block.openStage(step.stageId());
        Step elsewhere = lamb.steps().stream()
                .filter(s -> !s.stageId().equals(step.stageId()))
                .findFirst()
                .orElseThrow();

        assertThat(mark(elsewhere, "once", "unaided").text()).contains("is not on this sheet");
        assertThat(mark(elsewhere, "once", "unaided").status()).isEqualTo(409);
        assertThat(mark(step, "once", "unaided").text()).contains("is marked for the left side or the right side");
        assertThat(mark(step, "both", "unaided").status()).isEqualTo(409);
        String unknown = "/block-sheets/" + sheet().id() + "/steps/no-such-step/mark";
        assertThat(AtTheBlock.send(block.maeve(), unknown, Map.of("mark", "unaided"))
                        .status())
                .isEqualTo(404);
        assertThat(block.maeve().get(StepView.address(sheet(), elsewhere.id())).statusCode())
                .isEqualTo(404);
    }

    @Test
    void a_mark_or_reason_we_do_not_know_is_asked_for_again() {
        block.open();

        assertThat(mark(sided(), "left", "perfect").problems())
                .containsExactly("Mark: none of the four was pressed. Press one.");
        Page reason = AtTheBlock.send(
                block.maeve(),
                StepView.address(sheet(), sided().id()) + "/mark",
                Map.of("side", "left", "mark", "not-yet", "fault", "no-such-fault"));
        assertThat(reason.status()).isEqualTo(422);
        assertThat(reason.problems())
                .containsExactly("Reason: what was tapped does not belong to this step. Tap one of these.");
        assertThat(sheet().marks()).isEmpty();
    }

    @Test
    void a_question_is_asked_and_how_it_was_answered_is_kept() {
        Step step = sided();
        block.open();

        Page asked = open(step, Side.LEFT).follow("Ask the question");
        Page back = asked.press("Answered partly");

        assertThat(asked.heading()).isEqualTo("Ask Ada");
        assertThat(asked.text())
                .contains(step.questions().get(0).ask(), step.questions().get(0).answer());
        assertThat(back.heading()).isEqualTo(step.title());
        assertThat(sheet().answer(step.questions().get(0).id()))
                .map(Answer::answered)
                .contains(Answer.Known.PARTLY);
        assertThat(block.maeve().open("/block-sheets/" + sheet().id()).text()).contains("Asked: answered partly.");
    }

    @Test
    void an_open_sheet_is_found_again_next_morning_where_it_was_left() {
        block.open().follow("Begin with step 1").press("Unaided");
        block.app.clock.move(Duration.ofHours(10));

        Page today = block.app.as("Maeve", Role.ASSESSOR).open("/today");
        Page step = today.follow("Go on with step 2");

        assertThat(today.text()).contains("Ada on lamb 31", "1 of 44");
        assertThat(step.heading()).isEqualTo(lamb.steps().get(1).title());
    }

    @Test
    void the_newest_row_counts_and_the_log_agrees_with_the_tables() {
        Step step = sided();
        block.open();
        open(step, Side.LEFT).press("Unaided");
        open(step, Side.LEFT).press("Prompted");

        assertThat(sheet().mark(step.id(), Side.LEFT))
                .map(ribmark.blocksheet.Mark::mark)
                .contains(Mark.PROMPTED);
        assertThat(rows("marks")).isEqualTo(2);
        assertThat(block.app.app.verify().holds()).isTrue();
        assertThat(block.app.app.log().newest(1).get(0).text())
                .contains(block.app.app.curriculum().version());
    }

    private Page open(Step step, Side side) {
        return block.maeve().open(StepView.address(sheet(), new Place(step.id(), side)));
    }

    private Page mark(Step step, String side, String mark) {
        return AtTheBlock.send(
                block.maeve(), StepView.address(sheet(), step.id()) + "/mark", Map.of("side", side, "mark", mark));
    }

    private Step sided() {
        return lamb.steps().stream().filter(Step::eachSide).findFirst().orElseThrow();
    }

    private Step critical() {
        return lamb.steps().stream()
                .filter(s -> s.faults().stream().anyMatch(f -> f.critical().isPresent()))
                .findFirst()
                .orElseThrow();
    }

    private Step after(Step step) {
        return lamb.steps().get(step.number());
    }

    private BlockSheet sheet() {
        return block.app.app.sheets().allOpen().get(0);
    }

    private java.time.Instant now() {
        return block.app.clock.instant();
    }

    private int rows(String table) {
        return block.app
                .app
                .database()
                .reading(h -> h.createQuery("select count(*) from " + table)
                        .mapTo(Integer.class)
                        .one());
    }
}
