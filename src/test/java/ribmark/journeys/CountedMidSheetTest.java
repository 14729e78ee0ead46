package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.carcase.Carcase;
import ribmark.testing.AtTheBlock;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Sheets;
import ribmark.web.Role;

/**
 * A lamb with 14 pairs of ribs and 7 loin vertebrae, which nobody could count before the fores were off. Both counts were seen in
 * sheep (sources KAZ and SUF of content/sources.yaml); which bones each piece then has follows from where the lines run.
 */
class CountedMidSheetTest {

    private final AtTheBlock block = new AtTheBlock();
    private final Browser maeve = block.maeve();

    @AfterEach
    void stop() {
        block.close();
    }

    private String sheet() {
        return block.open().path().replaceAll("/steps/.*", "");
    }

    private Page count(String sheet) {
        Page count = maeve.open(sheet).follow("Count ribs and loin");
        return count.press("14 pairs").press("7 in the loin");
    }

    @Test
    void before_anybody_counts_the_usual_animal_is_shown_and_the_page_says_so() {
        String sheet = sheet();
        assertThat(maeve.open(sheet).text())
                .contains("Nobody has counted lamb 31 yet. The usual animal is shown: 13 pairs of ribs and 6 loin"
                        + " vertebrae.");
        assertThat(maeve.open(sheet + "/steps/best-end-and-loin").text())
                .contains("Carcase, not counted Lamb 31")
                .doesNotContain("Here:");
        assertThat(maeve.open(sheet + "/pieces").text())
                .contains("Best end, left step 27 left half of thoracic vertebrae 7 to 13; part of ribs 7 to 13, left")
                .contains("Shoulder, left step 19 all of the shoulder, left; all of the foreshank, left;")
                .contains("Shoulder, left step 21 scapular cartilage, left; scapula, left; part of humerus, left");
    }

    @Test
    void once_counted_the_steps_still_to_come_are_those_of_this_animal() {
        String sheet = sheet();
        maeve.open(sheet + "/steps/ready-to-work").press("Unaided");
        Page counted = count(sheet);

        assertThat(counted.text())
                .contains("Carcase: 14 ribs, 7 loin Lamb 31")
                .contains("14 pairs of ribs, counted by Maeve, ")
                .contains("; 13 are usual.")
                .contains("One mark given before that count stays as it was recorded.");
        Page step = maeve.open(sheet + "/steps/best-end-and-loin");
        assertThat(maeve.open(sheet + "/steps/fores-saw").text()).doesNotContain("Here:");
        assertThat(step.text()).contains("Here: rib 14, left and right; thoracic vertebra 14.");
        Page shown = step.follow("Show me");
        assertThat(shown.path()).isEqualTo("/steps/best-end-and-loin?formula=7,14,7,4,3");
        assertThat(shown.text())
                .contains(
                        "Shown on an animal with vertebrae 7, 14, 7, 4, 3, head to tail. The usual one has 7, 13, 6, 4, 3.")
                .contains("Bones: Rib 14, left and right; thoracic vertebra 14; lumbar vertebra 1.")
                .contains("exactly 8");
        String picture = shown.all(".bone-map img").get(0).attr("src");
        assertThat(maeve.get(picture).body()).contains("id=\"R14L\"").contains("id=\"L7\"");
    }

    @Test
    void on_an_animal_with_fewer_ribs_all_bones_of_the_step_are_said() {
        String sheet = sheet();
        maeve.open(sheet + "/count").press("12 pairs");

        assertThat(maeve.open(sheet + "/steps/saddle-split").text())
                .contains("Here: thoracic vertebrae 7 to 12; lumbar vertebrae 1 to 6.");
    }

    @Test
    void the_pieces_of_both_sides_have_the_bones_and_weights_of_this_animal() {
        String sheet = sheet();
        String usual = maeve.open(sheet + "/pieces").text();
        count(sheet);
        Page pieces = maeve.open(sheet).follow("What comes free from lamb 31");

        assertThat(usual).contains("ribs 7 to 13, left").doesNotContain("to 14");
        assertThat(pieces.text())
                .contains("left half of thoracic vertebrae 7 to 14")
                .contains("right half of thoracic vertebrae 7 to 14")
                .contains("part of ribs 7 to 14, left")
                .contains("part of ribs 7 to 14, right")
                .contains("left half of lumbar vertebrae 1 to 6; part of lumbar vertebra 7")
                .contains("pieces have no weight yet");
        assertThat(expected(pieces, "Best end, left")).isNotEqualTo(expected(usual(), "Best end, left"));
        assertThat(expected(pieces, "Best end, left")).isEqualTo(expected(pieces, "Best end, right"));
    }

    /** Another lamb that nobody counted, for comparison. */
    private Page usual() {
        Page page = maeve.open("/block-sheets/new?carcase="
                        + block.lamb(32, ribmark.carcase.Decision.ACCEPT).id())
                .choose("apprentice", block.ada.id().toString())
                .press("Open a sheet on lamb 32");
        return maeve.open(page.path().replaceAll("/steps/.*", "") + "/pieces");
    }

    private static String expected(Page pieces, String piece) {
        return pieces.all("tbody tr").stream()
                .filter(row -> row.select("th span").text().equals(piece))
                .map(row -> row.select("[data-caption=expected]").text())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_later_count_holds_and_the_earlier_one_stays_written() {
        String sheet = sheet();
        count(sheet);
        Page again = maeve.open(sheet).follow("Count again").press("13 pairs").press("6 in the loin");

        assertThat(again.text())
                .contains("As counted, lamb 31 is the usual animal: 13 pairs of ribs and 6 loin vertebrae.");
        assertThat(maeve.open("/carcases/" + block.lamb.id()).all("tbody tr th").stream()
                        .filter(row -> row.text().equals("Maeve")))
                .hasSize(4);
    }

    @Test
    void what_no_breakdown_was_proven_on_is_said_and_the_usual_animal_shown() {
        String sheet = sheet();
        Page counted = maeve.open(sheet + "/count").press("4 in the loin");

        assertThat(counted.text())
                .contains("On an animal with vertebrae 7,13,4,4,3 the breakdown does not hold as it is written.")
                .contains("The usual animal is shown: 13 pairs of ribs and 6 loin vertebrae.");
        assertThat(maeve.open(sheet + "/steps/best-end-and-loin").links()).contains("/steps/best-end-and-loin");
    }

    @Test
    void numbers_that_no_animal_has_are_refused_in_one_sentence() {
        for (List<String> each : List.of(
                List.of("x", "“x” is not a vertebral formula"),
                List.of("7,13", "The formula “7,13” has two numbers"),
                List.of("7,13,6,4,99", "is out of range"),
                List.of("7,13,4,4,3", "On an animal with vertebrae 7,13,4,4,3 the breakdown does not hold"))) {
            Page refused = maeve.open("/steps/best-end-and-loin?formula=" + each.get(0));
            assertThat(refused.status()).as(each.get(0)).isEqualTo(409);
            assertThat(refused.text()).contains(each.get(1));
        }
    }

    @Test
    void only_the_keeper_counts_on_a_sheet_and_only_what_is_offered() {
        String sheet = sheet();
        Browser osric = block.app.as("Osric", Role.ASSESSOR);
        assertThat(osric.open(sheet + "/count").path()).isEqualTo(sheet);
        assertThat(AtTheBlock.send(osric, sheet + "/count", java.util.Map.of("thoracic", "14"))
                        .status())
                .isEqualTo(409);
        Page refused = AtTheBlock.send(maeve, sheet + "/count", java.util.Map.of("thoracic", "99"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.problems())
                .containsExactly("Count: what was pressed is none of the counts offered. Press one of these.");
    }

    @Test
    void the_apprentice_reads_the_same_animal() {
        String sheet = "/block-sheets/" + new Sheets(block.app).closed(33, block.ada, block.maeve);
        Carcase lamb = block.app.app.carcases().all().get(0);
        block.app.app.carcases().count(lamb, OptionalInt.of(14), OptionalInt.of(7), block.maeve);
        Browser ada = block.app.as("Ada", Role.APPRENTICE);

        assertThat(ada.open(sheet).links()).contains("/steps/fores-saw?formula=7,14,7,4,3");
        assertThat(ada.open(sheet).text()).contains("Three marks given before that count stay as they were recorded.");
        assertThat(ada.open(sheet + "/pieces").text()).contains("thoracic vertebrae 7 to 14");
        Page feedback = ada.open(sheet.replace("block-sheets", "feedback") + "/steps/fores-saw");
        assertThat(feedback.links()).contains("/steps/fores-saw?formula=7,14,7,4,3");
        assertThat(feedback.all(".bone-map img")).hasSize(1);
        assertThat(ada.get(feedback.all(".bone-map img").get(0).attr("src")).body())
                .contains("id=\"R14L\"");
        assertThat(block.app.as("Bram", Role.APPRENTICE).open(sheet + "/pieces").status())
                .isEqualTo(404);
    }

    @Test
    void the_sheet_leads_staff_to_trim_and_weigh_up() {
        Page sheet = maeve.open(sheet());
        assertThat(sheet.links()).contains("/weigh-ups/" + block.lamb.id(), sheet.path() + "/trim");
    }
}
