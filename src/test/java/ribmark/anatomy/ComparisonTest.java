package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;

/**
 * What became of every bone when a line was cut elsewhere: by hand on the fore line (which joints part is the worked line
 * table of our notes on the skeleton, 65 + 74 bones at 6|7, 59 + 80 at 5|6), and by chance against a second, naive working.
 */
class ComparisonTest {

    private static final String SIX_SEVEN = "sever IV-T6-T7 ZY-T6-T7 CH-7La CH-7Ra IS-6L IS-6R XS SC-7La SC-7Ra";
    private static final String FIVE_SIX = "sever IV-T5-T6 ZY-T5-T6 CH-6La CH-6Ra IS-5L IS-5R SS-5-6 SC-6La SC-6Ra";
    private static final int ROUNDS = System.getProperty("drills") == null ? 60 : 2_000;
    private static final List<Skeleton> ANIMALS = List.of(
            Ovine.USUAL,
            Ovine.with("7,12,7,4,3"),
            Ovine.with("7,14,6,4,3"),
            Ovine.with("6,13,6,4,3"),
            Ovine.with("7,15,5,4,0"));

    @Test
    void one_rib_further_forward_on_both_sides_six_bones_go_over() {
        for (Skeleton animal : ANIMALS) {
            Comparison found = compared(Animal.whole(animal), SIX_SEVEN, FIVE_SIX);
            assertThat(elsewhere(found)).containsExactlyInAnyOrder("T6", "ST6", "R6L", "R6R", "CC6L", "CC6R");
            assertThat(found.pieces()).hasSize(2).allSatisfy(pair -> {
                assertThat(pair.should()).isPresent();
                assertThat(pair.is()).isPresent();
                assertThat(pair.isAsItShouldBe()).isFalse();
            });
        }
        Comparison usual = compared(Ovine.usual(), SIX_SEVEN, FIVE_SIX);
        assertThat(usual.pieces().stream()
                        .map(pair -> pair.should().orElseThrow().size()))
                .containsExactlyInAnyOrder(65, 74);
        assertThat(usual.pieces().stream().map(pair -> pair.is().orElseThrow().size()))
                .containsExactlyInAnyOrder(59, 80);
    }

    @Test
    void on_the_left_alone_the_rib_and_its_cartilage_go_over() {
        Comparison found = compared(
                Ovine.usual(),
                SIX_SEVEN,
                "sever IV-T6-T7 ZY-T6-T7 CH-7Ra IS-6R XS SC-7Ra IS-5L CH-6La CH-6Lb CT-6L CH-7La SC-6La SC-6Lb SC-7La");
        assertThat(elsewhere(found)).containsExactlyInAnyOrder("R6L", "CC6L");
        var rib = found.elsewhere().get(0);
        assertThat(rib.should().should().orElseThrow().names()).contains("R6L", "R6R", "T6", "HUML");
        assertThat(rib.is().is().orElseThrow().names())
                .contains("R6L", "R7L", "T7")
                .doesNotContain("R6R", "T6");
    }

    @Test
    void a_line_cut_as_it_should_be_moves_nothing() {
        Comparison found = compared(Ovine.usual(), SIX_SEVEN, SIX_SEVEN);
        assertThat(found.elsewhere()).isEmpty();
        assertThat(found.pieces()).allMatch(Comparison.Pair::isAsItShouldBe);
        assertThat(found.bones()).hasSize(139);
    }

    @Test
    void a_bone_sawn_one_way_only_is_told_in_halves() {
        Comparison found = compared(Ovine.usual(), "saw across L6", "saw across L5");
        assertThat(elsewhere(found)).containsExactly("L5.far", "L6.near");
        assertThat(found.bones()).hasSize(141);
    }

    @Test
    void a_bone_sawn_both_ways_is_told_in_quarters() {
        Comparison found = compared(Ovine.usual(), "saw across T1", "saw midline T1");
        assertThat(found.bones().stream().map(bone -> bone.part().name()))
                .contains("T1.left.near", "T1.right.near", "T1.left.far", "T1.right.far")
                .hasSize(142);
    }

    @Test
    void a_piece_that_does_not_come_has_nothing_beside_it() {
        Comparison found = compared(Ovine.usual(), SIX_SEVEN, "sever IV-T6-T7");
        assertThat(found.pieces())
                .filteredOn(pair -> pair.is().isEmpty())
                .singleElement()
                .satisfies(
                        pair -> assertThat(pair.should().orElseThrow().size()).isEqualTo(65));
        assertThat(found.elsewhere()).hasSize(65);
    }

    @Test
    void a_second_naive_working_finds_the_same_whatever_is_cut() {
        for (long seed = 1; seed <= ROUNDS; seed++) {
            Random random = new Random(seed);
            Animal before = cutByChance(Animal.whole(ANIMALS.get(random.nextInt(ANIMALS.size()))), random, 40, true);
            Animal should = cutByChance(before, random, 30, false);
            Animal is = cutByChance(before, random, 30, false);
            Comparison found = Comparison.of(should, is);

            everyBoneStandsOnce(found, before, seed);
            assertThat(naive(should, is)).as("seed %d", seed).isEqualTo(told(found));
        }
    }

    private static void everyBoneStandsOnce(Comparison found, Animal before, long seed) {
        List<String> names =
                found.bones().stream().map(bone -> bone.part().name()).toList();
        assertThat(names).as("seed %d", seed).doesNotHaveDuplicates();
        assertThat(found.bones().stream().map(bone -> bone.part().bone()).distinct())
                .hasSameSizeAs(before.skeleton().bones());
        for (var bone : found.bones()) {
            assertThat(holds(bone.should().should().orElseThrow(), bone.part().name()))
                    .as("seed %d: %s", seed, bone.part())
                    .isTrue();
            assertThat(holds(bone.is().is().orElseThrow(), bone.part().name()))
                    .as("seed %d: %s", seed, bone.part())
                    .isTrue();
        }
    }

    /** One part of the piece holds it; a part made by two saws that cross lies within one made by either. */
    private static boolean holds(Piece piece, String part) {
        return piece.names().stream().filter(name -> isWithin(part, name)).count() == 1;
    }

    /** Read off the names alone: a part lies within another when that one's words all stand in its name, in this order. */
    private static boolean isWithin(String small, String large) {
        List<String> words = new ArrayList<>(List.of(small.split("\\.")));
        List<String> wanted = List.of(large.split("\\."));
        if (!words.remove(0).equals(wanted.get(0))) {
            return false;
        }
        List<String> sides = List.of("left", "right");
        for (String side : sides) {
            if (wanted.contains(side) && !words.contains(side)) {
                return false;
            }
        }
        words.removeAll(sides);
        List<String> ends =
                wanted.stream().skip(1).filter(word -> !sides.contains(word)).toList();
        return words.size() >= ends.size() && words.subList(0, ends.size()).equals(ends);
    }

    /** By brute force: every part of either, the smaller ones kept; pieces matched by how many of them they share. */
    private static Map<String, List<Set<String>>> naive(Animal should, Animal is) {
        Set<String> all = new TreeSet<>();
        should.parts().forEach(part -> all.add(part.name()));
        is.parts().forEach(part -> all.add(part.name()));
        Map<String, List<Set<String>>> told = new TreeMap<>();
        Set<String> small = all.stream()
                .filter(name -> all.stream().noneMatch(other -> !other.equals(name) && isWithin(other, name)))
                .collect(Collectors.toSet());
        List<Set<String>> ones = sets(should, small);
        List<Set<String>> others = sets(is, small);
        Map<Set<String>, Set<String>> matched = matched(ones, others);
        for (Set<String> left : ones) {
            for (String part : left) {
                Set<String> right = others.stream()
                        .filter(piece -> piece.contains(part))
                        .findFirst()
                        .orElseThrow();
                if (!right.equals(matched.get(left))) {
                    told.put(part, List.of(left, right));
                }
            }
        }
        return told;
    }

    private static List<Set<String>> sets(Animal animal, Set<String> small) {
        return animal.pieces().stream().map(piece -> in(piece, small)).toList();
    }

    private static Set<String> in(Piece piece, Set<String> small) {
        return small.stream()
                .filter(part -> piece.names().stream().anyMatch(name -> isWithin(part, name)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<Set<String>, Set<String>> matched(List<Set<String>> ones, List<Set<String>> others) {
        record Couple(int one, int other, long shared) {}
        List<Couple> couples = new ArrayList<>();
        for (int i = 0; i < ones.size(); i++) {
            for (int j = 0; j < others.size(); j++) {
                couples.add(new Couple(
                        i,
                        j,
                        ones.get(i).stream().filter(others.get(j)::contains).count()));
            }
        }
        couples.sort(Comparator.comparing(Couple::shared)
                .reversed()
                .thenComparing(Couple::one)
                .thenComparing(Couple::other));
        Map<Set<String>, Set<String>> matched = new HashMap<>();
        for (Couple couple : couples) {
            Set<String> one = ones.get(couple.one());
            Set<String> other = others.get(couple.other());
            if (couple.shared() > 0 && !matched.containsKey(one) && !matched.containsValue(other)) {
                matched.put(one, other);
            }
        }
        return matched;
    }

    private static Map<String, List<Set<String>>> told(Comparison found) {
        Set<String> small =
                found.bones().stream().map(bone -> bone.part().name()).collect(Collectors.toCollection(TreeSet::new));
        Map<String, List<Set<String>>> told = new TreeMap<>();
        found.elsewhere()
                .forEach(bone -> told.put(
                        bone.part().name(),
                        List.of(
                                in(bone.should().should().orElseThrow(), small),
                                in(bone.is().is().orElseThrow(), small))));
        return told;
    }

    /** Joints severed and bones sawn by chance; what is refused is passed over. */
    private static Animal cutByChance(Animal animal, Random random, int deeds, boolean midlineToo) {
        List<Joint> joints = animal.skeleton().joints();
        Animal now = animal;
        for (int deed = 0; deed < deeds; deed++) {
            String joint = joints.get(random.nextInt(joints.size())).id();
            String part = now.parts().get(random.nextInt(now.parts().size())).name();
            Plane plane = midlineToo && random.nextBoolean() ? Plane.MIDLINE : Plane.ACROSS;
            try {
                now = now.after(
                        random.nextInt(4) > 0
                                ? new Operation.Sever(List.of(joint))
                                : new Operation.Saw(List.of(part), plane));
            } catch (Refused passedOver) {
                deed++;
            }
        }
        return now;
    }

    private static Comparison compared(Animal before, String should, String is) {
        return Comparison.of(Ovine.after(before, should), Ovine.after(before, is));
    }

    private static List<String> elsewhere(Comparison found) {
        return found.elsewhere().stream().map(bone -> bone.part().name()).toList();
    }
}
