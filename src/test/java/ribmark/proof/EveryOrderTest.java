package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Skeleton;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.ContentProblem;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Library;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.proof.EveryOrder.Orders;

class EveryOrderTest {

    private static final String FRONT = "content/kid/front.yaml";
    private static final String BACK = "content/kid/back.yaml";

    private final Findings found = new Findings();

    /**
     * Behind the middle the needs of the lamb branch like a forest, and a forest of n steps can be worked in n! divided by the
     * sizes of all its branches orders (D. E. Knuth, The Art of Computer Programming, volume 3, section 5.1.4, exercise 20; from
     * memory). Twelve steps in two chains of four and one branch of four that forks after its first:
     * 12!/(4·3·2·1 × 4·3·2·1 × 4·2·1·1).
     */
    @Test
    void the_orders_of_the_lamb_are_as_many_as_the_formula_for_forests_says() {
        assertThat(tried(ContentFiles.ours(), "lamb"))
                .contains(new Orders(BigInteger.valueOf(479001600 / (24 * 24 * 8)), true));
        assertThat(CheckText.of(Check.of(ContentFiles.ours())))
                .contains("in each of the 103,950 orders its needs allow.");
    }

    @Test
    void steps_that_follow_each_other_have_one_order() {
        assertThat(tried(SmallCollege.sound().files(), "kid")).contains(new Orders(BigInteger.ONE, true));
    }

    @Test
    void a_step_that_another_spoils_is_told_with_the_need_that_is_missing() {
        SmallCollege college = SmallCollege.sound();
        String look = college.text(FRONT);
        String seam = look.substring(look.indexOf("  - id: look"), look.indexOf("  - id: mark"))
                .replace("id: look", "id: seam")
                .replace("needs: []", "needs: [front-off]")
                .replace("operations: []", "operations:\n      - sever: [PS]")
                .replace("frees: [suet]", "frees: []");
        college.holding(FRONT, look + seam).with(BACK, "      - sever: [PS]\n", "");

        assertThat(tried(college.files(), "kid")).isEmpty();
        assertThat(found.list()).hasSize(1);
        ContentProblem problem = found.list().get(0);
        assertThat(problem.code()).isEqualTo("C039");
        assertThat(problem.headline()).isEqualTo("“seam” goes wrong after “legs-off”, an order that the needs allow.");
        assertThat(problem.help()).contains("“PS” is severed already").contains("Add the need “seam” to “legs-off”");
        assertThat(problem.file()).isEqualTo(BACK);
        assertThat(problem.at().shown()).contains("needs: [front-off]");
        assertThat(problem.also()).extracting(also -> also.at().file()).containsExactly(FRONT);
        college.with(BACK, "needs: [front-off]", "needs: [front-off, seam]");
        assertThat(tried(college.files(), "kid")).contains(new Orders(BigInteger.ONE, true));
    }

    /** Twelve steps free of each other have 12! orders and up to 924 states abreast; of thirteen some are left out. */
    @Test
    void too_many_states_are_tried_by_chance_and_said_so() {
        assertThat(tried(spaces(12), "kid")).contains(new Orders(BigInteger.valueOf(479001600), true));
        Orders some = tried(spaces(13), "kid").orElseThrow();
        assertThat(some.all()).isFalse();
        assertThat(some.many()).isBetween(BigInteger.valueOf(1000), BigInteger.valueOf(479001600L * 13));
        assertThat(tried(spaces(13), "kid")).contains(some);
    }

    /** The small college with so many steps more, each severing something of its own that frees nothing. */
    private static ContentFiles spaces(int many) {
        SmallCollege college = SmallCollege.sound();
        String look = college.text(FRONT);
        String step = look.substring(look.indexOf("  - id: look"), look.indexOf("  - id: mark"))
                .replace("frees: [suet]", "frees: []");
        StringBuilder steps = new StringBuilder();
        StringBuilder joints = new StringBuilder(college.text("content/goat/joints.csv"));
        for (int i = 1; i <= many; i++) {
            joints.append("EX-").append(i).append(",Extra,joint,C1,C2,OWN,far,near\n");
            steps.append(step.replace("id: look", "id: extra-" + i)
                    .replace("operations: []", "operations:\n      - sever: [EX-" + i + "]"));
        }
        return college.holding(FRONT, "id: front\nsteps:\n" + steps)
                .holding(BACK, "id: back\nsteps: []\n")
                .holding("content/goat/joints.csv", joints.toString())
                .files();
    }

    private Optional<Orders> tried(ContentFiles files, String breakdown) {
        Shelf shelf = Shelf.of(breakdown, Library.of(files, new Findings()));
        Skeleton animal =
                SkeletonRows.read(shelf.bones(), shelf.joints(), new Findings()).orElseThrow();
        assertThat(List.of(shelf.breakdown())).allMatch(Node::isThere);
        return new EveryOrder(shelf, new Deeds(animal), new CutBook(shelf, animal), found).check();
    }
}
