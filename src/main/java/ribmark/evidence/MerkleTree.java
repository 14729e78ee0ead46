package ribmark.evidence;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.Iterator;

/** A tree of digests that grows at its right edge (RFC 6962, section 2.1), kept as the roots of its full subtrees. */
final class MerkleTree {

    private static final byte[] LEAF = {0};
    private static final byte[] NODE = {1};

    private record Subtree(long leaves, byte[] hash) {}

    private final Deque<Subtree> roots = new ArrayDeque<>();
    private long leaves;

    void add(String digest) {
        Subtree last = new Subtree(1, Digest.bytes(LEAF, HexFormat.of().parseHex(digest)));
        while (!roots.isEmpty() && roots.peek().leaves() == last.leaves()) {
            last = joined(roots.pop(), last);
        }
        roots.push(last);
        leaves++;
    }

    long leaves() {
        return leaves;
    }

    Head head() {
        if (roots.isEmpty()) {
            return new Head(0, HexFormat.of().formatHex(Digest.bytes()));
        }
        Iterator<Subtree> fromTheRight = roots.iterator();
        Subtree all = fromTheRight.next();
        while (fromTheRight.hasNext()) {
            all = joined(fromTheRight.next(), all);
        }
        return new Head(leaves, HexFormat.of().formatHex(all.hash()));
    }

    private static Subtree joined(Subtree left, Subtree right) {
        return new Subtree(left.leaves() + right.leaves(), Digest.bytes(NODE, left.hash(), right.hash()));
    }
}
