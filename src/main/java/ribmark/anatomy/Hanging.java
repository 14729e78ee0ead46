package ribmark.anatomy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sorts parts into the pieces they hang together in. */
final class Hanging {

    private final List<Part> parts;
    private final List<List<Integer>> neighbours = new ArrayList<>();
    private final BitSet seen = new BitSet();

    private Hanging(List<Part> parts, List<Contact> contacts) {
        this.parts = parts;
        Map<Part, Integer> places = new HashMap<>(2 * parts.size());
        for (Part part : parts) {
            places.put(part, places.size());
            neighbours.add(new ArrayList<>());
        }
        for (Contact contact : contacts) {
            int a = places.get(contact.a());
            int b = places.get(contact.b());
            neighbours.get(a).add(b);
            neighbours.get(b).add(a);
        }
    }

    /** Each piece keeps the order in which the parts were given. */
    static List<Piece> together(List<Part> parts, List<Contact> contacts) {
        return new Hanging(parts, contacts).pieces();
    }

    private List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (int start = seen.nextClearBit(0); start < parts.size(); start = seen.nextClearBit(start)) {
            pieces.add(pieceFrom(start));
        }
        return pieces;
    }

    private Piece pieceFrom(int start) {
        BitSet piece = new BitSet();
        Deque<Integer> waiting = new ArrayDeque<>(Arrays.asList(start));
        piece.set(start);
        while (!waiting.isEmpty()) {
            for (int next : neighbours.get(waiting.pop())) {
                if (!piece.get(next)) {
                    piece.set(next);
                    waiting.push(next);
                }
            }
        }
        seen.or(piece);
        return new Piece(piece.stream().mapToObj(parts::get).toList());
    }
}
