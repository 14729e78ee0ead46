package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.admin.DemoCollege.SignIn;
import ribmark.blocksheet.BlockSheet;
import ribmark.carcase.Decision;
import ribmark.people.Person;
import ribmark.testing.Browser;
import ribmark.testing.TestDemo;
import ribmark.web.Role;

/** The invented college shows everything that can happen, so that it can be looked at before it happens for real. */
class DemoShowsEveryStateTest {

    private final TestDemo demo = TestDemo.once();
    private final Browser osric = demo.as("Osric");

    @Test
    void its_evidence_log_holds() {
        assertThat(demo.app.verify().holds()).as(demo.app.verify().why()).isTrue();
        assertThat(demo.app.verify().records()).isGreaterThan(1000);
    }

    @Test
    void everybody_signs_in_with_the_one_password_in_the_one_role_they_have() {
        assertThat(demo.signIns())
                .extracting(SignIn::role)
                .contains("assessor", "apprentice", "tutor", "administrator");
        assertThat(demo.signIns().stream().filter(one -> one.role().equals("assessor")))
                .hasSizeGreaterThan(1);
        assertThat(demo.signIns().stream().filter(one -> one.role().equals("apprentice")))
                .hasSizeGreaterThan(11);
        for (Role role : Role.values()) {
            Person one = demo.app.people().allWho(role).get(0);
            assertThat(one.roles()).containsExactly(role);
            assertThat(demo.as(one.name()).open("/").path()).isNotEqualTo("/sign-in");
        }
    }

    @Test
    void every_standing_is_on_adas_page() {
        Person ada = demo.app.people().named("Ada").orElseThrow();
        assertThat(osric.open("/apprentices/" + ada.id()).text())
                .contains("not started", "practising", "thin evidence", "ready to sign", "signed off", "due again");
    }

    @Test
    void hugo_reads_where_his_line_really_ran() {
        Browser hugo = demo.as("Hugo");
        assertThat(hugo.open("/feedback").links().stream()
                        .filter(link -> link.startsWith("/feedback/"))
                        .map(link -> hugo.open(link).text()))
                .anyMatch(text -> text.contains("The fore line ran one rib towards the tail on the right."));
    }

    @Test
    void somebody_was_signed_off_and_it_was_taken_back() {
        Person kezia = demo.app.people().named("Kezia").orElseThrow();
        assertThat(osric.open("/apprentices/" + kezia.id() + "/steps/saddle-split")
                        .text())
                .contains("Kezia held the saddle while I finished the saw cut");
    }

    @Test
    void every_mark_was_given_and_a_stop_for_safety_says_why() {
        Set<ribmark.competence.Mark> marks = demo.app.sheets().all().stream()
                .flatMap(sheet -> sheet.marks().stream())
                .map(ribmark.blocksheet.Mark::mark)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(ribmark.competence.Mark.class)));
        assertThat(marks).containsExactly(ribmark.competence.Mark.values());
        assertThat(osric.open("/feedback/" + sheet("Farid", 24).id()).text())
                .contains("stopped")
                .contains("Knife used to prise");
    }

    @Test
    void somebody_does_not_agree() {
        assertThat(osric.open("/feedback/" + sheet("Hugo", 26).id()).text()).contains("The space was the right one");
    }

    @Test
    void two_apprentices_share_a_lamb_one_to_each_side() {
        assertThat(sheet("Dov", 16).carcase().id())
                .isEqualTo(sheet("Hugo", 16).carcase().id());
        assertThat(sheet("Dov", 16).sidesOf("fores-cut"))
                .isNotEqualTo(sheet("Hugo", 16).sidesOf("fores-cut"));
    }

    @Test
    void sheets_are_open_to_be_found_again() {
        assertThat(demo.as("Maeve").open("/today").text()).contains("Ines").contains("lamb 32");
        assertThat(osric.open("/today").text()).contains("Dov").contains("lamb 35");
    }

    @Test
    void carcases_were_accepted_held_released_and_refused() {
        assertThat(osric.open("/carcases").text()).contains("on hold").contains("refused");
        assertThat(demo.app.carcases().all().stream().map(carcase -> carcase.decision()))
                .contains(Decision.ACCEPT, Decision.HOLD, Decision.REFUSE);
        assertThat(demo.app.carcases().all().stream().filter(carcase -> carcase.number() == 35))
                .allMatch(carcase -> carcase.isAccepted() && carcase.decisions().size() == 2);
    }

    @Test
    void every_verdict_on_weights_is_there() {
        List<String> pages = demo.app.carcases().all().stream()
                .filter(carcase -> carcase.number() > 12 && carcase.number() < 33)
                .map(carcase -> osric.open("/weigh-ups/" + carcase.id()).text())
                .toList();
        assertThat(String.join(" ", pages))
                .contains("Balanced.", "Query.", "Incomplete.", "Not scored.")
                .contains("Within.", "Questionable.", "Outside.", "Too close to call.");
    }

    @Test
    void scales_were_checked_this_morning_and_one_was_found_wrong_before() {
        assertThat(osric.open("/scales").text())
                .containsPattern("Checked today: within|Within when checked")
                .contains("Offal 0.500 0.504 outside");
    }

    @Test
    void cutting_tests_moved_the_tables() {
        assertThat(osric.open("/tables/uk-primals").text())
                .contains("Tamsin, showing the whole lamb")
                .contains("83 % borrowed, 17 % own");
    }

    @Test
    void a_doubted_weight_was_answered_in_each_of_the_three_ways() {
        List<String> pages = demo.app.carcases().all().stream()
                .filter(carcase -> carcase.number() > 30 && carcase.number() < 39)
                .map(carcase -> osric.open("/weigh-ups/" + carcase.id()).text())
                .toList();
        assertThat(String.join(" ", pages))
                .contains(
                        "the likely weight was taken instead",
                        ": weighed again",
                        "kept as it was, “Weighed twice without a tray",
                        "One question is open")
                .contains("As typed “4.630”");
    }

    @Test
    void what_a_breakdown_cost_is_told_at_the_invented_college_s_prices() {
        assertThat(osric.open("/weigh-ups/" + sheet("Ada", 29).carcase().id() + "/scores")
                        .text())
                .contains("What the shop of an invented college asks", "GBP");
    }

    @Test
    void pairs_are_held_against_each_other() {
        assertThat(osric.open("/weigh-ups/" + sheet("Bram", 28).carcase().id()).text())
                .contains("heavier");
    }

    @Test
    void trim_is_within_outside_and_too_close_to_call() {
        assertThat(osric.open("/block-sheets/" + sheet("Ada", 31).id() + "/trim")
                        .text())
                .contains("Within.", "Too close to call.");
        assertThat(osric.open("/block-sheets/" + sheet("Bram", 28).id() + "/trim")
                        .text())
                .contains("Outside.");
    }

    @Test
    void the_tutor_sees_whom_to_look_at_first() {
        assertThat(demo.as("Petra").open("/group").text())
                .contains("not seen for 19 days")
                .contains("not yet three times")
                .contains("due again");
    }

    private BlockSheet sheet(String apprentice, int lamb) {
        return demo.app.sheets().all().stream()
                .filter(one -> one.apprentice().name().equals(apprentice))
                .filter(one -> one.carcase().number() == lamb)
                .findFirst()
                .orElseThrow();
    }
}
