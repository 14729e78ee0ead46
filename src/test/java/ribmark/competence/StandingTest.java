package ribmark.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;

class StandingTest {

    private static final EvidenceRule RULE =
            new EvidenceRule(3, 3, 2, 180, "the college’s own", LocalDate.of(2026, 9, 1));
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Map<Side, Mark> BOTH_UNAIDED = Map.of(Side.LEFT, Mark.UNAIDED, Side.RIGHT, Mark.UNAIDED);
    private static final Map<Side, Mark> PROMPTED_AND_NOT_YET =
            Map.of(Side.LEFT, Mark.PROMPTED, Side.RIGHT, Mark.NOT_YET);

    private long sequence;

    @Test
    void nothing_marked_is_not_started() {
        assertThat(of().standing()).isEqualTo(Standing.NOT_STARTED);
        assertThat(of(sheet(25, "27", "Osric", Map.of())).standing()).isEqualTo(Standing.NOT_STARTED);
        assertThat(of().missing().orElseThrow())
                .isEqualTo("Three more block sheets can settle it: unaided on both sides, on three different carcases,"
                        + " closed by at least two different assessors.");
    }

    @Test
    void prompted_neither_counts_nor_starts_afresh() {
        assertThat(of(sheet(25, "27", "Osric", Map.of(Side.LEFT, Mark.PROMPTED)))
                        .standing())
                .isEqualTo(Standing.PRACTISING);
        StepStanding step = of(
                sheet(11, "27", "Osric", BOTH_UNAIDED),
                sheet(18, "29", "Maeve", Map.of(Side.LEFT, Mark.UNAIDED, Side.RIGHT, Mark.PROMPTED)),
                sheet(19, "30", "Maeve", BOTH_UNAIDED));
        assertThat(step.standing()).isEqualTo(Standing.THIN_EVIDENCE);
        assertThat(step.tally().carcaseNames()).containsExactly("lamb 27", "lamb 30");
    }

    /** The evidence and the very sentence of the drawn page "not enough yet". */
    @Test
    void what_is_missing_names_the_fewest_next_observations() {
        StepStanding step = of(
                sheet(11, "27", "Osric", PROMPTED_AND_NOT_YET),
                sheet(18, "29", "Maeve", BOTH_UNAIDED),
                sheet(25, "31", "Maeve", BOTH_UNAIDED));
        assertThat(step.standing()).isEqualTo(Standing.THIN_EVIDENCE);
        assertThat(step.missing().orElseThrow())
                .isEqualTo("One more block sheet can settle it: unaided on both sides, on a lamb other than 29 and 31,"
                        + " closed by somebody other than Maeve.");
        assertThat(step.missingTags()).containsExactly(List.of("another lamb", "not Maeve"));
        assertThat(step.tally().lines())
                .containsExactly(
                        new Tally.Line("Closed sheets unaided", "2 of 3", "since the not yet of 11\u00a0Nov\u00a02026"),
                        new Tally.Line("Carcases", "2 of 3", "lamb 29, lamb 31"),
                        new Tally.Line("Assessors", "1 of 2", "Maeve only"),
                        new Tally.Line("Newest", "today", "at most 180 days ago"));
    }

    @Test
    void three_sheets_three_carcases_two_assessors_both_sides_are_ready_to_sign() {
        StepStanding step = of(
                sheet(11, "27", "Osric", BOTH_UNAIDED),
                sheet(18, "29", "Maeve", Map.of(Side.LEFT, Mark.UNAIDED)),
                sheet(25, "31", "Maeve", Map.of(Side.RIGHT, Mark.UNAIDED)));
        assertThat(step.standing()).isEqualTo(Standing.READY_TO_SIGN);
        assertThat(step.mayBeSigned()).isTrue();
        assertThat(step.missing()).isEmpty();
        assertThat(step.missingTags()).isEmpty();
    }

    @Test
    void sheets_that_show_one_side_only_are_not_enough_for_a_two_sided_step() {
        SheetEvidence[] left = {
            sheet(11, "27", "Osric", Map.of(Side.LEFT, Mark.UNAIDED)),
            sheet(18, "29", "Maeve", Map.of(Side.LEFT, Mark.UNAIDED)),
            sheet(25, "31", "Maeve", Map.of(Side.LEFT, Mark.UNAIDED))
        };
        assertThat(of(left).standing()).isEqualTo(Standing.THIN_EVIDENCE);
        assertThat(of(left).missing().orElseThrow())
                .isEqualTo("One more block sheet can settle it: unaided on the right.");
        assertThat(of(left).missingTags()).containsExactly(List.of("on the right"));
    }

    @Test
    void three_sheets_on_one_carcase_or_by_one_assessor_are_not_enough() {
        StepStanding oneLamb = of(
                sheet(11, "27", "Osric", BOTH_UNAIDED),
                sheet(18, "27", "Maeve", BOTH_UNAIDED),
                sheet(25, "27", "Maeve", BOTH_UNAIDED));
        assertThat(oneLamb.missing().orElseThrow())
                .isEqualTo(
                        "Two more block sheets can settle it: unaided on both sides, on two carcases other than lamb 27.");
        StepStanding oneAssessor = of(
                sheet(11, "27", "Maeve", BOTH_UNAIDED),
                sheet(18, "29", "Maeve", BOTH_UNAIDED),
                sheet(25, "31", "Maeve", BOTH_UNAIDED));
        assertThat(oneAssessor.missing().orElseThrow())
                .isEqualTo("One more block sheet can settle it: unaided on both sides, closed by somebody other than"
                        + " Maeve.");
    }

    @Test
    void two_more_sheets_say_which_of_them_must_be_somebody_elses() {
        StepStanding step = of(sheet(25, "31", "Maeve", BOTH_UNAIDED));
        assertThat(step.missing().orElseThrow())
                .isEqualTo(
                        "Two more block sheets can settle it: unaided on both sides, on two carcases other than lamb 31,"
                                + " at least one closed by somebody other than Maeve.");
        assertThat(step.missingTags()).containsExactly(List.of("another lamb", "not Maeve"), List.of("another lamb"));
    }

    @Test
    void a_step_done_once_is_unaided_without_sides() {
        Map<Side, Mark> once = Map.of(Side.ONCE, Mark.UNAIDED);
        List<SheetEvidence> sheets = List.of(sheet(18, "29", "Maeve", once), sheet(25, "31", "Osric", once));
        assertThat(Standing.derivedFrom(sheets, List.of(), RULE, false, TODAY)
                        .missing()
                        .orElseThrow())
                .isEqualTo("One more block sheet can settle it: unaided, on a lamb other than 29 and 31.");
    }

    @Test
    void stopped_starts_afresh_too() {
        assertThat(of(sheet(11, "27", "Osric", BOTH_UNAIDED), sheet(18, "29", "Maeve", Map.of(Side.LEFT, Mark.STOPPED)))
                        .standing())
                .isEqualTo(Standing.PRACTISING);
    }

    /** 29 May 2026 is 180 days before 25 November 2026, 28 May is 181. */
    @Test
    void the_newest_must_be_within_the_days_of_the_rule() {
        assertThat(newestOn(LocalDate.of(2026, 5, 29)).standing()).isEqualTo(Standing.READY_TO_SIGN);
        StepStanding stale = newestOn(LocalDate.of(2026, 5, 28));
        assertThat(stale.standing()).isEqualTo(Standing.THIN_EVIDENCE);
        assertThat(stale.missing().orElseThrow())
                .isEqualTo("One more block sheet can settle it: unaided on both sides.");
    }

    @Test
    void a_signature_holds_until_it_is_withdrawn() {
        List<SheetEvidence> sheets = enough();
        StepSignedOff signed = new StepSignedOff("s1", 10, TODAY, false);
        assertThat(derive(sheets, signed).standing()).isEqualTo(Standing.SIGNED_OFF);
        assertThat(derive(sheets, signed).mayBeSigned()).isFalse();
        StepSignedOff withdrawn = new StepSignedOff("s1", 10, TODAY, true);
        assertThat(derive(sheets, withdrawn).standing()).isEqualTo(Standing.READY_TO_SIGN);
    }

    @Test
    void a_later_not_yet_makes_it_due_again_until_it_is_signed_anew() {
        List<SheetEvidence> sheets = new ArrayList<>(enough());
        sequence = 20;
        sheets.add(sheet(25, "33", "Osric", PROMPTED_AND_NOT_YET));
        StepSignedOff signed = new StepSignedOff("s1", 10, TODAY, false);
        assertThat(derive(sheets, signed).standing()).isEqualTo(Standing.DUE_AGAIN);
        assertThat(derive(sheets, signed).missing()).isPresent();
        sheets.add(sheet(25, "34", "Osric", BOTH_UNAIDED));
        sheets.add(sheet(25, "35", "Osric", BOTH_UNAIDED));
        sheets.add(sheet(25, "36", "Maeve", BOTH_UNAIDED));
        assertThat(derive(sheets, signed).standing()).isEqualTo(Standing.DUE_AGAIN);
        assertThat(derive(sheets, signed).mayBeSigned()).isTrue();
        StepSignedOff anew = new StepSignedOff("s2", 30, TODAY, false);
        assertThat(derive(sheets, signed, anew).standing()).isEqualTo(Standing.SIGNED_OFF);
    }

    @Test
    void nothing_closed_within_the_days_makes_it_due_again() {
        StepSignedOff signed = new StepSignedOff("s1", 10, LocalDate.of(2026, 5, 1), false);
        List<SheetEvidence> old = List.of(
                sheet(LocalDate.of(2026, 4, 1), "1", "Osric", BOTH_UNAIDED),
                sheet(LocalDate.of(2026, 5, 28), "2", "Maeve", BOTH_UNAIDED));
        assertThat(derive(old, signed).standing()).isEqualTo(Standing.DUE_AGAIN);
        List<SheetEvidence> seen = new ArrayList<>(old);
        seen.add(sheet(20, "31", "Maeve", Map.of(Side.LEFT, Mark.PROMPTED)));
        assertThat(derive(seen, signed).standing()).isEqualTo(Standing.SIGNED_OFF);
    }

    /** For random histories: the order of the list does not matter, and the sheets named as missing do settle it. */
    @Test
    void order_of_the_list_does_not_matter_and_the_fewest_next_sheets_do_settle_it() {
        Random random = new Random(20_261_125);
        for (int history = 0; history < 2_000; history++) {
            List<SheetEvidence> sheets = randomHistory(random);
            StepStanding step = Standing.derivedFrom(sheets, List.of(), RULE, true, TODAY);
            Collections.shuffle(sheets, random);
            assertThat(Standing.derivedFrom(sheets, List.of(), RULE, true, TODAY))
                    .isEqualTo(step);
            for (int next = 0; next < step.tally().fewestNext(); next++) {
                assertThat(Standing.derivedFrom(sheets, List.of(), RULE, true, TODAY)
                                .mayBeSigned())
                        .isFalse();
                sheets.add(sheet(25, "new " + next, "new " + next, BOTH_UNAIDED));
            }
            assertThat(Standing.derivedFrom(sheets, List.of(), RULE, true, TODAY)
                            .mayBeSigned())
                    .isTrue();
        }
    }

    private List<SheetEvidence> randomHistory(Random random) {
        List<SheetEvidence> sheets = new ArrayList<>();
        int count = random.nextInt(7);
        for (int i = 0; i < count; i++) {
            Mark mark = Mark.values()[random.nextInt(10) < 7 ? 0 : random.nextInt(4)];
            Side side = random.nextBoolean() ? Side.LEFT : Side.RIGHT;
            String lamb = Integer.toString(20 + random.nextInt(4));
            String assessor = random.nextBoolean() ? "Osric" : "Maeve";
            sheets.add(sheet(TODAY.minusDays(random.nextInt(250)), lamb, assessor, Map.of(side, mark)));
        }
        return sheets;
    }

    private StepStanding newestOn(LocalDate day) {
        return of(
                sheet(day, "27", "Osric", BOTH_UNAIDED),
                sheet(day, "29", "Maeve", BOTH_UNAIDED),
                sheet(day, "31", "Maeve", BOTH_UNAIDED));
    }

    private List<SheetEvidence> enough() {
        return List.of(
                sheet(11, "27", "Osric", BOTH_UNAIDED),
                sheet(18, "29", "Maeve", BOTH_UNAIDED),
                sheet(25, "31", "Maeve", BOTH_UNAIDED));
    }

    private StepStanding of(SheetEvidence... sheets) {
        return derive(List.of(sheets));
    }

    private StepStanding derive(List<SheetEvidence> sheets, StepSignedOff... signOffs) {
        return Standing.derivedFrom(sheets, List.of(signOffs), RULE, true, TODAY);
    }

    private SheetEvidence sheet(int dayOfNovember, String lamb, String assessor, Map<Side, Mark> marks) {
        return sheet(LocalDate.of(2026, 11, dayOfNovember), lamb, assessor, marks);
    }

    private SheetEvidence sheet(LocalDate day, String lamb, String assessor, Map<Side, Mark> marks) {
        sequence++;
        return new SheetEvidence("sheet " + sequence, lamb, "lamb " + lamb, assessor, assessor, day, sequence, marks);
    }
}
