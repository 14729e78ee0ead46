package ribmark.blocksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.competence.Mark;
import ribmark.curriculum.Step;
import ribmark.testing.AtTheBlock;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class ClosingPagesTest {

    private final AtTheBlock block = new AtTheBlock();
    private Step step;

    @BeforeEach
    void openASheet() {
        block.open();
        step = block.app.app.curriculum().breakdown().steps().stream()
                .filter(Step::eachSide)
                .findFirst()
                .orElseThrow();
    }

    @AfterEach
    void stop() {
        block.close();
    }

    @Test
    void a_sheet_read_through_and_signed_is_closed_with_everything_said() {
        mark(Side.LEFT, Mark.UNAIDED);
        mark(Side.RIGHT, Mark.PROMPTED);
        Page review = review();

        HttpResponse<String> done = written(review)
                .fill("words-" + step.id() + "-right", "Started a finger off; moved after a word.")
                .pressAndStay("Close Ada's sheet on lamb 31");
        BlockSheet sheet = sheet();
        Closing closing = sheet.closing().orElseThrow();

        assertThat(review.text()).contains("One step, two marks: one unaided, one prompted.");
        assertThat(review.text()).contains("You, Maeve, say that you watched Ada do this one step on lamb 31 today.");
        assertThat(done.statusCode()).isEqualTo(303);
        assertThat(done.headers().firstValue("Location")).contains("/feedback/" + sheet.id());
        assertThat(closing.stage(step.stageId())).isEqualTo("Counted aloud from inside.");
        assertThat(closing.well()).isEqualTo("The outside hand.");
        assertThat(closing.change()).isEqualTo("Aim at the gristle.");
        assertThat(closing.next()).isEqualTo("The right side again.");
        assertThat(closing.nextDay()).isEqualTo(LocalDate.of(2026, 11, 27));
        assertThat(sheet.mark(step.id(), Side.RIGHT).orElseThrow().words())
                .isEqualTo("Started a finger off; moved after a word.");
        assertThat(sheet.mark(step.id(), Side.RIGHT).orElseThrow().mark()).isEqualTo(Mark.PROMPTED);
        assertThat(block.app.app.sheets().closedOf(block.ada.id())).containsExactly(sheet);
        assertThat(block.app.app.verify().holds()).isTrue();
    }

    @Test
    void a_closed_sheet_takes_nothing_more() {
        mark(Side.LEFT, Mark.UNAIDED);
        Page review = written(review());
        Page old = block.maeve().open(StepView.address(sheet(), new Place(step.id(), Side.LEFT)));
        review.pressAndStay("Close Ada's sheet on lamb 31");

        Page marked = old.press("Prompted");
        Page undone = old.press("undo");
        Page again = AtTheBlock.send(block.maeve(), address() + "/closing", Map.of());

        for (Page no : java.util.List.of(marked, undone, again)) {
            assertThat(no.status()).isEqualTo(409);
            assertThat(no.text()).contains("This sheet is closed.");
        }
        assertThat(sheet().mark(step.id(), Side.LEFT).orElseThrow().mark()).isEqualTo(Mark.UNAIDED);
        assertThat(block.maeve().open(address()).text()).contains("Closed on 25 Nov 2026.");
        assertThat(block.maeve().open(address() + "/closing").path()).isEqualTo(address());
        assertThat(block.app.as("Ada", Role.APPRENTICE).open(address()).text()).contains("Closed on 25 Nov 2026.");
        assertThat(block.app.as("Bram", Role.APPRENTICE).get(address()).statusCode())
                .isEqualTo(404);
    }

    @Test
    void sent_twice_it_is_closed_once_and_leads_to_the_same_page() {
        mark(Side.LEFT, Mark.UNAIDED);
        Page review = written(review());

        HttpResponse<String> first = review.pressAndStay("Close Ada's sheet on lamb 31");
        HttpResponse<String> second = review.pressAndStay("Close Ada's sheet on lamb 31");

        assertThat(second.statusCode()).isEqualTo(303);
        assertThat(second.headers().firstValue("Location"))
                .isEqualTo(first.headers().firstValue("Location"));
    }

    @Test
    void whoever_guesses_at_the_password_waits_a_quarter_of_an_hour() {
        mark(Side.LEFT, Mark.UNAIDED);
        Page review = review();
        for (int guess = 0; guess < 10; guess++) {
            review = written(review).fill("password", "guess number " + guess).press("Close Ada's sheet");
        }
        review = written(review).fill("password", TestApp.PASSWORD).press("Close Ada's sheet");
        assertThat(review.problems())
                .containsExactly(
                        "Your password: too many were tried for your name. Wait a quarter of an hour, then type it again.");
        assertThat(sheet().closing()).isEmpty();

        block.app.clock.move(Duration.ofMinutes(16));
        written(review).fill("password", TestApp.PASSWORD).press("Close Ada's sheet");
        assertThat(sheet().closing()).isPresent();
    }

    @Test
    void a_wrong_password_keeps_everything_typed_but_itself() {
        mark(Side.LEFT, Mark.UNAIDED);

        Page again =
                written(review()).fill("password", "not the one I sign in with").press("Close Ada's sheet");

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.problems())
                .containsExactly("Your password: it is not the one you sign in with. Type it again.");
        assertThat(again.all("#well").get(0).text()).isEqualTo("The outside hand.");
        assertThat(again.all("#stage-" + step.stageId()).get(0).text()).isEqualTo("Counted aloud from inside.");
        assertThat(again.all("#day").get(0).attr("value")).isEqualTo("2026-11-27");
        assertThat(again.body()).doesNotContain("not the one I sign in with");
        assertThat(sheet().isOpen()).isTrue();
    }

    @Test
    void everything_missing_is_named_at_once_in_the_words_of_its_field() {
        mark(Side.LEFT, Mark.NOT_YET);

        Page again = review().press("Close Ada's sheet on lamb 31");

        assertThat(again.problems())
                .containsExactly(
                        "Say why " + step.number() + " " + step.title()
                                + ", left was not yet: type what you saw, or go back and tap a reason.",
                        "Wholesale: nothing was typed. Type one sentence Ada can use.",
                        "One thing done well: nothing was typed. Type one thing you saw.",
                        "One thing to change: nothing was typed. Type one thing to do otherwise.",
                        "Next step: nothing was typed. Type what Ada does next.",
                        "Day: nothing was chosen. Choose when the next step is due.",
                        "Your password: nothing was typed. Type the one you sign in with.");
        assertThat(sheet().isOpen()).isTrue();
    }

    @Test
    void a_reason_tapped_or_typed_is_enough() {
        mark(Side.LEFT, Mark.STOPPED);
        mark(Side.RIGHT, Mark.NOT_YET);
        Page right = block.maeve().open(StepView.address(sheet(), new Place(step.id(), Side.RIGHT)));
        right.press("Not yet").press(step.faults().get(0).text());

        HttpResponse<String> done = written(review())
                .fill("words-" + step.id() + "-left", "Free hand behind the point.")
                .pressAndStay("Close Ada's sheet on lamb 31");

        assertThat(done.statusCode()).isEqualTo(303);
        assertThat(sheet().marksOf(step.id())).noneMatch(ribmark.blocksheet.Mark::lacksReason);
    }

    @Test
    void the_next_day_is_today_or_later_and_a_day() {
        mark(Side.LEFT, Mark.UNAIDED);

        assertThat(written(review())
                        .fill("day", "2026-11-24")
                        .press("Close Ada's sheet")
                        .problems())
                .containsExactly("Day: 24 Nov 2026 is past. Choose today or a later day.");
        assertThat(written(review())
                        .fill("day", "Friday")
                        .press("Close Ada's sheet")
                        .problems())
                .containsExactly("Day: “Friday” is not a day. Type it like 2026-11-27.");
        assertThat(written(review())
                        .fill("day", "2026-11-25")
                        .pressAndStay("Close Ada's sheet")
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void a_sheet_without_a_mark_is_not_closed() {
        Page review = review();
        Page no = AtTheBlock.send(block.maeve(), address() + "/closing", Map.of("deed", "close"));

        assertThat(review.offers("Close")).isFalse();
        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("Mark at least one step before you close it.");
    }

    @Test
    void left_open_nothing_typed_is_lost() {
        mark(Side.LEFT, Mark.PROMPTED);

        Page left = written(review())
                .fill("words-" + step.id() + "-left", "After a word.")
                .fill("day", "")
                .press("Leave it open");
        Page found = review();

        assertThat(left.path()).isEqualTo(address());
        assertThat(left.text()).contains("After a word.");
        assertThat(found.all("#well").get(0).text()).isEqualTo("The outside hand.");
        assertThat(found.all("#words-" + step.id() + "-left").get(0).text()).isEqualTo("After a word.");
        assertThat(sheet().isOpen()).isTrue();
        assertThat(block.app.app.verify().holds()).isTrue();
    }

    @Test
    void each_line_leads_back_to_its_step() {
        mark(Side.LEFT, Mark.UNAIDED);

        Page back = review().follow("change");

        assertThat(back.heading()).isEqualTo(step.title());
    }

    private Page written(Page review) {
        return review.fill("stage-" + step.stageId(), "Counted aloud from inside.")
                .fill("well", "The outside hand.")
                .fill("change", "Aim at the gristle.")
                .fill("next", "The right side again.")
                .fill("day", "2026-11-27")
                .fill("password", TestApp.PASSWORD);
    }

    private void mark(Side side, Mark mark) {
        block.app
                .app
                .sheets()
                .mark(sheet().id(), new Place(step.id(), side), mark, Optional.empty(), "", block.app.clock.instant());
    }

    private Page review() {
        return block.maeve().open(address() + "/closing");
    }

    private String address() {
        return "/block-sheets/" + sheet().id();
    }

    private BlockSheet sheet() {
        return block.app.app.sheets().all().get(0);
    }
}
