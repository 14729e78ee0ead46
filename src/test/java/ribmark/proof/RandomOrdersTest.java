package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Skeleton;

/**
 * Only needs bind: in any order they allow, with the optional steps done or left, the same pieces are left. A sample in the
 * ordinary build; a thousand with {@code -Ddrills=1000}.
 */
class RandomOrdersTest {

    private static final long SEED = 20261125;
    private static final int ORDERS = Math.min(1000, Integer.getInteger("drills", 25));

    private final Random random = new Random(SEED);

    @Test
    void any_order_ends_in_the_same_pieces_with_optional_steps_done_or_left() {
        Findings found = new Findings();
        Shelf lamb = Shelf.of("lamb", Library.of(ContentFiles.ours(), found));
        Skeleton animal = SkeletonRows.read(lamb.bones(), lamb.joints(), found).orElseThrow();
        CutBook cuts = new CutBook(lamb, animal);
        Deeds deeds = new Deeds(animal);
        Set<Set<String>> tried = new HashSet<>();
        for (int round = 0; round < ORDERS; round++) {
            Set<String> leftOut = someOf(Proof.optional(lamb));
            tried.add(leftOut);
            List<Freed> pieces =
                    new Working(lamb, deeds, cuts, leftOut, found).done().orElseThrow();
            new OtherOrders(lamb, deeds, cuts, leftOut, found)
                    .check(pieces, ready -> List.of(ready.get(random.nextInt(ready.size()))));
            assertThat(found.list()).as("seed " + SEED + ", order " + round).isEmpty();
        }
        assertThat(tried).contains(Set.of(), Set.copyOf(Proof.optional(lamb))).hasSizeGreaterThan(1);
    }

    private Set<String> someOf(List<String> optional) {
        Set<String> left = new HashSet<>(optional);
        left.removeIf(step -> random.nextBoolean());
        return left;
    }
}
