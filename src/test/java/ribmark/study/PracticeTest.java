package ribmark.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import ribmark.proof.ContentInUse;

class PracticeTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Instant DAY = Instant.parse("2026-11-25T18:00:00Z");
    private static final UUID ADA = new UUID(1, 1);

    private final Deck deck = new Deck(ContentInUse.read(Optional.empty()).curriculum());
    private final List<StudyAnswer> answers = new ArrayList<>();
    private final Card first = deck.cards().get(0);

    private Practice on(int day) {
        return Practice.of(deck, answers, DAY.plus(Duration.ofDays(day)), LONDON);
    }

    private void answer(Card card, int day, int grade) {
        Instant at = DAY.plus(Duration.ofDays(day)).plusSeconds(answers.size());
        answers.add(new StudyAnswer(UUID.randomUUID(), ADA, card.id(), 0, "", Optional.empty(), grade > 2, grade, at));
    }

    @Test
    void every_card_has_its_own_id_its_step_and_a_question() {
        assertThat(deck.cards()).hasSizeGreaterThan(250);
        assertThat(new HashSet<>(deck.cards().stream().map(Card::id).toList())).hasSameSizeAs(deck.cards());
        for (Card card : deck.cards()) {
            assertThat(card.id().length()).isLessThan(160);
            assertThat(card.ask(1).ask()).isNotBlank();
            assertThat(card.ask(1).answer()).isNotBlank();
            assertThat(deck.step(card)).isNotNull();
        }
    }

    @Test
    void whoever_begins_is_asked_ten_new_questions_and_no_more() {
        assertThat(on(0).waiting()).hasSize(10);
        assertThat(on(0).inWords()).isEqualTo("Ten questions wait for you today: ten new.");

        deck.cards().stream().limit(10).forEach(card -> answer(card, 0, 5));

        assertThat(on(0).waiting()).isEmpty();
        assertThat(on(0).inWords())
                .isEqualTo("Nothing waits today. The next question is due on 26\u00a0Nov\u00a02026.");
        assertThat(on(1).waiting()).hasSize(20);
    }

    @Test
    void what_is_known_comes_back_after_one_day_then_after_six() {
        answer(first, 0, 5);
        assertThat(on(0).dueDay(first.id())).contains(LocalDate.of(2026, 11, 26));

        answer(first, 1, 5);
        assertThat(on(1).dueDay(first.id())).contains(LocalDate.of(2026, 12, 2));
        assertThat(on(6).due()).isEmpty();
        assertThat(on(7).due()).containsExactly(first);
    }

    @Test
    void what_was_missed_is_asked_once_more_today_until_it_is_known_and_tomorrow_again() {
        answer(first, 0, 1);
        assertThat(on(0).again()).containsExactly(first);
        answer(first, 0, 3);
        assertThat(on(0).again()).containsExactly(first);
        answer(first, 0, 4);

        assertThat(on(0).again()).isEmpty();
        assertThat(on(1).due()).containsExactly(first);
    }

    @Test
    void answering_again_on_the_same_day_does_not_move_the_schedule() {
        answer(first, 0, 5);
        answer(first, 0, 5);
        answer(first, 0, 5);

        assertThat(on(0).dueDay(first.id())).contains(LocalDate.of(2026, 11, 26));
    }

    @Test
    void the_question_stays_the_same_until_it_is_answered() {
        Card drill = deck.cards().stream()
                .filter(card -> card.id().startsWith("drill/"))
                .findFirst()
                .orElseThrow();
        long before = on(0).seed(ADA, drill);
        assertThat(on(3).seed(ADA, drill)).isEqualTo(before);
        answer(drill, 0, 4);
        assertThat(on(0).seed(ADA, drill)).isNotEqualTo(before);
    }
}
