package ribmark.anatomy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One animal cut as it should be and the same animal cut elsewhere, bone by bone: which piece each bone should be in and
 * which it is in. Two pieces are taken for the same one when they share the most; a bone stands here once, or once for each
 * part of it that one of the two cuttings made.
 */
public record Comparison(List<Pair> pieces, List<Whereabouts> bones) {

    /** A piece as it should have come and as it came; one of the two is missing when nothing like it is there. */
    public record Pair(Optional<Piece> should, Optional<Piece> is) {

        /** Whether it is there both ways, the same bones in it. */
        public boolean isAsItShouldBe() {
            return should.equals(is);
        }
    }

    /** A bone or a part of one, the piece it should be in and the piece it is in. */
    public record Whereabouts(Part part, Pair should, Pair is) {

        /** Whether it ended up in another piece than it should. */
        public boolean isElsewhere() {
            return !should.equals(is);
        }
    }

    /** Keeps copies. */
    public Comparison {
        pieces = List.copyOf(pieces);
        bones = List.copyOf(bones);
    }

    /** Compares two cuttings of one animal. */
    public static Comparison of(Animal should, Animal is) {
        Places one = new Places(should);
        Places other = new Places(is);
        List<Part> parts = finest(should, is);
        Pairing pairing = new Pairing(one, other, parts);
        List<Whereabouts> bones = parts.stream()
                .map(part -> new Whereabouts(part, pairing.ofOne(one.of(part)), pairing.ofOther(other.of(part))))
                .toList();
        return new Comparison(pairing.pairs, bones);
    }

    /** The bones and parts of bones that ended up in another piece, in the order of the skeleton. */
    public List<Whereabouts> elsewhere() {
        return bones.stream().filter(Whereabouts::isElsewhere).toList();
    }

    /** The parts that neither cutting parts further. */
    private static List<Part> finest(Animal one, Animal other) {
        Map<Bone, List<Part>> parts = new HashMap<>();
        other.parts()
                .forEach(part -> parts.computeIfAbsent(part.bone(), bone -> new ArrayList<>())
                        .add(part));
        return one.parts().stream()
                .flatMap(part -> parts.get(part.bone()).stream()
                        .flatMap(others -> part.halves().with(others.halves()).stream())
                        .map(halves -> new Part(part.bone(), halves)))
                .toList();
    }

    /** Which piece of one animal a part lies in, by its number in the list of pieces. */
    private static final class Places {

        private final List<Piece> pieces;
        private final Map<Bone, Map<Part, Integer>> places = new HashMap<>();

        Places(Animal animal) {
            this.pieces = animal.pieces();
            for (int at = 0; at < pieces.size(); at++) {
                for (Part part : pieces.get(at).parts()) {
                    places.computeIfAbsent(part.bone(), bone -> new HashMap<>()).put(part, at);
                }
            }
        }

        int of(Part small) {
            return places.get(small.bone()).entrySet().stream()
                    .filter(entry -> entry.getKey().halves().holds(small.halves()))
                    .findFirst()
                    .orElseThrow()
                    .getValue();
        }
    }

    /** Pieces that share the most go together, the most first; of equals the first in the lists. */
    private static final class Pairing {

        private final List<Pair> pairs = new ArrayList<>();
        private final Map<Integer, Pair> byOne = new HashMap<>();
        private final Map<Integer, Pair> byOther = new HashMap<>();

        Pairing(Places one, Places other, List<Part> parts) {
            int[][] shared = new int[one.pieces.size()][other.pieces.size()];
            parts.forEach(part -> shared[one.of(part)][other.of(part)]++);
            for (int[] most = most(shared); most.length > 0; most = most(shared)) {
                add(most[0], most[1], one, other);
            }
            alone(one.pieces.size(), byOne.keySet()).forEach(at -> add(at, -1, one, other));
            alone(other.pieces.size(), byOther.keySet()).forEach(at -> add(-1, at, one, other));
        }

        private int[] most(int[][] shared) {
            int[] most = {};
            for (int i = 0; i < shared.length; i++) {
                for (int j = 0; j < shared[i].length; j++) {
                    boolean free = !byOne.containsKey(i) && !byOther.containsKey(j) && shared[i][j] > 0;
                    if (free && (most.length == 0 || shared[i][j] > shared[most[0]][most[1]])) {
                        most = new int[] {i, j};
                    }
                }
            }
            return most;
        }

        private static List<Integer> alone(int count, Set<Integer> paired) {
            Set<Integer> known = new HashSet<>(paired);
            return IntStream.range(0, count)
                    .filter(at -> !known.contains(at))
                    .boxed()
                    .toList();
        }

        private void add(int i, int j, Places one, Places other) {
            Pair pair = new Pair(piece(one, i), piece(other, j));
            pairs.add(pair);
            if (i >= 0) {
                byOne.put(i, pair);
            }
            if (j >= 0) {
                byOther.put(j, pair);
            }
        }

        private static Optional<Piece> piece(Places places, int at) {
            return at < 0 ? Optional.empty() : Optional.of(places.pieces.get(at));
        }

        Pair ofOne(int at) {
            return byOne.get(at);
        }

        Pair ofOther(int at) {
            return byOther.get(at);
        }
    }
}
