package ribmark.moved;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ribmark.anatomy.Comparison;
import ribmark.anatomy.Piece;
import ribmark.basics.Side;
import ribmark.curriculum.BoneWords;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Step;

/** What the pieces are called once the steps up to some point are done as they should be. */
final class PieceNames {

    private final Map<Set<String>, String> names = new HashMap<>();
    private final BoneWords words;

    /** A later name of the same bones takes the place of an earlier one. */
    PieceNames(Curriculum curriculum, List<Step> done) {
        this.words = new BoneWords(curriculum.skeleton());
        done.stream()
                .flatMap(step -> Stream.concat(step.frees().stream(), step.leaves().stream()))
                .flatMap(id -> curriculum.cut(id).stream())
                .forEach(this::learn);
    }

    private void learn(Cut cut) {
        String name =
                cut.name().substring(0, 1).toLowerCase(Locale.ROOT) + cut.name().substring(1);
        cut.holdings()
                .forEach(holding -> names.put(
                        Set.copyOf(holding.parts()),
                        "the "
                                + (holding.side() == Side.ONCE
                                        ? ""
                                        : holding.side().word() + " ") + name));
    }

    /** The name a piece would have had; one that should not be there is called by its bones. */
    String of(Comparison.Pair pair) {
        return pair.should().or(pair::is).flatMap(this::named).orElseGet(() -> byItsBones(pair));
    }

    private Optional<String> named(Piece piece) {
        return Optional.ofNullable(names.get(Set.copyOf(piece.names())));
    }

    private String byItsBones(Comparison.Pair pair) {
        return "the piece with "
                + words.inSentence(
                        List.of(pair.should().or(pair::is).orElseThrow().first().name()));
    }
}
