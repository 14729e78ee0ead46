package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Piece;
import ribmark.anatomy.Skeleton;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Library;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/**
 * Only needs bind: in any order they allow, with the optional steps done or left, the same pieces are left. The check goes
 * from state to state; here whole orders are worked from the first cut to the last, knowing nothing of states. A sample in
 * the ordinary build; a thousand with {@code -Ddrills=1000}.
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
            assertThat(leftInAnyOrder(lamb.steps(), leftOut, deeds))
                    .as("seed " + SEED + ", order " + round)
                    .isEqualTo(pieces.stream().map(Freed::holds).collect(Collectors.toSet()));
        }
        assertThat(tried).contains(Set.of(), Set.copyOf(Proof.optional(lamb))).hasSizeGreaterThan(1);
    }

    private Set<List<String>> leftInAnyOrder(List<Node> steps, Set<String> leftOut, Deeds deeds) {
        List<Node> waiting = new ArrayList<>(steps);
        waiting.removeIf(step -> leftOut.contains(id(step)));
        Set<String> open = waiting.stream().map(RandomOrdersTest::id).collect(Collectors.toSet());
        Animal now = Animal.whole(deeds.skeleton());
        while (!waiting.isEmpty()) {
            Node step = waiting.get(random.nextInt(waiting.size()));
            if (step.get("needs").texts().stream().noneMatch(open::contains)) {
                now = deeds.after(now, step, (culprit, refused) -> {
                            throw new AssertionError(id(step) + ": " + refused.getMessage());
                        })
                        .orElseThrow();
                waiting.remove(step);
                open.remove(id(step));
            }
        }
        return now.pieces().stream().map(Piece::names).collect(Collectors.toSet());
    }

    private static String id(Node step) {
        return step.get("id").text();
    }

    private Set<String> someOf(List<String> optional) {
        Set<String> left = new HashSet<>(optional);
        left.removeIf(step -> random.nextBoolean());
        return left;
    }
}
