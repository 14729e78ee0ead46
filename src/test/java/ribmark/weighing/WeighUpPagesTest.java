package ribmark.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.Draft;
import ribmark.carcase.Checks;
import ribmark.carcase.Decision;
import ribmark.carcase.Intake;
import ribmark.testing.Browser;
import ribmark.testing.Carcases;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.testing.WeighUps;
import ribmark.testing.Weighing;
import ribmark.web.Role;
import ribmark.weighup.Balances;
import ribmark.weighup.ScoredCut;
import ribmark.weighup.WeighUpScore;

/** Weights are invented unless said otherwise; every test weighs a lamb of its own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WeighUpPagesTest {

    private final TestApp app = new TestApp();

    @AfterAll
    void stop() {
        app.close();
    }

    /** The carcase of the worked example, its pieces typed in by hand. */
    private Weighing example() {
        Weighing on = new Weighing(app, "20.120");
        on.weigh("fores.fores.once", "7.310");
        on.weigh("middle.middle.once", "5.420");
        on.weigh("legs.legs-chump-on.once", "6.580");
        on.weigh("kidneys.kidneys.once", "0.100");
        on.weigh("kidney-fat.kidney-fat.once", "0.640");
        return on;
    }

    private static WeighUps exampleInAFile() {
        return WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "7.310")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.580")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640");
    }

    @Test
    void the_worked_example_typed_in_says_what_the_score_of_its_file_says() {
        Page page = example().open();
        WeighUpScore file = Weighing.scored(exampleInAFile());

        assertThat(page.text())
                .contains(
                        "Balanced. The pieces are 0.070 ± 0.012 kg short of the carcase; up to 0.201 kg (1 %) balances.");
        assertThat(page.text()).contains("Gap 0.070 0.3");
        assertThat(file.balance().verdict().word()).isEqualTo("balanced");
        assertThat(file.cuts()).hasSize(5);
        for (ScoredCut cut : file.cuts()) {
            CutYieldLine line = new CutYieldLine(cut);
            assertThat(page.text()).contains(line.verdict());
            assertThat(page.text()).contains(line.zeta());
        }
    }

    private record CutYieldLine(ScoredCut cut) {

        String verdict() {
            return Words.capital(cut.verdict().orElseThrow().word()) + ". "
                    + cut.yield().row().name() + ": "
                    + Balances.net(cut.readings()).kilograms() + " kg. "
                    + String.format(Locale.ROOT, "%.1f", cut.yield().percent()) + " % of the carcase. Expected "
                    + String.format(Locale.ROOT, "%.1f", cut.yield().expected()) + " %. Score "
                    + String.format(Locale.ROOT, "%.0f", cut.score().orElseThrow());
        }

        String zeta() {
            return "Distance " + String.format(Locale.ROOT, "%.3f", cut.yield().zeta()) + " spreads (zeta), score "
                    + String.format(Locale.ROOT, "%.1f", cut.score().orElseThrow());
        }
    }

    @Test
    void each_entry_says_how_far_the_balance_has_come_and_what_is_missing() {
        Weighing on = new Weighing(app, "20.120");

        Page first = on.weigh("fores.fores.once", "7.310");
        Page second = on.weigh("middle.middle-kidneys-in.once", "6.160");

        assertThat(first.text()).contains("Kept last: fores, 7.310 kg.");
        assertThat(first.text())
                .contains("Incomplete. No weight yet for middle with its kidneys and fat and legs with chumps."
                        + " So far 7.310 of 20.120 kg; 12.810 ± 0.007 kg still to come.");
        assertThat(second.text())
                .contains(
                        "No weight yet for legs with chumps. So far 13.470 of 20.120 kg; 6.650 ± 0.009 kg still to come.");
        assertThat(second.text()).contains("provisional");
    }

    @Test
    void a_comma_is_a_point_and_thousands_are_questioned() {
        Weighing on = new Weighing(app, "20.120");

        assertThat(on.weigh("fores.fores.once", "7,31").text()).contains("fores, 7.310 kg");

        Page questioned = on.weigh("middle.middle.once", "5,420");
        assertThat(questioned.status()).isEqualTo(422);
        assertThat(questioned.problems())
                .containsExactly(
                        "Weight: “5,420” could be thousands or thousandths. Type it with a point, for example 5.420.");
        assertThat(questioned.all("#weight").get(0).attr("value")).isEqualTo("5,420");
        assertThat(questioned.all("input[name=piece][checked]").get(0).attr("value"))
                .isEqualTo("middle.middle.once");
        assertThat(on.open().text()).doesNotContain("middle, 5.420");
    }

    @Test
    void nonsense_is_one_sentence_in_the_words_of_its_field() {
        Weighing on = new Weighing(app, "20.120");

        assertThat(on.weigh("fores.fores.once", "7.3105").problems().get(0))
                .startsWith("Weight: “7.3105” is finer than a gram.");
        assertThat(on.weigh("fores.fores.once", "heavy").problems().get(0))
                .startsWith("Weight: “heavy” is not a weight.");
        assertThat(on.weigh("fores.fores.once", "0").problems().get(0)).startsWith("Weight: nothing weighs 0.000 kg.");
        assertThat(on.weigh("fores.fores.once", "7310").problems().get(0))
                .startsWith("Weight: 7310.000 kg is more than a block can bear.");
        assertThat(on.open()
                        .fill("weight", "1.0")
                        .press("Keep this weight")
                        .problems()
                        .get(0))
                .startsWith("What is on the scale: nothing was chosen.");
        assertThat(on.onTheScale("fores.fores.once", "0.6")
                        .choose("tray", "other")
                        .fill("tare", "0.850")
                        .press("Keep this weight")
                        .problems()
                        .get(0))
                .startsWith("Tray: 0.850 kg is not less than 0.600 kg");
        assertThat(on.open().text()).contains("Nothing has been weighed yet.");
    }

    @Test
    void more_off_than_on_is_kept_and_not_scored_and_says_why() {
        Weighing on = new Weighing(app, "20.120");
        Page heavy = on.weigh("fores.fores.once", "23.100");
        assertThat(heavy.status()).isEqualTo(200);
        assertThat(heavy.text()).contains("Already 2.980 ± 0.007 kg more came off than went on.");

        on.weigh("middle.middle-kidneys-in.once", "6.160");
        on.weigh("legs.legs-chump-on.once", "6.580");
        Page page = on.open();

        assertThat(page.text())
                .contains(
                        "Not scored. The pieces are 15.720 ± 0.010 kg more than the carcase: more came off than went on.");
        assertThat(page.text()).contains("Not scored. Fores: 23.100 kg. 114.8 % of the carcase. Expected 36.3 %.");
        assertThat(page.text()).doesNotContain("Score 0");
    }

    @Test
    void a_struck_reading_stays_written_and_counts_no_more() {
        Weighing on = new Weighing(app, "20.120");
        on.weigh("fores.fores.once", "3.710");
        Page page = on.open();

        Page noReason = page.press("Take Fores, 3.710 kg off the list");
        assertThat(noReason.status()).isEqualTo(422);
        assertThat(noReason.problems().get(0)).startsWith("Why it comes off: nothing was typed.");

        String field = page.all("input[name^=why-]").get(0).attr("name");
        Page struck = page.fill(field, "read wrongly").press("Take Fores, 3.710 kg off the list");
        assertThat(struck.text()).contains("Nothing has been weighed yet.").contains("Fores: 3.710 kg, off the list");
        assertThat(struck.text()).contains("Taken off the list by Maeve").contains("“read wrongly”");
        assertThat(on.weigh("fores.fores.once", "7.310").text()).contains("So far 7.310 of 20.120 kg");
        assertThat(app.app.verify().holds()).isTrue();
    }

    @Test
    void a_reading_taken_off_by_two_people_at_once_is_taken_off_once() {
        Weighing on = new Weighing(app, "20.120");
        on.weigh("fores.fores.once", "3.710");
        Page page = on.open();
        Page window = on.open();
        Page another = on.open();
        String field = page.all("input[name^=why-]").get(0).attr("name");
        assertThat(page.fill(field, "read wrongly").press("Take Fores").text()).contains("off the list");

        Page late = window.fill(field, "wrong").press("Take Fores");
        Page silent = another.fill(field, "").press("Take Fores");

        assertThat(List.of(late.status(), silent.status())).containsOnly(409);
        assertThat(silent.text()).contains("This reading is off the list already.");
    }

    @Test
    void one_side_of_a_pair_is_judged_at_half_and_the_other_is_missing() {
        Weighing on = new Weighing(app, "20.120");

        Page page = on.weigh("leg-and-chump.legs-chump-on.left", "3.310");

        WeighUpScore file = Weighing.scored(
                WeighUps.on("uk-wholesale").cold("20.120").piece("legs-chump-on", "3.310", ", \"side\": \"left\""));
        ScoredCut cut = file.cuts().get(0);
        assertThat(page.text()).contains("legs with chumps, right");
        assertThat(page.text())
                .contains("Legs with chumps, left: 3.310 kg. 16.5 % of the carcase. Expected 16.6 %. Score "
                        + String.format(Locale.ROOT, "%.0f", cut.score().orElseThrow()));
        assertThat(page.text())
                .contains(String.format(Locale.ROOT, "%.3f spreads", cut.yield().zeta()));
    }

    @Test
    void halves_weighed_after_the_pair_are_held_against_it_and_not_added() {
        Weighing on = example();
        on.weigh("leg-and-chump.legs-chump-on.left", "3.280");
        Page one = on.open();
        assertThat(one.text()).contains("Pieces together 20.050");
        on.weigh("leg-and-chump.legs-chump-on.right", "3.290");
        Page both = on.open();

        assertThat(both.text()).contains("Pieces together 20.040");
        assertThat(both.text()).contains("Out of the legs").contains("Balanced. The pieces are 0.010");
    }

    @Test
    void several_levels_stand_side_by_side_and_the_coarsest_is_balanced_with_the_carcase() {
        Weighing on = example();
        on.weigh("scrag.scrag.once", "0.760");
        on.weigh("single-fore.shoulders.left", "3.260");
        Page page = on.weigh("single-fore.shoulders.right", "3.270");

        WeighUpScore file = Weighing.scored(WeighUps.on("uk-primals", "uk-joints")
                .cold("20.120")
                .piece("fores", "7.310")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.580")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640")
                .piece("scrag", "0.760")
                .piece("shoulders", "3.260", ", \"side\": \"left\"")
                .piece("shoulders", "3.270", ", \"side\": \"right\""));
        assertThat(file.innerBalances()).hasSize(1);
        assertThat(page.text()).contains("Out of the fores").contains("The pieces are 0.020");
        for (ScoredCut cut : file.cuts()) {
            assertThat(page.text()).contains(new CutYieldLine(cut).verdict());
        }
    }

    @Test
    void a_piece_weighed_later_than_its_row_means_is_balanced_and_not_scored() {
        Weighing on = new Weighing(app, "20.120");
        on.onTheScale("fores.fores.once", "7.010").choose("later", "yes").press("Keep this weight");
        Page page = on.weigh("leg.legs-chump-off.left", "2.500");

        assertThat(page.text())
                .contains("Not scored. Fores: 7.010 kg. 34.8 % of the carcase. Weighed later, trimmed or boned since;"
                        + " the table expects it as parted, bone in. Balanced only");
        assertThat(page.text())
                .contains(
                        "Weighed aitch and tail bones out; the table expects it tail and aitch bone in. Balanced only");
    }

    @Test
    void bones_out_of_a_weighed_piece_are_balanced_with_it_and_what_is_missing_is_named() {
        Weighing on = example();
        on.weigh("leg.legs-chump-off.left", "2.300");
        Page page = on.weigh("aitch-bone.left", "0.300");

        assertThat(page.text()).contains("Pieces together 20.050");
        assertThat(page.text()).contains("Out of the legs with chumps");
        assertThat(page.text()).contains("back and tail bone, left").contains("aitch bone, right");
    }

    @Test
    void trim_says_what_it_was_cut_from_once_something_larger_was_weighed() {
        Weighing on = example();

        Page asked = on.weigh("trim.once", "0.200");
        assertThat(asked.problems().get(0)).startsWith("Came out of: nothing was chosen for the trim.");

        Page kept =
                on.onTheScale("trim.once", "0.200").choose("partOf", "fores").press("Keep this weight");
        assertThat(kept.text()).contains("Pieces together 20.050").contains("Out of the fores");
    }

    @Test
    void a_cut_is_scored_for_whoever_s_sheet_has_the_step_that_frees_it() {
        Weighing on = new Weighing(app, "20.120");
        BlockSheet ada = on.sheet("Ada", Side.BOTH, "fores-saw");
        on.sheet("Bram", Side.BOTH, "middle-off");

        on.weigh("fores.fores.once", "7.310");
        Page page = on.weigh("middle.middle-kidneys-in.once", "6.160");

        assertThat(page.text()).contains("What Ada freed Within. Fores: 7.310 kg.");
        assertThat(page.text()).contains("What Bram freed Within. Middle with its kidneys and fat: 6.160 kg.");
        assertThat(app.app.weighed().forSheet(ada)).extracting(PageLine::thing).containsExactly("Fores");
    }

    @Test
    void a_closed_sheet_is_credited_nothing_more_and_the_page_says_so() {
        Weighing on = new Weighing(app, "20.120");
        BlockSheet ada = on.sheet("Ada", Side.BOTH, "fores-saw", "middle-off");
        Page before = on.weigh("fores.fores.once", "7.310");
        assertThat(before.text()).doesNotContain("Closed:");
        Page open = on.onTheScale("middle.middle.once", "5.420")
                .choose("sheet", ada.id().toString());
        app.app.sheets().close(ada.id(), LocalDate.of(2026, 11, 30), new Draft(Map.of(), "", "", "", ""));

        Page late = open.press("Keep this weight");
        assertThat(late.problems())
                .containsExactly("Freed by: that sheet is not open, or nothing was chosen. Choose a name, or nobody.");
        Page page = on.weigh("middle.middle.once", "5.420");

        assertThat(page.text())
                .contains("Closed: Ada’s sheet. What is weighed from now on counts for the carcase and not there.")
                .contains("What Ada freed Within. Fores: 7.310 kg.")
                .contains("Pieces together 12.730");
        assertThat(app.app.weighed().forSheet(ada)).extracting(PageLine::thing).containsExactly("Fores");
    }

    @Test
    void two_apprentices_on_one_lamb_are_each_judged_on_their_own_side() {
        Weighing on = new Weighing(app, "20.120");
        BlockSheet ada = on.sheet("Ada", Side.LEFT, "best-end-and-loin");
        BlockSheet bram = on.sheet("Bram", Side.RIGHT, "best-end-and-loin");
        on.weigh("best-end.best-ends.left", "1.010");
        Page page = on.weigh("best-end.best-ends.right", "0.880");

        WeighUpScore left = Weighing.scored(
                WeighUps.on("uk-joints").cold("20.120").piece("best-ends", "1.010", ", \"side\": \"left\""));
        String adas = app.app.weighed().forSheet(ada).get(0).rest();
        assertThat(adas)
                .contains("Score\u00a0"
                        + String.format(
                                Locale.ROOT, "%.0f", left.cuts().get(0).score().orElseThrow()));
        assertThat(app.app.weighed().forSheet(bram).get(0).thing()).isEqualTo("Best ends, right");
        assertThat(page.text()).contains("What Ada freed").contains(adas.replace('\u00a0', ' '));
        assertThat(page.text())
                .contains("Cuts freed by several, or by nobody watched")
                .contains("Best ends: 1.890 kg");
    }

    @Test
    void a_carcase_without_its_kidneys_offers_none_and_expects_more_of_the_rest() {
        Intake in = Carcases.lambOf("19.380");
        Checks checks = in.checks();
        Checks out = new Checks(
                checks.mark(),
                checks.markLegible(),
                checks.age(),
                checks.cord(),
                false,
                checks.meatTenths(),
                checks.kidneyTenths());
        Weighing on = new Weighing(app, new Intake(in.breakdownId(), in.ticket(), in.own(), in.scaleId(), out));
        Page page = on.weigh("fores.fores.once", "7.310");

        WeighUpScore file = Weighing.scored(WeighUps.on("uk-primals")
                .carcase("19.380", "\"weighed\": \"cold\", \"kidneys\": \"out\"")
                .piece("fores", "7.310"));
        assertThat(page.text()).contains(new CutYieldLine(file.cuts().get(0)).verdict());
        assertThat(page.text()).contains("No weight yet for middle and legs with chumps.");
        assertThat(on.browser.open(on.path() + "?stage=middle").all("input[value^=kidneys]"))
                .isEmpty();
    }

    @Test
    void two_sheets_with_the_same_step_are_asked_about() {
        Weighing on = new Weighing(app, "20.120");
        on.sheet("Ada", Side.LEFT, "kidneys-and-suet");
        BlockSheet bram = on.sheet("Bram", Side.RIGHT, "kidneys-and-suet");

        Page asked = on.weigh("kidneys.kidneys.once", "0.100");
        assertThat(asked.problems())
                .containsExactly("Freed by: 2 sheets have the step that frees the kidneys. Choose whose it is.");

        asked.choose("sheet", bram.id().toString()).press("Keep this weight");
        assertThat(app.app.weighed().forSheet(bram)).extracting(PageLine::thing).containsExactly("Kidneys");
    }

    @Test
    void a_tray_is_taken_off_and_offered_again() {
        Weighing on = new Weighing(app, "20.120");
        Page page = on.onTheScale("fores.fores.once", "8.160")
                .choose("tray", "other")
                .fill("tare", "0.850")
                .press("Keep this weight");

        assertThat(page.text()).contains("fores, 7.310 kg");
        assertThat(page.all("input[name=tray][checked]").get(0).attr("value")).isEqualTo("0.850");
        assertThat(page.text()).contains("8.160 kg less a tray of 0.850 kg, two readings");
    }

    @Test
    void a_carcase_on_hold_is_not_weighed() {
        Weighing on = new Weighing(app, "20.120");
        Page open = on.onTheScale("fores.fores.once", "7.310");
        app.app.carcases().decide(on.lamb, Decision.HOLD, "The mark is blurred.", on.maeve);

        assertThat(open.press("Keep this weight").status()).isEqualTo(409);
        assertThat(on.open().offers("Keep this weight")).isFalse();
    }

    @Test
    void an_apprentice_finds_nothing_and_a_tutor_only_reads() {
        Weighing on = example();
        Browser ada = app.as("Ada", Role.APPRENTICE);
        Browser tutor = app.as("Petra", Role.TUTOR);

        Page read = tutor.open(on.path());

        assertThat(ada.get(on.path()).statusCode()).isEqualTo(404);
        assertThat(read.text()).contains("Balanced.").contains("Score 100");
        assertThat(read.offers("Keep this weight")).isFalse();
        assertThat(read.offers("Take ")).isFalse();
        assertThat(tutor.rawPost(
                                on.path() + "/readings",
                                on.onTheScale("fores.fores.once", "1").fieldsOf("Keep"))
                        .statusCode())
                .isIn(403, 404);
    }
}
