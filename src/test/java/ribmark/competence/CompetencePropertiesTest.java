package ribmark.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.holds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.competence.Agreement.Level;

/** What holds for any evidence of one step, and for any two assessors. */
class CompetencePropertiesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Map<Side, Mark> UNAIDED = Map.of(Side.LEFT, Mark.UNAIDED, Side.RIGHT, Mark.UNAIDED);

    /** One step of one apprentice: its rule, and what was seen of it. */
    private record Case(EvidenceRule rule, boolean eachSide, List<SheetEvidence> sheets) {

        static Case drawn(Random random) {
            EvidenceRule rule = new EvidenceRule(
                    1 + random.nextInt(4), 1 + random.nextInt(3), 1 + random.nextInt(2), 100, "ours", TODAY);
            List<SheetEvidence> sheets = new ArrayList<>();
            for (int n = random.nextInt(9); n > 0; n--) {
                sheets.add(sheet(random, 10L * (sheets.size() + 1), marks(random)));
            }
            return new Case(rule, random.nextBoolean(), sheets);
        }

        StepStanding standing() {
            return standing(sheets);
        }

        StepStanding standing(List<SheetEvidence> of, StepSignedOff... signed) {
            return Standing.derivedFrom(of, List.of(signed), rule, eachSide, TODAY);
        }

        List<SheetEvidence> and(SheetEvidence one) {
            List<SheetEvidence> more = new ArrayList<>(sheets);
            more.add(one);
            return more;
        }
    }

    private static Map<Side, Mark> marks(Random random) {
        Mark left = mark(random);
        return switch (random.nextInt(5)) {
            case 0 -> Map.of();
            case 1 -> Map.of(Side.BOTH, left);
            case 2 -> Map.of(Side.LEFT, left);
            default -> Map.of(Side.LEFT, left, Side.RIGHT, mark(random));
        };
    }

    private static Mark mark(Random random) {
        return random.nextInt(3) > 0 ? Mark.UNAIDED : Mark.values()[random.nextInt(4)];
    }

    private static SheetEvidence sheet(Random random, long sequence, Map<Side, Mark> marks) {
        String carcase = Integer.toString(random.nextInt(5));
        String assessor = "assessor " + random.nextInt(3);
        LocalDate day = TODAY.minusDays(random.nextInt(150));
        return new SheetEvidence("s" + sequence, carcase, "lamb " + carcase, assessor, assessor, day, sequence, marks);
    }

    private static SheetEvidence ideal(int number, long sequence) {
        String name = "fresh " + number;
        return new SheetEvidence(name, name, name, name, name, TODAY, sequence, UNAIDED);
    }

    @Test
    void only_the_place_in_the_log_orders_the_evidence() {
        holds(random -> {
            Case step = Case.drawn(random);
            List<SheetEvidence> shuffled = new ArrayList<>(step.sheets());
            Collections.shuffle(shuffled, random);
            assertThat(step.standing(shuffled)).isEqualTo(step.standing());
        });
    }

    @Test
    void one_unaided_sheet_more_never_lowers_a_standing() {
        holds(random -> {
            Case step = Case.drawn(random);
            SheetEvidence more = sheet(random, 1 + random.nextInt(120), UNAIDED);
            assertThat(step.standing(step.and(more)).standing())
                    .isGreaterThanOrEqualTo(step.standing().standing());
        });
    }

    @Test
    void a_prompted_sheet_neither_raises_nor_lowers_what_was_begun() {
        holds(random -> {
            Case step = Case.drawn(random);
            Standing before = step.standing().standing();
            SheetEvidence more = sheet(random, 1 + random.nextInt(120), Map.of(Side.LEFT, Mark.PROMPTED));
            assertThat(step.standing(step.and(more)).standing())
                    .isEqualTo(before == Standing.NOT_STARTED ? Standing.PRACTISING : before);
        });
    }

    @Test
    void nothing_before_a_not_yet_counts_any_more() {
        holds(random -> {
            Case step = Case.drawn(random);
            Mark fresh = random.nextBoolean() ? Mark.NOT_YET : Mark.STOPPED;
            int at = random.nextInt(100);
            SheetEvidence failed = sheet(random, at, Map.of(Side.RIGHT, fresh));
            List<SheetEvidence> since = step.and(failed).stream()
                    .filter(sheet -> sheet.sequence() >= at)
                    .toList();
            assertThat(step.standing(step.and(failed)).standing())
                    .isEqualTo(step.standing(since).standing());
        });
    }

    @Test
    void the_fewest_next_sheets_that_are_named_settle_it_and_one_fewer_does_not() {
        holds(random -> {
            Case step = Case.drawn(random);
            int fewest = step.standing().tally().fewestNext();
            List<SheetEvidence> more = new ArrayList<>(step.sheets());
            for (int n = 0; n < fewest; n++) {
                assertThat(step.standing(more).tally().isMet()).isFalse();
                more.add(ideal(n, 1_000 + n));
            }
            assertThat(step.standing(more).standing()).isEqualTo(Standing.READY_TO_SIGN);
        });
    }

    @Test
    void a_signature_holds_until_something_fails_after_it_or_nothing_was_seen_for_long() {
        holds(random -> {
            Case step = Case.drawn(random);
            StepSignedOff signed = new StepSignedOff("x", random.nextInt(100), TODAY, false);
            boolean failed = step.sheets().stream().anyMatch(s -> s.sequence() > signed.sequence() && s.startsAfresh());
            boolean seen = step.sheets().stream()
                    .anyMatch(s -> s.isMarked() && !s.closedOn().isBefore(TODAY.minusDays(100)));
            assertThat(step.standing(step.sheets(), signed).standing())
                    .isEqualTo(seen && !failed ? Standing.SIGNED_OFF : Standing.DUE_AGAIN);
        });
    }

    @Test
    void a_signature_taken_back_is_as_if_it_had_never_been_given() {
        holds(random -> {
            Case step = Case.drawn(random);
            StepSignedOff back = new StepSignedOff("x", random.nextInt(100), TODAY, true);
            assertThat(step.standing(step.sheets(), back)).isEqualTo(step.standing());
        });
    }

    private static final List<String> CLASSES = List.of("a", "b", "c", "d");

    private static List<Rating> ratings(Random random) {
        List<Rating> ratings = new ArrayList<>();
        for (int item = 1 + random.nextInt(20); item > 0; item--) {
            String one = CLASSES.get(random.nextInt(4));
            ratings.add(new Rating("i" + item, "A", one));
            ratings.add(new Rating("i" + item, "B", random.nextBoolean() ? one : CLASSES.get(random.nextInt(4))));
        }
        return ratings;
    }

    private static void same(Agreement one, Agreement other) {
        same(one.percentAgreement(), other.percentAgreement());
        same(one.cohenKappa(), other.cohenKappa());
    }

    private static void same(OptionalDouble one, OptionalDouble other) {
        assertThat(other.isPresent()).isEqualTo(one.isPresent());
        assertThat(other.orElse(0)).isCloseTo(one.orElse(0), within(1e-9));
    }

    @Test
    void other_names_for_the_ratings_change_no_agreement() {
        holds(random -> {
            List<Rating> ratings = ratings(random);
            List<String> names = new ArrayList<>(List.of("w", "x", "y", "z"));
            Collections.shuffle(names, random);
            same(
                    Agreement.of(ratings, Level.NOMINAL),
                    Agreement.of(
                            ratings.stream()
                                    .map(r ->
                                            new Rating(r.item(), r.assessor(), names.get(CLASSES.indexOf(r.rating()))))
                                    .toList(),
                            Level.NOMINAL));
        });
    }

    @Test
    void agreement_keeps_its_bounds_and_is_one_only_where_everybody_always_agreed() {
        holds(random -> {
            Agreement agreement = Agreement.of(ratings(random), Level.NOMINAL);
            double percent = agreement.percentAgreement().orElseThrow();
            assertThat(percent).isBetween(0.0, 100.0);
            agreement.cohenKappa().ifPresent(kappa -> {
                assertThat(kappa).isBetween(-1.0, 1 + 1e-12).isLessThanOrEqualTo(percent / 100 + 1e-12);
                assertThat(kappa > 1 - 1e-9).isEqualTo(percent == 100);
            });
        });
    }

    @Test
    void who_is_named_first_and_what_is_judged_twice_over_change_no_agreement() {
        holds(random -> {
            List<Rating> ratings = ratings(random);
            List<Rating> other = new ArrayList<>();
            ratings.forEach(r -> List.of("", "again ")
                    .forEach(again ->
                            other.add(new Rating(again + r.item(), r.assessor().equals("A") ? "B" : "A", r.rating()))));
            Collections.shuffle(other, random);
            same(Agreement.of(ratings, Level.NOMINAL), Agreement.of(other, Level.NOMINAL));
        });
    }
}
