package ribmark.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;

class HeadTest {

    /** RFC 6962, section 2.1: the hash of an empty list is the hash of the empty string. */
    @Test
    void the_head_of_nothing_is_the_hash_of_nothing() {
        assertThat(Head.over(List.of()).root())
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    /** RFC 6962, section 2.1, told recursively: split at the largest power of two below n. */
    @Test
    void the_head_is_that_of_the_recursive_definition() {
        for (int n = 1; n < 70; n++) {
            List<String> digests = IntStream.range(0, n)
                    .mapToObj(i -> Digest.of("record " + i))
                    .toList();
            assertThat(Head.over(digests).root())
                    .as(n + " records")
                    .isEqualTo(HexFormat.of().formatHex(recursive(digests)));
        }
    }

    private static byte[] recursive(List<String> digests) {
        if (digests.size() == 1) {
            return Digest.bytes(new byte[] {0}, HexFormat.of().parseHex(digests.get(0)));
        }
        int split = Integer.highestOneBit(digests.size() - 1);
        return Digest.bytes(
                new byte[] {1},
                recursive(digests.subList(0, split)),
                recursive(digests.subList(split, digests.size())));
    }

    @Test
    void a_head_is_read_as_it_was_written() {
        Head head = Head.over(List.of(Digest.of("a"), Digest.of("b")));
        assertThat(Head.parse(head + "\n")).isEqualTo(head);
        assertThatThrownBy(() -> Head.parse("812")).isInstanceOf(Refused.class).hasMessageContaining("812");
    }
}
