package ribmark.evidence;

import java.util.List;
import ribmark.basics.Refused;

/** How many records there are, and one digest over all of them: the root of a Merkle tree as in RFC 6962, section 2.1. */
public record Head(long records, String root) {

    /** The head over these record digests, in order. */
    public static Head over(List<String> digests) {
        MerkleTree tree = new MerkleTree();
        digests.forEach(tree::add);
        return tree.head();
    }

    /** Reads what {@link #toString} wrote. */
    public static Head parse(String text) {
        String[] words = text.strip().split("\\s+");
        if (words.length != 2 || !words[0].matches("[0-9]{1,15}") || !words[1].matches("[0-9a-f]{64}")) {
            throw new Refused("A head is a number of records and 64 figures and letters a to f. This is not one: “"
                    + text.strip().lines().findFirst().orElse("") + "”.");
        }
        return new Head(Long.parseLong(words[0]), words[1]);
    }

    @Override
    public String toString() {
        return records + " " + root;
    }
}
