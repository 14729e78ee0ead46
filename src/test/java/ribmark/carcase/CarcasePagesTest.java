package ribmark.carcase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.Weight;
import ribmark.testing.Browser;
import ribmark.testing.Carcases;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class CarcasePagesTest {

    private final TestApp app = new TestApp();
    private final Browser maeve = app.as("Maeve", Role.ASSESSOR);

    @AfterEach
    void stop() {
        app.close();
    }

    /** The intake page filled with a young lamb that has nothing wrong. */
    private static Page filled(Browser browser) {
        return browser.open("/carcases/new")
                .fill("killed", "2026-11-23")
                .fill("killNumber", "0118")
                .fill("cameFrom", "Fernside Abattoir, Oxwell")
                .fill("batch", "B-47")
                .fill("dressing", "kidneys in, skirt out")
                .fill("ticketWeight", "20.3")
                .choose("ticketWeighed", "cold")
                .fill("weight", "20,12")
                .choose("ownWeighed", "cold")
                .choose("scale", "rail")
                .choose("legible", "yes")
                .fill("mark", "UK 9107")
                .choose("kidneys", "in")
                .fill("meat", "4,6")
                .fill("kidney", "2.8")
                .choose("age", "under-12-months")
                .choose("cord", "in")
                .choose("decision", "accept")
                .choose("sure", "yes");
    }

    private Carcase held(String reason) {
        return app.app
                .carcases()
                .add(34, Carcases.lambOf("18.940"), Decision.HOLD, reason, app.person("Osric", Role.ASSESSOR));
    }

    private Carcase newest() {
        return app.app.carcases().all().get(0);
    }

    @Test
    void a_carcase_is_taken_in_with_comma_or_point() {
        Page lamb = filled(maeve).fill("thoracic", "14").press("Record lamb 1");

        assertThat(lamb.heading().replace('\u00a0', ' ')).isEqualTo("Lamb 1");
        assertThat(lamb.text())
                .contains("Accepted by Maeve, 25 Nov 2026.")
                .contains("20.120 kg cold, kidneys in")
                .contains("4.6 °C")
                .contains("UK 9107, can be read")
                .contains("This animal: 7, 14, 6, 4, 3");
        assertThat(newest().ownWeight()).isEqualTo(new Weight(20_120));
        assertThat(newest().thoracic()).hasValue(14);
        assertThat(lamb.links()).contains("/block-sheets/new?carcase=" + newest().id(), "/weigh-ups/" + newest().id());
        assertThat(maeve.open("/carcases").follow("Lamb 1").path()).isEqualTo("/carcases/" + newest().id());
    }

    @Test
    void own_scale_against_ticket_is_said_with_what_the_scale_may_be_off() {
        Page lamb = filled(maeve).press("Record lamb 1");

        // 2 * sqrt(20^2 / 12 + 10^2) = 23.09 g: division 20 g, scatter 10 g (JCGM 100:2008, worked by hand)
        assertThat(lamb.text())
                .contains("Ours is 0.180 ± 0.023 kg less: our scale alone does not explain it.")
                .contains("from its division of 20 g and its scatter of 10 g");
    }

    @Test
    void hot_and_cold_are_not_compared() {
        Page lamb = filled(maeve).choose("ticketWeighed", "hot").press("Record lamb 1");

        assertThat(lamb.text()).contains("Not compared: the ticket’s weight is hot, ours is cold");
    }

    @Test
    void what_is_wrong_stands_in_the_order_of_the_page_and_nothing_typed_is_lost() {
        Page again = filled(maeve)
                .fill("weight", "189.40")
                .choose("legible")
                .choose("decision", "hold")
                .press("Record lamb 1");

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.problems())
                .containsExactly(
                        "Weight on our own scale: 189.40 kg is more than a lamb can weigh. Type kilograms, for example 18.940.",
                        "Health mark: say whether it can be read.",
                        "Hold: write the reason, so that whoever releases lamb 1 knows what to look for.");
        assertThat(again.all("#weight").get(0).attr("value")).isEqualTo("189.40");
        assertThat(again.all("#killNumber").get(0).attr("value")).isEqualTo("0118");
        assertThat(again.all("input[name=decision][value=hold]").get(0).hasAttr("checked"))
                .isTrue();
        assertThat(app.app.carcases().all()).isEmpty();
    }

    @Test
    void an_empty_page_names_every_field_it_needs() {
        Page again = maeve.open("/carcases/new").press("Record lamb 1");

        assertThat(again.problems())
                .contains(
                        "Kill date: nothing was typed. Type year, month and day, for example 2026-11-25.",
                        "Weight on the ticket: nothing was typed. Type kilograms, for example 7.310.",
                        "Kidneys: say whether they are in or out.",
                        "Age: say whether it is over 12 months.",
                        "I read the ticket against the carcase: not ticked. Read both, then tick it.");
    }

    @Test
    void a_comma_before_three_figures_is_questioned() {
        Page again = filled(maeve).fill("weight", "20,120").press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "Weight on our own scale: “20,120” could be thousands or thousandths. Type it with a point, for example 20.120.");
    }

    @Test
    void grams_typed_for_kilograms_are_noticed() {
        Page again = filled(maeve)
                .fill("weight", "20120")
                .fill("ticketWeight", "2.03")
                .press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "Weight on the ticket: 2.03 kg is less than a lamb can weigh. Type kilograms, for example 20.300.",
                        "Weight on our own scale: 20120 kg is more than a lamb can weigh. Type kilograms, for example 20.120.");
    }

    @Test
    void temperatures_are_read_as_a_probe_shows_them() {
        Page again = filled(maeve).fill("meat", "4.65").fill("kidney", "fridge").press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "Deepest temperature, thick of the leg: “4.65” is finer than a tenth. Type at most one figure after the point.",
                        "Temperature of the kidneys: “fridge” is not a temperature. Type degrees, for example 4.6.");
    }

    @Test
    void a_year_slipped_on_the_ticket_is_questioned() {
        Page again = filled(maeve).fill("killed", "2025-11-23").press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly("Kill date: 23 Nov 2025 is over a year ago. Read the ticket again.");
        assertThat(filled(maeve)
                        .fill("killed", "2025-11-25")
                        .press("Record lamb 1")
                        .status())
                .isEqualTo(200);
    }

    @Test
    void a_day_that_is_not_here_yet_and_a_count_far_from_the_usual_are_questioned() {
        Page again = filled(maeve)
                .fill("killed", "2026-11-26")
                .fill("fatClass", "9z")
                .fill("thoracic", "31")
                .fill("lumbar", "six")
                .press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "Kill date: 26 Nov 2026 is not here yet. Read the ticket again.",
                        "Fat class: “9z” is not a class. Type 1 to 5, with L or H where the ticket has it, or leave it empty.",
                        "Pairs of ribs: 31 is far from the usual 13. Count again on both sides, or leave it empty until you can see them all.",
                        "Loin vertebrae: “six” is not a count. Type a whole number, for example 6.");
    }

    @Test
    void an_old_or_unknown_age_cannot_be_accepted_at_intake() {
        Page again = filled(maeve)
                .choose("age", "unknown")
                .fill("reason", "It is a lamb")
                .press("Record lamb 1");
        Page held = again.choose("decision", "hold").press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "Decision: accept does not go with an age over 12 months or not known. Choose hold; the supervisor and the site’s plan decide.");
        assertThat(held.text())
                .contains("No saw goes through or down the backbone. The supervisor and the site’s plan decide.")
                .contains("Last looked up 2026-11-25")
                .contains("Hang it apart, labelled.");
        assertThat(held.links()).doesNotContain("/block-sheets/new?carcase=" + newest().id());
    }

    @Test
    void warm_meat_or_a_blurred_mark_asks_what_was_done() {
        Page again = filled(maeve)
                .fill("meat", "8.2")
                .fill("kidney", "3.4")
                .choose("legible", "no")
                .press("Record lamb 1");
        Page kept = again.fill("reason", "Back to the chill until 6.0; vet read the second mark")
                .press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "Reason: the health mark cannot be read, the meat is at 8.2 °C (at most 7 °C) and the kidneys are at 3.4 °C (at most 3 °C). Choose hold, or write what was done about it.");
        assertThat(kept.text())
                .contains("The health mark cannot be read, the meat is at 8.2 °C (at most 7 °C)")
                .contains("Accepted by Maeve, 25 Nov 2026: “Back to the chill until 6.0; vet read the second mark”");
    }

    @Test
    void the_limits_themselves_are_still_cold_enough() {
        Page kept = filled(maeve).fill("meat", "7").fill("kidney", "3,0").press("Record lamb 1");

        assertThat(kept.status()).isEqualTo(200);
        assertThat(kept.text()).doesNotContain("ask before the knife is out");
    }

    @Test
    void kidneys_that_are_out_have_no_temperature() {
        Page again = filled(maeve).choose("kidneys", "out").press("Record lamb 1");
        Page kept = again.fill("kidney", "").press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "Temperature of the kidneys: “2.8” was typed, but the kidneys are out. Leave it empty.");
        assertThat(kept.text()).contains("kidneys out").doesNotContain("Kidneys’ temperature");
        assertThat(newest().checks().kidneyTenths()).isEqualTo(OptionalInt.empty());
    }

    @Test
    void one_carcase_is_taken_in_once() {
        filled(maeve).press("Record lamb 1");

        Page again = filled(maeve).fill("cameFrom", "fernside abattoir Oxwell").press("Record lamb 2");

        assertThat(again.problems())
                .containsExactly(
                        "Kill number: 0118 of 23 Nov 2026 was recorded before, as lamb 1. Read the ticket again.");
    }

    @Test
    void a_number_taken_meanwhile_is_said_before_the_wrong_label_is_written() {
        Page mine = filled(maeve).fill("killNumber", "0119");
        held("The mark is blurred");

        Page again = mine.press("Record lamb 1");

        assertThat(again.problems())
                .containsExactly(
                        "I read the ticket against the carcase: another one was recorded meanwhile, so this is now lamb 35. Label it so, and send it again.");
        assertThat(again.press("Record lamb 35").heading().replace('\u00a0', ' '))
                .isEqualTo("Lamb 35");
    }

    @Test
    void a_held_carcase_is_released_by_a_later_entry_that_says_why() {
        Carcase held = held("The mark is blurred");
        Page page = maeve.open("/carcases/" + held.id());

        Page again = page.choose("decision", "accept").press("Decide about lamb 34");
        Page released = again.fill("reason", "Read under the lamp, same number").press("Decide about lamb 34");

        assertThat(page.text()).contains("On hold by Osric, 25 Nov 2026: “The mark is blurred”");
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.problems())
                .containsExactly("Reason: nothing was typed. Write what changed, and who was asked.");
        assertThat(released.text())
                .contains("Accepted by Maeve, 25 Nov 2026: “Read under the lamp, same number”")
                .contains("The mark is blurred");
        assertThat(app.app.carcases().find(held.id()).isAccepted()).isTrue();
    }

    @Test
    void a_carcase_held_for_its_age_may_be_accepted_later_and_stays_away_from_the_saw() {
        filled(maeve)
                .choose("age", "over-12-months")
                .choose("decision", "hold")
                .fill("reason", "A grown tooth is through")
                .press("Record lamb 1");

        Page accepted = maeve.open("/carcases/" + newest().id())
                .choose("decision", "accept")
                .fill("reason", "Supervisor: boning only, no saw")
                .press("Decide about lamb 1");

        assertThat(accepted.text())
                .contains("It may be worked on as the reason says; the saw stays off its backbone.")
                .contains("Caution: keep the saw off the backbone");
    }

    @Test
    void a_refused_carcase_stays_refused() {
        Carcase held = held("It smells");
        Page stale = maeve.open("/carcases/" + held.id());
        Page refused = maeve.open("/carcases/" + held.id())
                .choose("decision", "refuse")
                .fill("reason", "Supervisor agrees: off")
                .press("Decide about lamb 34");

        Page late = stale.choose("decision", "accept")
                .fill("reason", "Changed my mind")
                .press("Decide about lamb 34");

        assertThat(refused.offers("Decide about")).isFalse();
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("Lamb 34 is refused, and stays so.");
    }

    @Test
    void ribs_are_counted_later_when_they_can_be_seen() {
        Carcase held = held("Counting");
        Page page = maeve.open("/carcases/" + held.id());

        Page empty = page.press("Keep this count");
        Page counted = empty.fill("lumbar", "7").press("Keep this count");

        assertThat(page.text()).contains("Taken as the usual animal, 7, 13, 6, 4, 3");
        assertThat(empty.problems())
                .containsExactly(
                        "Pairs of ribs: nothing was typed, and no loin vertebrae either. Type what you counted.");
        assertThat(counted.text()).contains("This animal: 7, 13, 7, 4, 3");
    }

    @Test
    void a_tutor_takes_carcases_in_but_opens_no_block_sheet() {
        Page lamb = filled(app.as("Tilda", Role.TUTOR)).press("Record lamb 1");

        assertThat(lamb.heading().replace('\u00a0', ' ')).isEqualTo("Lamb 1");
        assertThat(lamb.links()).doesNotContain("/block-sheets/new?carcase=" + newest().id());
    }

    @Test
    void to_an_apprentice_there_is_nothing_here() {
        Carcase held = held("The mark is blurred");
        Browser ada = app.as("Ada", Role.APPRENTICE);

        assertThat(ada.get("/carcases").statusCode()).isEqualTo(404);
        assertThat(ada.get("/carcases/new").statusCode()).isEqualTo(404);
        assertThat(ada.get("/carcases/" + held.id()).statusCode()).isEqualTo(404);
        assertThat(maeve.get("/carcases/" + UUID.randomUUID()).statusCode()).isEqualTo(404);
        assertThat(maeve.get("/carcases/34").statusCode()).isEqualTo(404);
    }
}
