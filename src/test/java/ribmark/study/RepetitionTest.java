package ribmark.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The rules are those of P. A. Wozniak, Optimization of Learning, master's thesis, University of Technology in Poznan, 1990,
 * section 3.2 (text read); the rows of answers are our own, worked a second time in R and in Python.
 */
class RepetitionTest {

    private static List<String> worked(int... grades) {
        List<String> rows = new ArrayList<>();
        Repetition now = Repetition.START;
        for (int grade : grades) {
            now = now.after(grade);
            rows.add(grade + ": " + now.answeredInARow() + " " + now.intervalDays() + " " + now.easinessHundredths());
        }
        return rows;
    }

    @Test
    void a_row_with_a_lapse_goes_as_published() {
        assertThat(worked(5, 5, 4, 3, 4, 2, 4, 5, 4))
                .containsExactly(
                        "5: 1 1 260",
                        "5: 2 6 270",
                        "4: 3 17 270",
                        "3: 4 44 256",
                        "4: 5 113 256",
                        "2: 0 1 256",
                        "4: 1 1 256",
                        "5: 2 6 266",
                        "4: 3 16 266");
    }

    @Test
    void a_row_just_passed_each_time_falls_to_the_least_easiness() {
        assertThat(worked(3, 3, 3, 3, 3, 3, 3, 3, 3, 3))
                .containsExactly(
                        "3: 1 1 236",
                        "3: 2 6 222",
                        "3: 3 13 208",
                        "3: 4 26 194",
                        "3: 5 47 180",
                        "3: 6 79 166",
                        "3: 7 121 152",
                        "3: 8 167 138",
                        "3: 9 218 130",
                        "3: 10 284 130");
    }

    @Test
    void each_grade_changes_the_easiness_by_so_many_hundredths() {
        assertThat(IntStream.rangeClosed(0, 5).map(Repetition::change)).containsExactly(-80, -54, -32, -14, 0, 10);
    }

    @Test
    void below_four_it_is_asked_again_the_same_day() {
        assertThat(IntStream.rangeClosed(0, 5).filter(Repetition::settles)).containsExactly(4, 5);
    }

    /** Property: easiness never under the least, intervals never shrink while the row goes on. */
    @Test
    void whatever_is_answered_the_row_stays_in_its_bounds() {
        Random random = new Random(1990);
        for (int round = 0; round < 2000; round++) {
            Repetition now = Repetition.START;
            for (int answer = 0; answer < 12; answer++) {
                int grade = random.nextInt(6);
                Repetition next = now.after(grade);
                assertThat(next.easinessHundredths()).isGreaterThanOrEqualTo(130);
                assertThat(next.intervalDays()).isPositive();
                if (grade >= 3) {
                    assertThat(next.intervalDays())
                            .isGreaterThanOrEqualTo(now.intervalDays() > 1 ? now.intervalDays() : 1);
                }
                now = next;
            }
        }
    }
}
