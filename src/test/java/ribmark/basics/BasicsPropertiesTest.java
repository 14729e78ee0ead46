package ribmark.basics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ribmark.testing.Property.holds;
import static ribmark.testing.Property.text;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What holds for every weight, word and id. */
class BasicsPropertiesTest {

    private static Weight weight(Random random) {
        return new Weight(Math.round(Math.pow(10, 9 * random.nextDouble())) - 1);
    }

    @Test
    void a_weight_is_read_as_it_was_written() {
        holds(random -> {
            Weight weight = weight(random);
            assertThat(Weight.ofKilograms(weight.kilograms())).isEqualTo(weight);
        });
    }

    /** Read a second time by the decimal numbers of the language alone: what is taken is what stands there. */
    @Test
    void whatever_is_typed_is_refused_or_read_as_it_stands() {
        holds(random -> {
            String typed = text(random, "00123456789..,,- +eE'x\u00a0٣５", 9);
            if (Weight.whyNot(typed).isEmpty()) {
                BigDecimal plain = new BigDecimal(typed.strip().replace(',', '.'));
                assertThat(typed.strip()).matches("[0-9.,]+");
                assertThat(BigDecimal.valueOf(Weight.ofKilograms(typed).grams(), 3))
                        .as(typed)
                        .isEqualByComparingTo(plain);
            } else {
                assertThat(Weight.whyNot(typed).get()).endsWith(".");
                assertThatThrownBy(() -> Weight.ofKilograms(typed)).isInstanceOf(IllegalArgumentException.class);
            }
        });
    }

    @Test
    void a_comma_that_could_part_thousands_is_never_guessed_at() {
        holds(random -> {
            int before = 1 + random.nextInt(999);
            int after = random.nextInt(1000);
            String comma = "%d,%03d".formatted(before, after);
            assertThat(Weight.whyNot(comma).orElseThrow()).contains("thousands");
            assertThat(Weight.ofKilograms(comma.replace(',', '.')).grams()).isEqualTo(1000L * before + after);
        });
    }

    @Test
    void finer_than_a_gram_is_refused_and_never_rounded() {
        holds(random -> {
            String fine = weight(random).kilograms() + "0".repeat(random.nextInt(5)) + (1 + random.nextInt(9));
            assertThat(Weight.whyNot(fine).orElseThrow()).contains("finer than a gram");
            String noughts = weight(random).kilograms() + "0".repeat(random.nextInt(6));
            assertThat(Weight.whyNot(noughts)).isEmpty();
        });
    }

    @Test
    void what_is_put_on_and_taken_off_again_leaves_the_weight_as_it_was() {
        holds(random -> {
            Weight one = weight(random);
            Weight other = weight(random);
            assertThat(one.plus(other)).isEqualTo(other.plus(one));
            assertThat(one.plus(other).minus(other)).isEqualTo(one);
            if (one.compareTo(other) < 0) {
                assertThatThrownBy(() -> one.minus(other)).isInstanceOf(IllegalArgumentException.class);
            }
        });
    }

    private static String word(Random random) {
        return text(random, "abcdeLR-7", 9);
    }

    @Test
    void slips_between_two_words_are_the_same_either_way_and_none_only_between_equals() {
        holds(random -> {
            String one = word(random);
            String other = word(random);
            int slips = Suggest.slips(one, other);
            assertThat(slips).isEqualTo(Suggest.slips(other, one));
            assertThat(slips)
                    .isBetween(Math.abs(one.length() - other.length()), Math.max(one.length(), other.length()));
            assertThat(slips == 0).isEqualTo(one.equalsIgnoreCase(other));
        });
    }

    @Test
    void a_single_slip_of_the_finger_counts_as_one() {
        holds(random -> {
            StringBuilder word = new StringBuilder("abc" + word(random));
            String meant = word.toString();
            int at = random.nextInt(word.length() - 1);
            switch (random.nextInt(4)) {
                case 0 -> word.setCharAt(at, 'z');
                case 1 -> word.deleteCharAt(at);
                case 2 -> word.insert(at, 'z');
                default -> word.replace(at, at + 2, "" + word.charAt(at + 1) + word.charAt(at));
            }
            assertThat(Suggest.slips(word.toString(), meant)).isLessThanOrEqualTo(1);
            assertThat(Suggest.nearest(word.toString(), List.of(meant))).contains(meant);
        });
    }

    @Test
    void what_is_suggested_is_a_known_word_and_none_is_nearer() {
        holds(random -> {
            List<String> known = List.of(word(random), word(random), word(random), word(random));
            String typed = word(random);
            Suggest.nearest(typed, known).ifPresent(word -> {
                assertThat(known).contains(word);
                assertThat(Suggest.slips(typed, word)).isLessThanOrEqualTo(Suggest.FARTHEST);
                assertThat(known).allMatch(other -> Suggest.slips(typed, other) >= Suggest.slips(typed, word));
            });
        });
    }

    /** Against a plain queue: the answer is always right, and worked out anew only when the queue has let go of it. */
    @Test
    void what_is_remembered_is_right_and_the_oldest_goes_first() {
        holds(random -> {
            int most = 1 + random.nextInt(4);
            Newest<Integer, Integer> newest = new Newest<>(most);
            Deque<Integer> kept = new ArrayDeque<>();
            for (int asked = 0; asked < 30; asked++) {
                int key = random.nextInt(7);
                int[] worked = {0};
                int answer = newest.get(key, k -> {
                    worked[0]++;
                    return k * k;
                });
                assertThat(answer).isEqualTo(key * key);
                assertThat(worked[0]).isEqualTo(kept.contains(key) ? 0 : 1);
                if (worked[0] == 1) {
                    kept.add(key);
                }
                if (kept.size() > most) {
                    kept.remove();
                }
            }
        });
    }

    @Test
    void an_id_in_an_address_is_found_only_as_it_is_written() {
        holds(random -> {
            UUID id = new UUID(random.nextLong() >>> random.nextInt(64), random.nextLong());
            assertThat(Ids.of(id.toString())).isEqualTo(id);
            StringBuilder other = new StringBuilder(id.toString());
            other.deleteCharAt(random.nextInt(other.length()));
            assertThatThrownBy(() -> Ids.of(other.toString())).isInstanceOf(NotFound.class);
        });
    }

    @Test
    void a_list_in_words_names_everything_in_its_order() {
        holds(random -> {
            List<String> names = random.ints(random.nextInt(6), 0, 99)
                    .mapToObj(Integer::toString)
                    .toList();
            assertThat(List.of(Words.list(names).split(", | and "))).isEqualTo(names.isEmpty() ? List.of("") : names);
        });
    }

    @Test
    void only_the_first_sentence_beside_a_field_is_kept() {
        holds(random -> {
            Problems problems = new Problems();
            String[] first = new String[5];
            for (int n = 0; n < 12; n++) {
                int field = random.nextInt(5);
                first[field] = first[field] == null ? "sentence " + n : first[field];
                problems.add("field " + field, "sentence " + n);
            }
            for (int field = 0; field < 5; field++) {
                assertThat(problems.at("field " + field).orElse(null)).isEqualTo(first[field]);
            }
            assertThat(problems.list()).extracting(Problems.Problem::field).doesNotHaveDuplicates();
        });
    }

    @Test
    void a_side_is_read_by_its_word_alone_and_twice_across_is_back() {
        holds(random -> {
            Side side = Side.values()[random.nextInt(4)];
            assertThat(Side.of(side.word())).contains(side);
            assertThat(side.other().other()).isEqualTo(side);
            String typed = text(random, "leftrighboc LR", 6);
            Side.of(typed).ifPresent(read -> assertThat(read.word()).isEqualTo(typed));
            assertThat(Side.of(side.word().toUpperCase(Locale.ROOT))).isEmpty();
        });
    }
}
