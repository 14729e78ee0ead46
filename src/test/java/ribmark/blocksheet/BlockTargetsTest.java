package ribmark.blocksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Rectangle;
import org.openqa.selenium.WebElement;
import ribmark.curriculum.Step;
import ribmark.testing.AtTheBlock;
import ribmark.testing.Chromium;
import ribmark.testing.TestApp;

/**
 * What wet gloves need, measured in a real browser: marks of 104 CSS pixels and more, 12 between neighbours, 48 around the one
 * that stops; all of it without scrolling on a tablet. The sizes are our own.
 */
class BlockTargetsTest {

    private final AtTheBlock block = new AtTheBlock();

    @AfterEach
    void stop() {
        block.close();
    }

    @Test
    void every_step_of_the_lamb_fits_on_a_tablet_and_its_marks_can_be_hit() {
        block.open();
        BlockSheet sheet = block.app.app.sheets().allOpen().get(0);
        List<Step> steps = block.app.app.curriculum().breakdown().steps();
        try (Chromium browser = signedIn()) {
            for (Dimension size : Chromium.SIZES) {
                browser.size(size);
                for (Step step : steps) {
                    browser.open(StepView.address(sheet, step.id()));
                    checkStep(browser, size, step.number() + " " + step.title() + " at " + size);
                }
            }
        }
    }

    @Test
    void every_reason_can_be_hit_and_stands_on_a_tablet_without_scrolling() {
        block.open();
        BlockSheet sheet = block.app.app.sheets().allOpen().get(0);
        try (Chromium browser = signedIn()) {
            for (Step step : block.app.app.curriculum().breakdown().steps()) {
                String reasons = StepView.address(sheet, step.id()) + "/reasons?side="
                        + step.sides().get(0).word();
                Dimension lying = Chromium.SIZES.get(0);
                checkReasons(browser.size(lying).open(reasons + "&mark=not-yet"), lying);
                checkReasons(browser.open(reasons + "&mark=stopped"), lying);
            }
        }
    }

    /** What a reader's eye wants at the desk: both plates of a carcase in one line. */
    @Test
    void the_plates_of_a_carcase_stand_side_by_side_on_a_tablet_lying() {
        try (Chromium browser = signedIn()) {
            block.open();
            browser.size(Chromium.SIZES.get(0)).open("/today");
            List<WebElement> plates = browser.all("td .plates .plate");
            assertThat(plates).hasSize(2);
            assertThat(plates.get(0).getRect().y).isEqualTo(plates.get(1).getRect().y);
        }
    }

    @Test
    void every_answer_can_be_hit() {
        block.open();
        BlockSheet sheet = block.app.app.sheets().allOpen().get(0);
        try (Chromium browser = signedIn()) {
            for (Step step : block.app.app.curriculum().breakdown().steps()) {
                browser.size(Chromium.SIZES.get(2)).open(StepView.address(sheet, step.id()) + "/question");
                smallest(browser, ".plate--keep", 104);
                smallest(browser, ".plate", 64);
                assertThat(browser.scrollsSideways()).isFalse();
            }
        }
    }

    @Test
    void nothing_is_wrong_with_the_pages_for_those_who_cannot_see_or_point() {
        block.open();
        BlockSheet sheet = block.app.app.sheets().allOpen().get(0);
        Step sided = block.app.app.curriculum().breakdown().steps().stream()
                .filter(Step::eachSide)
                .findFirst()
                .orElseThrow();
        Place left = new Place(sided.id(), sided.sides().get(0));
        block.app
                .app
                .sheets()
                .mark(
                        sheet.id(),
                        left,
                        ribmark.competence.Mark.NOT_YET,
                        java.util.Optional.of(sided.faults().get(0).id()),
                        "",
                        block.app.clock.instant());
        Map<String, String> pages = Map.of(
                "today", "/today",
                "opening", "/block-sheets/new?carcase=" + block.lamb.id(),
                "sheet", "/block-sheets/" + sheet.id(),
                "step", StepView.address(sheet, sided.id()),
                "reasons", StepView.address(sheet, sided.id()) + "/reasons?mark=stopped&side=right",
                "question", StepView.address(sheet, sided.id()) + "/question",
                "closing", "/block-sheets/" + sheet.id() + "/closing");
        try (Chromium browser = signedIn()) {
            for (Dimension size : Chromium.SIZES) {
                browser.size(size);
                pages.forEach((name, address) -> {
                    browser.open(address);
                    assertThat(browser.violations()).as(name + " at " + size).isEmpty();
                    assertThat(browser.scrollsSideways())
                            .as(name + " at " + size)
                            .isFalse();
                });
            }
        }
    }

    private Chromium signedIn() {
        Chromium browser = Chromium.at(block.app.address);
        browser.signIn("Maeve", TestApp.PASSWORD);
        return browser;
    }

    private static void checkStep(Chromium browser, Dimension size, String where) {
        List<Rectangle> marks = boxes(browser, ".mark");
        assertThat(marks).as(where).hasSize(4);
        assertThat(marks).as(where).allMatch(box -> box.height >= 104 && box.width >= 104);
        for (int one = 0; one < marks.size(); one++) {
            for (int other = one + 1; other < marks.size(); other++) {
                assertThat(gap(marks.get(one), marks.get(other)))
                        .as(where)
                        .isGreaterThanOrEqualTo(other == 3 ? 48 : 12);
            }
        }
        assertThat(boxes(browser, ".plates--foot .plate")).as(where).allMatch(box -> box.height >= 64);
        if (size.width >= 768) {
            assertThat(boxes(browser, ".mark, .plates--foot .plate"))
                    .as(where)
                    .allMatch(box -> box.y + box.height <= size.height);
        }
        assertThat(browser.scrollsSideways()).as(where).isFalse();
    }

    private static void checkReasons(Chromium browser, Dimension size) {
        smallest(browser, ".reasons .plate, .mark", 104);
        assertThat(boxes(browser, ".reasons .plate, .plates--foot .plate, .mark"))
                .as(browser.where() + " at " + size)
                .allMatch(box -> box.y + box.height <= size.height);
        assertThat(browser.scrollsSideways()).isFalse();
    }

    private static void smallest(Chromium browser, String selector, int height) {
        assertThat(boxes(browser, selector))
                .as(selector + " at " + browser.where())
                .allMatch(box -> box.height >= height);
    }

    @SuppressWarnings("unchecked")
    private static List<Rectangle> boxes(Chromium browser, String selector) {
        List<List<Number>> found = (List<List<Number>>) browser.ask(
                "return [...document.querySelectorAll(arguments[0])].map(e => e.getBoundingClientRect())"
                        + ".map(b => [b.x, b.y, b.height, b.width])",
                selector);
        return found.stream()
                .map(b -> new Rectangle(
                        b.get(0).intValue(),
                        b.get(1).intValue(),
                        b.get(2).intValue(),
                        b.get(3).intValue()))
                .toList();
    }

    private static int gap(Rectangle one, Rectangle other) {
        int across = Math.max(other.x - (one.x + one.width), one.x - (other.x + other.width));
        int down = Math.max(other.y - (one.y + one.height), one.y - (other.y + other.height));
        return Math.max(across, down);
    }
}
