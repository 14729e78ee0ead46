package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;

/**
 * The engine against a second, naive working on operations drawn by chance, and what must hold whatever is cut. With the
 * system property {@code drills} set there are ten thousand rounds, without it three hundred. A failure prints its seed.
 */
class TwoWorkingsTest {

    private static final int ROUNDS = System.getProperty("drills") == null ? 300 : 10_000;
    private static final List<Skeleton> ANIMALS =
            List.of(Ovine.USUAL, Ovine.with("7,14,6,4,3"), Ovine.with("7,12,7,4,3"), Ovine.with("6,15,5,4,0"));

    @Test
    void both_workings_agree_on_operations_drawn_by_chance() {
        for (long seed = 1; seed <= ROUNDS; seed++) {
            Drill drill = new Drill(seed);
            for (int deed = 0; deed < 12; deed++) {
                drill.doOne();
            }
            assertThat(drill.engine.pieces().stream()
                            .map(piece -> new TreeSet<>(piece.names()))
                            .collect(Collectors.toSet()))
                    .as("seed %d: %s", seed, drill.done)
                    .isEqualTo(drill.naive.pieces());
            everyBoneIsInExactlyOnePiece(drill);
        }
    }

    private static void everyBoneIsInExactlyOnePiece(Drill drill) {
        List<String> names = drill.engine.pieces().stream()
                .flatMap(piece -> piece.names().stream())
                .toList();
        assertThat(names)
                .as("seed %d", drill.seed)
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(drill.naive.parts);
        assertThat(drill.engine.parts().stream().map(Part::bone).distinct())
                .hasSameSizeAs(drill.engine.skeleton().bones());
    }

    @Test
    void the_order_of_saws_never_changes_the_pieces() {
        for (long seed = 1; seed <= ROUNDS; seed++) {
            Random random = new Random(seed);
            List<Cutting> saws = new ArrayList<>();
            Ovine.USUAL.bones().forEach(bone -> saws.addAll(Cutting.drawn(bone, random)));
            Collections.shuffle(saws, random);
            Animal one = sawn(saws);
            Collections.shuffle(saws, random);
            Animal other = sawn(saws);

            assertThat(other.pieces()).as("seed %d: %s", seed, saws).isEqualTo(one.pieces());
        }
    }

    private static Animal sawn(List<Cutting> saws) {
        Animal animal = Ovine.usual();
        for (Cutting saw : saws) {
            animal = saw.doneTo(animal);
        }
        return animal.after(new Operation.Sever(List.of("SYN-SVTL", "SYN-SVCL", "SYN-RHTL", "SYN-PECL", "AA")));
    }

    /** A bone sawn through in one plane, in as many parts as it lies there. */
    private record Cutting(Bone bone, Plane plane) {

        static List<Cutting> drawn(Bone bone, Random random) {
            return Stream.of(Plane.ACROSS, Plane.MIDLINE, Plane.ACROSS)
                    .filter(plane -> bone.isMidline() || plane == Plane.ACROSS)
                    .filter(plane -> random.nextInt(4) == 0)
                    .map(plane -> new Cutting(bone, plane))
                    .toList();
        }

        Animal doneTo(Animal animal) {
            return animal.after(new Operation.Saw(
                    animal.parts().stream()
                            .filter(part -> part.bone().equals(bone))
                            .map(Part::name)
                            .toList(),
                    plane));
        }
    }

    @Test
    void across_then_midline_is_midline_then_across() {
        for (Bone bone : Ovine.USUAL.bones().stream().filter(Bone::isMidline).toList()) {
            String id = bone.id();
            Animal one = Ovine.after(Ovine.usual(), "saw across %s; saw midline %s.near %s.far".formatted(id, id, id));
            Animal other =
                    Ovine.after(Ovine.usual(), "saw midline %s; saw across %s.left %s.right".formatted(id, id, id));

            assertThat(one.pieces()).isEqualTo(other.pieces());
        }
    }

    /** One animal in both workings, and deeds drawn by chance from what is there. */
    private static final class Drill {
        final long seed;
        final Random random;
        final NaiveAnimal naive;
        final List<Operation> done = new ArrayList<>();
        Animal engine;

        Drill(long seed) {
            this.seed = seed;
            this.random = new Random(seed);
            Skeleton skeleton = ANIMALS.get(random.nextInt(ANIMALS.size()));
            this.engine = Animal.whole(skeleton);
            this.naive = new NaiveAnimal(skeleton);
        }

        void doOne() {
            switch (random.nextInt(4)) {
                case 0 -> sever();
                case 1 -> lift();
                case 2 -> saw(true);
                default -> saw(false);
            }
        }

        private void sever() {
            List<String> shares = naive.holds().stream().map(held -> held[0]).toList();
            Set<String> cutWhole = new HashSet<>();
            for (String share : draw(shares, 6)) {
                String joint = share.replaceAll("\\..*", "");
                String named = random.nextBoolean() ? share : joint;
                if (!cutWhole.contains(joint)) {
                    take(new Operation.Sever(List.of(named)));
                    naive.sever(named);
                }
                if (named.equals(joint)) {
                    cutWhole.add(joint);
                }
            }
        }

        private void lift() {
            Set<String> out = draw(List.copyOf(naive.parts), 8);
            take(new Operation.Lift(List.copyOf(out)));
            naive.lift(out);
        }

        private void saw(boolean across) {
            List<String> parts = naive.parts.stream()
                    .filter(part -> across || mayBeSplit(part))
                    .toList();
            Set<String> sawn = draw(run(parts), 12);
            if (!sawn.isEmpty()) {
                take(new Operation.Saw(List.copyOf(sawn), across ? Plane.ACROSS : Plane.MIDLINE));
                sawn.forEach(part -> naive.saw(part, across));
            }
        }

        /** Neighbours in the file are mostly neighbours in the animal, where saws meet. */
        private List<String> run(List<String> parts) {
            if (parts.isEmpty()) {
                return parts;
            }
            int from = random.nextInt(parts.size());
            return parts.subList(from, Math.min(parts.size(), from + 16));
        }

        private boolean mayBeSplit(String part) {
            return !part.contains(".left")
                    && !part.contains(".right")
                    && engine.skeleton()
                            .bone(part.replaceAll("\\..*", ""))
                            .orElseThrow()
                            .isMidline();
        }

        private Set<String> draw(List<String> among, int most) {
            List<String> shuffled = new ArrayList<>(new LinkedHashSet<>(among));
            Collections.shuffle(shuffled, random);
            int count = Math.min(shuffled.size(), 1 + random.nextInt(most));
            return IntStream.range(0, count)
                    .mapToObj(shuffled::get)
                    .collect(Collectors.toCollection(LinkedHashSet::new));
        }

        private void take(Operation operation) {
            done.add(operation);
            try {
                engine = engine.after(operation);
            } catch (Refused refused) {
                throw new AssertionError(
                        "seed " + seed + ": " + done + " was refused: " + refused.getMessage(), refused);
            }
        }
    }
}
