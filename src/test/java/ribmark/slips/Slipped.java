package ribmark.slips;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import ribmark.basics.Weight;
import ribmark.scoring.CutYield;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.Verdict;
import ribmark.slips.Lambs.Lamb;
import ribmark.slips.Lambs.Piece;

/** A lamb whose weights were typed with one slip, and what the truth was: the entries it befell, −1 being the carcase. */
record Slipped(Lamb truth, Lamb typed, Cause cause, List<Integer> entries) {

    private static final int CARCASE = -1;

    /** A slip of this kind that matters: it moves an entry by more than a hundredth of the carcase, or a cut into another class. */
    static Slipped material(Lambs lambs, Cause cause) {
        while (true) {
            Optional<Slipped> slipped = draw(lambs, cause);
            if (slipped.filter(Slipped::isMaterial).isPresent()) {
                return slipped.get();
            }
        }
    }

    private static Optional<Slipped> draw(Lambs lambs, Cause cause) {
        Lamb lamb = lambs.clean();
        Random random = lambs.random();
        int piece = random.nextInt(lamb.pieces().size());
        int any = random.nextInt(lamb.pieces().size() + 1) - 1;
        return switch (cause) {
            case DIGITS_SWAPPED -> retyped(lamb, any, cause, swapped(grams(lamb, any), random));
            case DECIMAL_POINT_MOVED ->
                retyped(
                        lamb,
                        any,
                        cause,
                        random.nextBoolean() ? 10 * grams(lamb, any) : Math.round(grams(lamb, any) / 10.0));
            case POUNDS_FOR_KILOGRAMS -> retyped(lamb, any, cause, Math.round(2.2046226 * grams(lamb, any)));
            case TARE_FORGOTTEN ->
                retyped(lamb, piece, cause, grams(lamb, piece) + lambs.read(500 + 1500 * random.nextDouble()));
            case PIECES_EXCHANGED ->
                exchanged(lamb, piece, random.nextInt(lamb.pieces().size()));
            case PIECE_MISSING -> Optional.of(new Slipped(lamb, lamb.without(piece), cause, List.of(piece)));
            default -> Optional.of(twice(lambs, lamb, piece));
        };
    }

    private static long grams(Lamb lamb, int entry) {
        return entry == CARCASE ? lamb.carcaseG() : lamb.pieces().get(entry).grams();
    }

    private static Lamb typed(Lamb lamb, int entry, long grams) {
        return entry == CARCASE ? lamb.ofCarcase(grams) : lamb.with(entry, grams);
    }

    private static Optional<Slipped> retyped(Lamb lamb, int entry, Cause cause, long grams) {
        boolean slipped = grams > 0 && grams != grams(lamb, entry);
        return slipped
                ? Optional.of(new Slipped(lamb, typed(lamb, entry, grams), cause, List.of(entry)))
                : Optional.empty();
    }

    /** Two neighbouring digits of the kilograms, three places after the point. */
    private static long swapped(long grams, Random random) {
        StringBuilder text = new StringBuilder(String.format("%04d", grams));
        int at = random.nextInt(text.length() - 1);
        char first = text.charAt(at);
        text.setCharAt(at, text.charAt(at + 1));
        text.setCharAt(at + 1, first);
        return Long.parseLong(text.toString());
    }

    private static Optional<Slipped> exchanged(Lamb lamb, int one, int two) {
        Piece first = lamb.pieces().get(one);
        Piece second = lamb.pieces().get(two);
        return first.cut().equals(second.cut())
                ? Optional.empty()
                : Optional.of(new Slipped(
                        lamb,
                        lamb.with(one, second.grams()).with(two, first.grams()),
                        Cause.PIECES_EXCHANGED,
                        List.of(one, two)));
    }

    private static Slipped twice(Lambs lambs, Lamb lamb, int piece) {
        Piece again = lamb.pieces().get(piece);
        Piece extra = new Piece(again.cut(), again.side(), lambs.read(again.grams()));
        return new Slipped(lamb, lamb.and(extra), Cause.WEIGHED_TWICE, List.of(piece));
    }

    private boolean isMaterial() {
        if (cause == Cause.PIECE_MISSING || cause == Cause.WEIGHED_TWICE) {
            return true;
        }
        return entries.stream().anyMatch(e -> Math.abs(grams(truth, e) - grams(typed, e)) > truth.carcaseG() / 100.0)
                || !classes(truth).equals(classes(typed));
    }

    private static List<Verdict> classes(Lamb lamb) {
        double variance = lamb.scale().varianceG2();
        return lamb.table().rows().stream()
                .map(row -> CutYield.of(
                                row,
                                lamb.pieces().stream()
                                        .filter(p -> p.cut().equals(row.cut()))
                                        .map(p -> new Mass(p.grams(), variance))
                                        .reduce(new Mass(0, 0), Mass::plus),
                                new Mass(lamb.carcaseG(), variance))
                        .verdict())
                .toList();
    }

    boolean isNoticed(Finding finding) {
        return !finding.suspects().isEmpty() || !typed.balances();
    }

    boolean rightEntryFirst(Finding finding) {
        return !finding.suspects().isEmpty()
                && entries.stream().anyMatch(e -> isOf(finding.suspects().get(0), e));
    }

    private boolean isOf(Suspect suspect, int entry) {
        if (entry == CARCASE) {
            return suspect.cut().equals("carcase");
        }
        Piece piece = truth.pieces().get(entry);
        return suspect.cut().equals(piece.cut())
                && suspect.side().equals(Optional.of(piece.side()).filter(s -> s != ribmark.basics.Side.ONCE));
    }

    /** Exact to three divisions; what had to be reckoned, a missing piece or a tray, to a hundredth of the carcase. */
    boolean rightCauseAndValueFirst(Finding finding) {
        return finding.suspects().size() >= entries.size()
                && finding.suspects().subList(0, entries.size()).stream().allMatch(this::tellsTheTruth);
    }

    private boolean tellsTheTruth(Suspect suspect) {
        boolean reckoned = cause == Cause.PIECE_MISSING || cause == Cause.TARE_FORGOTTEN;
        double room = reckoned ? truth.carcaseG() / 100.0 : 3 * truth.scale().divisionG();
        return suspect.because() == cause
                && entries.stream()
                        .filter(e -> isOf(suspect, e))
                        .anyMatch(e -> cause == Cause.WEIGHED_TWICE
                                ? suspect.likely().isEmpty()
                                : Math.abs(suspect.likely().map(Weight::grams).orElse(0L) - grams(truth, e)) <= room);
    }
}
