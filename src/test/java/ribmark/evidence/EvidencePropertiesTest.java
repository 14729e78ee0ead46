package ribmark.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.Property.holds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;

/** What holds for every log: nothing in it can be changed without its head or its chain telling. */
class EvidencePropertiesTest {

    private static List<String> digests(Random random) {
        List<String> digests = new ArrayList<>();
        for (int n = 2 + random.nextInt(40); n > 0; n--) {
            digests.add(Digest.of("record " + random.nextLong()));
        }
        return digests;
    }

    @Test
    void any_single_record_changed_struck_added_or_moved_changes_the_head() {
        holds(random -> {
            List<String> digests = digests(random);
            List<String> other = new ArrayList<>(digests);
            int at = random.nextInt(digests.size() - 1);
            switch (random.nextInt(4)) {
                case 0 -> other.set(at, Digest.of("another"));
                case 1 -> other.remove(at);
                case 2 -> other.add(at, Digest.of("another"));
                default -> Collections.swap(other, at, at + 1);
            }
            assertThat(Head.over(other).root()).isNotEqualTo(Head.over(digests).root());
        });
    }

    @Test
    void looking_at_the_head_in_between_changes_nothing() {
        holds(random -> {
            List<String> digests = digests(random);
            MerkleTree tree = new MerkleTree();
            for (int n = 0; n < digests.size(); n++) {
                tree.add(digests.get(n));
                if (random.nextBoolean()) {
                    assertThat(tree.head()).isEqualTo(Head.over(digests.subList(0, n + 1)));
                }
            }
            assertThat(tree.head()).isEqualTo(Head.over(digests));
        });
    }

    @Test
    void a_head_is_read_as_it_was_written_and_one_wrong_letter_is_another_head_or_none() {
        holds(random -> {
            Head head = new Head(random.nextInt(100_000), Digest.of("x" + random.nextInt()));
            assertThat(Head.parse(" " + head + "\n")).isEqualTo(head);
            StringBuilder wrong = new StringBuilder(head.toString());
            int at = random.nextInt(wrong.length());
            wrong.setCharAt(at, wrong.charAt(at) == '7' ? 'g' : '7');
            try {
                assertThat(Head.parse(wrong.toString())).isNotEqualTo(head);
            } catch (Refused refused) {
                assertThat(refused).hasMessageContaining("A head is a number of records");
            }
        });
    }

    private static Entry entry(List<Integer> order, String prefix) {
        Entry entry = Entry.of("step-marked");
        for (int n : order) {
            entry = entry.fact(prefix + n, n * n);
        }
        return entry;
    }

    private static Kept kept(Entry entry, String before) {
        return Kept.of(entry, Map.of("words", "0f"), new Kept.Setting(7, Instant.EPOCH, "key", "v1", before));
    }

    @Test
    void the_order_in_which_facts_are_told_does_not_matter_and_each_is_read_back() {
        holds(random -> {
            List<Integer> order =
                    new ArrayList<>(random.ints(5, 0, 50).distinct().boxed().toList());
            Kept one = kept(entry(order, "f"), Digest.NOTHING);
            Collections.shuffle(order, random);
            assertThat(kept(entry(order, "f"), Digest.NOTHING)).isEqualTo(one);
            order.forEach(n -> assertThat(one.facts()).containsEntry("f" + n, Integer.toString(n * n)));
        });
    }

    @Test
    void any_single_letter_of_a_record_altered_is_seen() {
        holds(random -> {
            Kept kept = kept(entry(List.of(random.nextInt(50)), "f"), Digest.of("before " + random.nextInt()));
            assertThat(kept.holds()).isTrue();
            StringBuilder text = new StringBuilder(kept.text());
            int at = random.nextInt(text.length());
            text.setCharAt(at, text.charAt(at) == '1' ? '2' : '1');
            assertThat(with(kept, text.toString(), kept.digest()).holds()).isFalse();
        });
    }

    /** Whoever reckons the digest anew as well is still found by the columns beside the text, or by the record after it. */
    @Test
    void a_record_told_otherwise_has_another_digest_than_the_next_one_names() {
        holds(random -> {
            Kept first = kept(entry(List.of(random.nextInt(50)), "f"), Digest.NOTHING);
            Kept second = kept(entry(List.of(), ""), first.digest());
            Kept other = kept(entry(List.of(50 + random.nextInt(50)), "f"), Digest.NOTHING);
            assertThat(other.holds()).isTrue();
            assertThat(second.digestBefore()).isEqualTo(first.digest()).isNotEqualTo(other.digest());
        });
    }

    private static Kept with(Kept kept, String text, String digest) {
        return new Kept(kept.seq(), kept.recordedAt(), kept.kind(), text, kept.digestBefore(), digest);
    }
}
