package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ribmark.testing.Property.holds;
import static ribmark.testing.Property.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;
import ribmark.basics.Side;

/** What holds for every animal that can be counted, and for every name a bone or a half of one can have. */
class AnatomyPropertiesTest {

    private static final List<String> UNITS = List.of("", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX");
    private static final List<String> TENS = List.of("", "X", "XX", "XXX", "XL", "L", "LX", "LXX", "LXXX");

    private static String roman(int number) {
        return TENS.get(number / 10) + UNITS.get(number % 10);
    }

    @Test
    void the_numeral_after_a_numeral_is_the_one_of_a_table_of_tens_and_units() {
        holds(random -> {
            int number = 1 + random.nextInt(88);
            assertThat(Roman.next(roman(number))).isEqualTo(roman(number + 1));
        });
    }

    /** Within what has been counted in sheep, ends included: {@code content/lamb/breakdown.yaml} proves a few of them. */
    private static Formula formula(Random random) {
        return new Formula(List.of(
                6 + random.nextInt(2),
                12 + random.nextInt(4),
                5 + random.nextInt(3),
                3 + random.nextInt(3),
                random.nextInt(6)));
    }

    private static final Map<Formula, Skeleton> BUILT = new HashMap<>();

    /** Every one of these can be built; each is built once. */
    private static Skeleton counted(Formula formula) {
        return BUILT.computeIfAbsent(formula, Ovine.USUAL::withFormula);
    }

    @Test
    void a_formula_is_read_as_it_was_written_and_nothing_else_is_one() {
        holds(random -> {
            Formula formula = formula(random);
            assertThat(Formula.parse(formula.toString().replace(",", " , "))).isEqualTo(formula);
            String typed = text(random, "0123,, -.x", 8);
            try {
                assertThat(Formula.parse(typed).toString()).isEqualTo(typed.replace(" ", ""));
            } catch (Refused refused) {
                assertThat(refused).hasMessageContaining("formula");
            }
        });
    }

    /** A vertebra more in the chest brings itself, two ribs and two cartilages; anywhere else only itself. */
    @Test
    void the_bones_of_an_animal_are_counted_by_its_formula() {
        List<Integer> usual = Ovine.USUAL.formula().counts();
        holds(random -> {
            Formula formula = formula(random);
            Skeleton animal = counted(formula);
            int more = 0;
            for (int region = 0; region < usual.size(); region++) {
                int differs = formula.counts().get(region) - usual.get(region);
                more += region == 1 ? 5 * differs : differs;
            }
            assertThat(animal.bones()).hasSize(Ovine.USUAL.bones().size() + more);
            assertThat(animal.formula()).isEqualTo(formula);
        });
    }

    @Test
    void whatever_was_counted_every_vertebra_is_there_once_and_joined_to_the_next() {
        holds(random -> {
            Formula formula = formula(random);
            Skeleton animal = counted(formula);
            List<String> spine = new ArrayList<>();
            List<String> letters =
                    animal.spine().regions().stream().map(Spine.Region::letters).toList();
            for (int region = 0; region < letters.size(); region++) {
                for (int n = 1; n <= formula.counts().get(region); n++) {
                    spine.add(letters.get(region) + n);
                }
            }
            List<String> midline = animal.bones().stream()
                    .filter(bone -> animal.spine().has(bone.id()) && bone.isMidline())
                    .map(Bone::id)
                    .toList();
            assertThat(midline).isEqualTo(spine);
            for (int n = 1; n < spine.size(); n++) {
                String before = spine.get(n - 1);
                String after = spine.get(n);
                assertThat(animal.joints()).anyMatch(joint -> joint.holds(before) && joint.holds(after));
            }
        });
    }

    @Test
    void whatever_was_counted_the_uncut_animal_is_one_piece_and_left_is_as_right() {
        holds(random -> {
            Skeleton animal = counted(formula(random));
            assertThat(Animal.whole(animal).pieces()).hasSize(1);
            Set<String> left = sided(animal, Side.LEFT);
            assertThat(left).isEqualTo(sided(animal, Side.RIGHT)).isNotEmpty();
        });
    }

    private static Set<String> sided(Skeleton animal, Side side) {
        Set<String> stems = new HashSet<>();
        animal.bones().stream()
                .filter(bone -> bone.side() == side)
                .forEach(bone -> stems.add(bone.id().substring(0, bone.id().length() - 1)));
        return stems;
    }

    @Test
    void an_animal_counted_otherwise_and_counted_again_is_the_first_one() {
        holds(random -> {
            Skeleton animal = counted(formula(random));
            Skeleton back = animal.withFormula(Ovine.USUAL.formula());
            assertThat(back.bones()).isEqualTo(Ovine.USUAL.bones());
            assertThat(back.joints()).isEqualTo(Ovine.USUAL.joints());
        });
    }

    @Test
    void a_run_to_the_last_names_every_one_between() {
        holds(random -> {
            Skeleton animal = counted(formula(random));
            int last = animal.last("T").orElseThrow();
            int from = 1 + random.nextInt(last);
            int before = random.nextInt(last - from + 1);
            List<String> ids = Ids.of(animal).expand("T%d..T(last-%d)".formatted(from, before));
            assertThat(ids)
                    .isEqualTo(IntStream.rangeClosed(from, last - before)
                            .mapToObj(n -> "T" + n)
                            .toList());
            List<String> ribs = Ids.of(animal).expand("R%d(s)..R(last)(s)".formatted(from));
            assertThat(ribs).hasSize(2 * (last - from + 1)).doesNotHaveDuplicates();
        });
    }

    private static Halves halves(Random random) {
        Halves halves = new Halves(List.of(Side.ONCE, Side.LEFT, Side.RIGHT).get(random.nextInt(3)), List.of());
        for (int saws = random.nextInt(4); saws > 0; saws--) {
            halves = halves.at(random.nextBoolean() ? End.NEAR : End.FAR);
        }
        return halves;
    }

    @Test
    void a_half_is_read_as_it_was_written() {
        holds(random -> {
            Halves halves = halves(random);
            assertThat(Ident.read("T1" + halves)).isEqualTo(new Ident("T1", halves));
            assertThatThrownBy(() -> Ident.read("T1" + halves + ".middle")).isInstanceOf(Refused.class);
        });
    }

    @Test
    void what_two_halves_share_is_in_both_and_the_same_either_way() {
        holds(random -> {
            Halves one = halves(random);
            Halves other = halves(random);
            assertThat(one.with(other)).isEqualTo(other.with(one));
            one.with(other)
                    .ifPresent(both ->
                            assertThat(one.holds(both) && other.holds(both)).isTrue());
            if (one.holds(other)) {
                assertThat(one.with(other)).contains(other);
            }
        });
    }

    @Test
    void the_order_of_halves_is_one_order() {
        holds(random -> {
            Halves a = halves(random);
            Halves b = halves(random);
            Halves c = halves(random);
            assertThat(Integer.signum(a.compareTo(b))).isEqualTo(-Integer.signum(b.compareTo(a)));
            assertThat(a.compareTo(b) == 0).isEqualTo(a.equals(b));
            List<Halves> sorted = Stream.of(a, b, c).sorted().toList();
            assertThat(sorted.get(0).compareTo(sorted.get(2))).isLessThanOrEqualTo(0);
        });
    }

    @Test
    void a_bone_sawn_lies_in_halves_that_share_nothing_and_make_it_up() {
        holds(random -> {
            Halves whole = halves(random);
            Halves near = whole.at(End.NEAR);
            Halves far = whole.at(End.FAR);
            assertThat(near.with(far)).isEmpty();
            Halves inside = whole;
            for (int saws = 1 + random.nextInt(3); saws > 0; saws--) {
                inside = inside.at(random.nextBoolean() ? End.NEAR : End.FAR);
            }
            assertThat(near.holds(inside)).isNotEqualTo(far.holds(inside));
        });
    }
}
