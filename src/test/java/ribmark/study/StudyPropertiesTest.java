package ribmark.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.holds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds for every row of answers, and for every question. */
class StudyPropertiesTest {

    private static Repetition drawn(Random random) {
        Repetition now = Repetition.START;
        for (int n = random.nextInt(9); n > 0; n--) {
            now = now.after(random.nextInt(6));
        }
        return now;
    }

    @Test
    void easiness_never_falls_below_its_least_and_the_next_day_is_never_today() {
        holds(random -> {
            Repetition after = drawn(random).after(random.nextInt(6));
            assertThat(after.easinessHundredths()).isGreaterThanOrEqualTo(130);
            assertThat(after.intervalDays()).isPositive();
        });
    }

    @Test
    void a_better_answer_is_never_asked_again_sooner() {
        holds(random -> {
            Repetition now = drawn(random);
            int grade = random.nextInt(5);
            Repetition worse = now.after(grade);
            Repetition better = now.after(grade + 1);
            assertThat(better.intervalDays()).isGreaterThanOrEqualTo(worse.intervalDays());
            assertThat(better.answeredInARow()).isGreaterThanOrEqualTo(worse.answeredInARow());
        });
    }

    /** Below 3 the easiness stays, so that only grades that pass are compared. */
    @Test
    void among_answers_that_pass_a_better_one_never_makes_it_harder() {
        holds(random -> {
            Repetition now = drawn(random);
            int grade = 3 + random.nextInt(2);
            assertThat(now.after(grade + 1).easinessHundredths())
                    .isGreaterThanOrEqualTo(now.after(grade).easinessHundredths());
        });
    }

    @Test
    void as_long_as_answers_pass_each_wait_is_longer_than_the_last() {
        holds(random -> {
            Repetition now = Repetition.START.after(3 + random.nextInt(3));
            for (int n = 0; n < 10; n++) {
                Repetition next = now.after(3 + random.nextInt(3));
                assertThat(next.intervalDays()).isGreaterThan(now.intervalDays());
                now = next;
            }
        });
    }

    @Test
    void an_answer_that_fails_begins_the_row_anew_and_leaves_the_easiness() {
        holds(random -> {
            Repetition now = drawn(random);
            assertThat(now.after(random.nextInt(3))).isEqualTo(new Repetition(0, 1, now.easinessHundredths()));
        });
    }

    private static List<Map<String, Boolean>> people(Random random) {
        List<Map<String, Boolean>> people = new ArrayList<>();
        for (int n = 1 + random.nextInt(15); n > 0; n--) {
            double able = random.nextDouble();
            Map<String, Boolean> answers = new HashMap<>();
            for (int item = 0; item < 6; item++) {
                if (random.nextInt(4) > 0) {
                    answers.put("item " + item, random.nextDouble() < able);
                }
            }
            people.add(answers);
        }
        return people;
    }

    private static void same(List<Map<String, Boolean>> one, List<Map<String, Boolean>> other) {
        Map<String, ItemAnalysis.Item> here = ItemAnalysis.of(one);
        Map<String, ItemAnalysis.Item> there = ItemAnalysis.of(other);
        assertThat(there.keySet()).isEqualTo(here.keySet());
        here.forEach((name, item) -> {
            assertThat(there.get(name).difficulty()).isCloseTo(item.difficulty(), within(1e-12));
            assertThat(there.get(name).pointBiserial().isPresent())
                    .isEqualTo(item.pointBiserial().isPresent());
            assertThat(there.get(name).pointBiserial().orElse(0))
                    .isCloseTo(item.pointBiserial().orElse(0), within(1e-9));
        });
    }

    @Test
    void the_figures_of_a_question_keep_their_bounds() {
        holds(random -> ItemAnalysis.of(people(random)).values().forEach(item -> {
            assertThat(item.difficulty()).isBetween(0.0, 1.0);
            assertThat(item.answers()).isPositive();
            assertThat(item.pointBiserial().orElse(0)).isBetween(-1 - 1e-9, 1 + 1e-9);
            if (item.difficulty() == 0 || item.difficulty() == 1) {
                assertThat(item.pointBiserial()).isEmpty();
            }
        }));
    }

    @Test
    void neither_the_order_of_people_nor_asking_everybody_twice_changes_the_figures() {
        holds(random -> {
            List<Map<String, Boolean>> people = people(random);
            List<Map<String, Boolean>> twice = new ArrayList<>(people);
            twice.addAll(people);
            Collections.shuffle(twice, random);
            same(people, twice);
        });
    }

    /** Right and wrong exchanged throughout: both things that are correlated turn about, and so it stays. */
    @Test
    void right_and_wrong_exchanged_turn_the_difficulty_about_and_leave_the_correlation() {
        holds(random -> {
            List<Map<String, Boolean>> people = people(random);
            List<Map<String, Boolean>> turned = new ArrayList<>();
            people.forEach(person -> {
                Map<String, Boolean> other = new HashMap<>();
                person.forEach((item, right) -> other.put(item, !right));
                turned.add(other);
            });
            Map<String, ItemAnalysis.Item> there = ItemAnalysis.of(turned);
            ItemAnalysis.of(people).forEach((name, item) -> {
                assertThat(there.get(name).difficulty()).isCloseTo(1 - item.difficulty(), within(1e-12));
                assertThat(there.get(name).pointBiserial().orElse(0))
                        .isCloseTo(item.pointBiserial().orElse(0), within(1e-9));
            });
        });
    }
}
