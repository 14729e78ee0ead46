package ribmark.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.carcase.Intake;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.testing.Weighing;
import ribmark.web.Role;

/**
 * The worked checks of the weighing model typed in by hand; their causes, values and probabilities were reckoned for the model and
 * stand in its own checks. Other weights are invented.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SlipQuestionPagesTest {

    private static final List<String> PIECES = List.of(
            "fores.fores.once",
            "middle.middle.once",
            "legs.legs-chump-on.once",
            "kidneys.kidneys.once",
            "kidney-fat.kidney-fat.once");

    private final TestApp app = new TestApp();

    @AfterAll
    void stop() {
        app.close();
    }

    private Page weighed(Weighing on, String... kilograms) {
        Page last = null;
        for (int i = 0; i < kilograms.length; i++) {
            last = on.weigh(PIECES.get(i), kilograms[i]);
        }
        return last;
    }

    private Page swapped(Weighing on) {
        return weighed(on, "7.310", "4.520", "6.640", "0.100", "0.610");
    }

    private void holds() {
        assertThat(app.app.verify().holds()).as(app.app.verify().why()).isTrue();
    }

    @Test
    void digits_swapped_in_the_middle_are_asked_about_and_put_right_in_one_press() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = swapped(on);

        assertThat(asked.heading()).isEqualTo("Is the middle right?");
        assertThat(asked.text())
                .contains("You typed 4.520. With 5.420, two digits the other way round, the gap is 0.040 kg and lamb")
                .contains(" balances.")
                .contains("Middle? 4.520 22.5 26.9")
                .contains("Not scored. The pieces are 0.940 ± 0.012 kg short of the carcase;")
                .contains("92 in 100")
                .contains("Provisional");
        assertThat(asked.offers("Use 5.420 kg")).isTrue();
        assertThat(asked.offers("Weigh the middle again")).isTrue();

        Page list = asked.press("Use 5.420 kg");

        assertThat(list.text())
                .contains("Balanced. The pieces are 0.040")
                .contains("Middle: 4.520 kg, off the list")
                .contains("“Digits swapped. 5.420 kg was used instead.”")
                .contains("Asked: digits swapped? Maeve")
                .doesNotContain("One question is open");
        holds();
    }

    @Test
    void the_very_digits_somebody_typed_are_the_ones_that_may_have_changed_round() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = weighed(on, "7.310", "4,52", "6.640", "0.100", "0.610");

        assertThat(asked.text())
                .contains("With 5.420, two digits the other way round")
                .contains("94 in 100");
        Page list = asked.press("Use 5.420 kg");

        assertThat(list.text()).contains("As typed “4,52”").contains("As typed “0.610”");
        assertThat(list.text()).doesNotContain("As typed “5.420”");
        holds();
    }

    @Test
    void weights_kept_for_each_other_s_piece_are_exchanged_together() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = weighed(on, "5.420", "7.310", "6.640", "0.100", "0.610");

        assertThat(asked.heading()).isEqualTo("Were the fores and the middle exchanged?");
        assertThat(asked.text())
                .contains("You typed 5.420 for the fores and 7.310 for the middle.")
                .contains("Fores? 5.420")
                .contains("Middle? 7.310")
                .contains("Balanced.");

        Page list = asked.press("Exchange the two weights");

        assertThat(list.text()).contains("Fores 7.310 36.3").contains("Middle 5.420 26.9");
        assertThat(list.text()).contains("Fores: 5.420 kg, off the list").contains("Middle: 7.310 kg, off the list");
        holds();
    }

    @Test
    void a_weight_is_kept_with_words_and_not_asked_about_again() {
        Weighing on = new Weighing(app, "20.120");
        Page keep = swapped(on).follow("Keep 4.520 kg and say why");

        Page none = keep.press("Keep 4.520 kg");
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.problems().get(0)).startsWith("Why it stays: nothing was typed.");

        Page list = none.fill("words", "Read off the scale twice").press("Keep 4.520 kg");

        assertThat(list.path()).isEqualTo(on.path());
        assertThat(list.text())
                .contains("Middle 4.520")
                .contains("kept as it was, “Read off the scale twice”")
                .doesNotContain("One question is open");
        assertThat(on.browser.open(on.path() + "/question").path()).isEqualTo(on.path());
        holds();
    }

    @Test
    void one_side_of_a_pair_is_asked_about_by_its_side() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = weighed(on, "7.310", "5.420");
        asked = on.weigh("leg-and-chump.legs-chump-on.left", "3.320");
        asked = on.weigh("leg-and-chump.legs-chump-on.right", "33.20");

        assertThat(asked.heading()).isEqualTo("Is the right leg and chump right?");
        Page list = asked.press("Use 3.320 kg");
        assertThat(list.text()).contains("off the list").doesNotContain("One question is open");
    }

    @Test
    void a_tray_that_stayed_in_is_asked_about_and_weighing_again_comes_first() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = weighed(on, "7.310", "6.420", "6.640", "0.100", "0.610");

        assertThat(asked.heading()).isEqualTo("Is the middle right?");
        assertThat(asked.text()).contains("reckoned, not read").contains("With 5.350, the weight of a tray taken off");
        assertThat(asked.all("button.plate--solid").get(0).text()).isEqualTo("Weigh the middle again");
    }

    private Page carcaseSwapped(Weighing on) {
        return weighed(on, "7.310", "5.420", "6.640", "0.100", "0.610");
    }

    @Test
    void a_carcase_doubted_more_than_any_piece_is_asked_about_and_put_right_in_one_press() {
        Weighing on = new Weighing(app, "21.020");
        Page asked = carcaseSwapped(on);

        assertThat(asked.heading())
                .isEqualTo("Is the weight of " + on.lamb.name().replace('\u00a0', ' ') + " right?");
        assertThat(asked.text())
                .contains(
                        "whole was written down as 21.020. With 20.120, two digits the other way round, the gap is 0.040")
                .contains(" balances.")
                .contains("Provisional");
        Page list = asked.press("Use 20.120 kg");

        assertThat(list.text())
                .doesNotContain("One question is open")
                .contains("Balanced. The pieces are 0.040")
                .contains("whole: 20.120 kg")
                .contains("At intake 21.020 kg cold, Maeve")
                .contains("Asked: digits swapped? Maeve")
                .contains("the likely weight was taken instead");
        assertThat(on.browser.open("/carcases/" + on.lamb.id()).text())
                .contains("20.120 kg cold, kidneys in")
                .contains("Weight taken over 20.120 kg, Maeve");
        holds();
    }

    @Test
    void the_weight_of_a_carcase_is_kept_with_words_and_the_next_is_asked_about_only_when_likelier_than_not() {
        Weighing on = new Weighing(app, "21.020");
        Page keeping = carcaseSwapped(on).follow("Keep 21.020 kg and say why");

        Page silent = keeping.press("Keep 21.020 kg");
        assertThat(silent.status()).isEqualTo(422);
        assertThat(silent.problems()).hasSize(1);
        Page list = silent.fill("words", "I read the rail twice.").press("Keep 21.020 kg");

        assertThat(list.text())
                .contains("whole: 21.020 kg")
                .contains("kept as it was, “I read the rail twice.”")
                .doesNotContain("Is the weight of");
        assertThat(on.browser.open(on.path() + "/question").text()).doesNotContain("Is the weight of");
        holds();
    }

    @Test
    void a_carcase_weighed_again_counts_with_its_new_weight_as_typed() {
        Weighing on = new Weighing(app, "21.020");
        Page again = carcaseSwapped(on).follow("Weigh lamb " + on.lamb.number() + " again");

        Page wrong = again.fill("weight", "1,234").press("Keep this weight");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.problems()).hasSize(1);
        assertThat(wrong.problems().get(0)).startsWith("Weight of the carcase: “1,234” could be thousands");
        Page list = wrong.fill("weight", "20,12").press("Keep this weight");

        assertThat(list.text())
                .contains("Balanced. The pieces are 0.040")
                .contains("Weighed again, typed “20,12” 20.120 kg, Maeve")
                .contains("Asked: digits swapped? Maeve")
                .contains("weighed again");
        holds();
    }

    @Test
    void an_answer_about_a_carcase_pressed_in_two_windows_counts_once() {
        Weighing on = new Weighing(app, "21.020");
        Page asked = carcaseSwapped(on);
        Page window = on.browser.open(on.path() + "/question");

        asked.press("Use 20.120 kg");
        Page late = window.press("Use 20.120 kg");

        assertThat(late.status()).isEqualTo(409);
        assertThat(app.app.carcases().find(on.lamb.id()).weights()).hasSize(1);
        holds();
    }

    @Test
    void weighing_again_takes_the_reading_off_and_goes_back_to_the_piece() {
        Weighing on = new Weighing(app, "20.120");
        Page back = swapped(on).press("Weigh the middle again");

        assertThat(back.path()).startsWith(on.path() + "?stage=");
        assertThat(back.all("input[name=piece][checked]").get(0).attr("value")).isEqualTo("middle.middle.once");
        assertThat(back.text())
                .contains("Middle: 4.520 kg, off the list")
                .contains("“Digits swapped? Weighed again.”")
                .contains("No weight yet for middle");
        assertThat(back.fill("weight", "5.420").press("Keep this weight").text())
                .contains("Balanced.");
        holds();
    }

    @Test
    void a_sound_weigh_up_is_asked_nothing_and_says_that_nothing_stands_out() {
        Weighing on = new Weighing(app, "20.120");
        Page page = weighed(on, "7.310", "5.420", "6.640", "0.100", "0.610");

        assertThat(page.path()).startsWith(on.path() + "?stage=");
        assertThat(page.text())
                .doesNotContain("One question is open")
                .contains("What the weights would fit")
                .contains("Nothing stands out. Nothing moved:")
                .contains("right as often as that table is right");
    }

    @Test
    void the_question_stands_in_nobody_s_way_and_is_offered_until_it_is_answered() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = weighed(on, "7.310", "54.20");
        assertThat(asked.heading()).isEqualTo("Is the middle right?");
        assertThat(asked.text())
                .contains("You typed 54.200. With 5.420, the decimal point one place along, it would go with");

        Page list = on.open();
        assertThat(list.text()).contains("One question is open: Is the middle right?");
        assertThat(on.weigh(PIECES.get(2), "6.640").heading()).isEqualTo("Is the middle right?");
        assertThat(list.follow("Is the middle right?").press("Use 5.420 kg").text())
                .contains("Legs 6.640")
                .contains("Middle 5.420");
    }

    @Test
    void a_piece_on_the_list_twice_is_taken_off_once() {
        Weighing on = new Weighing(app, "20.120");
        weighed(on, "7.310", "5.420", "6.640", "0.100", "0.610");
        Page asked = on.weigh(PIECES.get(1), "5.425");

        assertThat(asked.heading()).isEqualTo("Was the middle weighed twice?");

        Page list = asked.press("Take the second 5.425 kg off the list");
        assertThat(list.text()).contains("Balanced. The pieces are 0.040").contains("Middle: 5.425 kg, off the list");
        holds();
    }

    @Test
    void a_tutor_reads_that_a_question_is_open_and_cannot_answer_it() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = swapped(on);
        Browser petra = app.as("Petra", Role.TUTOR);
        String token = petra.open("/role").all("input[name=token]").get(0).attr("value");

        assertThat(petra.open(on.path()).text()).contains("One question is open: Is the middle right?");
        assertThat(petra.get(on.path() + "/question").statusCode()).isEqualTo(404);
        List<Map.Entry<String, String>> theirs = new java.util.ArrayList<>(asked.fieldsOf("Use 5.420 kg"));
        theirs.removeIf(field -> field.getKey().equals("token"));
        theirs.add(Map.entry("token", token));
        assertThat(petra.rawPost(on.path() + "/question", theirs).statusCode()).isEqualTo(404);
        assertThat(on.open().text()).contains("Middle 4.520");
    }

    @Test
    void an_answer_pressed_twice_or_in_two_windows_counts_once() {
        Weighing on = new Weighing(app, "20.120");
        Page asked = swapped(on);
        Page window = on.browser.open(on.path() + "/question");

        asked.press("Use 5.420 kg");
        asked.press("Use 5.420 kg");
        Page late = window.press("Use 5.420 kg");

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("This question is open no more");
        assertThat(app.app.weighUps().of(on.lamb.id())).hasSize(6);
        holds();
    }

    @Test
    void what_was_counted_speaks_before_what_was_weighed() {
        Intake in = ribmark.testing.Carcases.lambOf("20.120");
        Weighing on = new Weighing(app, in);
        weighed(on, "7.310", "5.420", "6.640", "0.100", "0.610");
        app.app.carcases().count(on.lamb, java.util.OptionalInt.of(13), java.util.OptionalInt.empty(), on.maeve);

        String text = on.open().text();

        assertThat(text).contains("A count speaks before the weights.");
        assertThat(text.indexOf("Counted. Thoracic vertebrae")).isLessThan(text.indexOf("Nothing stands out."));
    }
}
