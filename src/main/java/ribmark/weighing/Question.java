package ribmark.weighing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.basics.Words;
import ribmark.slips.Cause;
import ribmark.slips.Finding;
import ribmark.slips.Suspect;
import ribmark.weighing.Assembly.Placed;
import ribmark.weighing.KeptReading.Typed;

/**
 * Whether something already on the list is right: the readings in doubt, how it may have come about, how probably, and whether the
 * likely weight was only reckoned from the other pieces and stood on no scale.
 */
record Question(Cause because, double probability, List<Doubt> doubts, boolean isReckoned) {

    /**
     * A reading in doubt, by its name on the list and by the shorter one it is asked about with, and what should probably stand in
     * its field; nothing where it should not be there at all.
     */
    record Doubt(KeptReading reading, String name, String called, Optional<Weight> likely) {}

    /** Among what is left once the answered is ruled out, the next is asked about from here on: likelier than everything else. */
    private static final double LIKELIER_THAN_NOT = 0.5;

    /**
     * The question to put now, if there is one. What was answered by keeping it is ruled out: the next most probable one is put
     * only when it is likelier than not among all that is left. Where the carcase's own weight is doubted more and was not kept, no
     * piece is asked about.
     */
    static Optional<Question> open(
            Reckoning reckoning, Finding finding, Collection<SlipAnswer> answers, boolean carcaseKept) {
        Set<Set<UUID>> kept =
                answers.stream().filter(SlipAnswer::kept).map(SlipAnswer::about).collect(Collectors.toSet());
        List<Question> all = all(reckoning, finding);
        List<Question> ruledOut =
                all.stream().filter(q -> kept.contains(q.about())).toList();
        double ofCarcase = CarcaseQuestion.suspects(finding).stream()
                .mapToDouble(Suspect::probability)
                .max()
                .orElse(0);
        double left = 1 - ruledOut.stream().mapToDouble(Question::probability).sum() - (carcaseKept ? ofCarcase : 0);
        boolean first = ruledOut.isEmpty() && !carcaseKept;
        return all.stream()
                .filter(q -> !ruledOut.contains(q))
                .findFirst()
                .filter(q -> carcaseKept || q.probability() >= ofCarcase)
                .filter(q -> first || q.probability() > LIKELIER_THAN_NOT * left);
    }

    private static List<Question> all(Reckoning reckoning, Finding finding) {
        List<Question> all = new ArrayList<>();
        List<Suspect> suspects = finding.amongWeighed();
        for (int i = 0; i < suspects.size(); i++) {
            Suspect first = suspects.get(i);
            List<Suspect> together = new ArrayList<>(List.of(first));
            if (first.because() == Cause.PIECES_EXCHANGED && i + 1 < suspects.size()) {
                together.add(suspects.get(++i));
            }
            List<Doubt> doubts =
                    together.stream().flatMap(s -> doubt(reckoning, s).stream()).toList();
            if (doubts.size() == together.size()) {
                all.add(new Question(
                        first.because(), first.probability(), doubts, isReckoned(reckoning, first.because())));
            }
        }
        return all;
    }

    /** A forgotten tray is known by its weight where the same tray was taken off another piece. */
    private static boolean isReckoned(Reckoning reckoning, Cause because) {
        return because == Cause.SOMETHING_ELSE
                || because == Cause.TARE_FORGOTTEN
                        && reckoning.placed().stream()
                                .noneMatch(placed -> placed.reading().tare().isPresent());
    }

    /** Of several readings of one piece the newest is doubted, unless another has the very digits of the likely weight. */
    private static Optional<Doubt> doubt(Reckoning reckoning, Suspect suspect) {
        return reckoning.placed().stream()
                .filter(placed -> placed.reading().cut().equals(suspect.cut()))
                .filter(placed -> told(placed.reading().side()).equals(suspect.side()))
                .map(Placed::kept)
                .max(Comparator.<KeptReading, Boolean>comparing(
                                kept -> suspect.likely().map(Question::digits).equals(typedDigits(kept)))
                        .thenComparing(KeptReading::evidenceSeq))
                .map(kept -> new Doubt(kept, reckoning.name(kept), called(reckoning, kept), suspect.likely()));
    }

    /** The piece inside a sentence, its side before it: {@code left best end}. */
    private static String called(Reckoning reckoning, KeptReading kept) {
        String name =
                reckoning.pieces().of(kept).map(piece -> piece.cut().name()).orElse(reckoning.name(kept));
        return told(kept.typed().side()).map(side -> side.word() + " ").orElse("") + Words.inside(name);
    }

    private static Optional<Side> told(Side side) {
        return Optional.of(side).filter(s -> s == Side.LEFT || s == Side.RIGHT);
    }

    private static Optional<String> typedDigits(KeptReading kept) {
        return Optional.of(digits(kept.typed().weight()));
    }

    private static String digits(Weight weight) {
        return Long.toString(weight.grams())
                .chars()
                .filter(digit -> digit != '0')
                .sorted()
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }

    /** The readings it is about, in no order. */
    Set<UUID> about() {
        return doubts.stream().map(doubt -> doubt.reading().id()).collect(Collectors.toSet());
    }

    /** The same as a form sends it back, so that an answer cannot fall on another question. */
    String token() {
        return because.words() + " "
                + about().stream().sorted().map(UUID::toString).collect(Collectors.joining(" "));
    }

    /** What should stand in place of a reading in doubt; nothing when it should only come off the list. */
    Optional<Typed> meant(Doubt doubt) {
        Typed typed = doubt.reading().typed();
        if (doubts.size() > 1) {
            Typed other =
                    doubts.get(doubts.indexOf(doubt) == 0 ? 1 : 0).reading().typed();
            Typed moved = replaced(typed, other.weight(), other.tare(), other.scale());
            return Optional.of(other.text().map(moved::as).orElse(moved));
        }
        return doubt.likely()
                .map(likely -> replaced(
                        typed, likely, typed.tare().filter(tare -> tare.compareTo(likely) < 0), typed.scale()));
    }

    private static Typed replaced(Typed typed, Weight weight, Optional<Weight> tare, String scale) {
        return new Typed(
                typed.cut(),
                typed.row(),
                typed.side(),
                weight,
                tare,
                scale,
                typed.later(),
                typed.partOf(),
                typed.sheet());
    }

    /** The list as it would stand with the likely weights on it. */
    List<KeptReading> putRight(List<KeptReading> counting) {
        List<KeptReading> right = new ArrayList<>();
        for (KeptReading kept : counting) {
            Optional<Doubt> doubt = doubts.stream()
                    .filter(d -> d.reading().id().equals(kept.id()))
                    .findFirst();
            if (doubt.isEmpty()) {
                right.add(kept);
            } else {
                meant(doubt.get())
                        .ifPresent(typed -> right.add(new KeptReading(
                                kept.id(),
                                kept.carcase(),
                                typed,
                                kept.by(),
                                kept.recordedAt(),
                                kept.evidenceSeq(),
                                kept.struck())));
            }
        }
        return right;
    }
}
