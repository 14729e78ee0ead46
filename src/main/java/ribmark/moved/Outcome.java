package ribmark.moved;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Comparison;
import ribmark.anatomy.Comparison.Whereabouts;
import ribmark.anatomy.End;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Part;
import ribmark.basics.Words;
import ribmark.curriculum.BoneWords;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;

/**
 * What a line that ran elsewhere did to every bone, with the steps before it done as they should be. Each part of a bone is
 * in just one piece, and pieces are called what they would have been called.
 */
public final class Outcome {

    /** One bone or part of a bone that ended up in another piece. */
    public record Row(String part, String bone, String shouldBeIn, String isIn) {}

    private final Way way;
    private final Comparison comparison;
    private final PieceNames names;
    private final BoneWords words;
    private final Animal moved;

    private Outcome(Way way, Animal should, Animal moved, PieceNames names, BoneWords words) {
        this.way = way;
        this.comparison = Comparison.of(should, moved);
        this.names = names;
        this.words = words;
        this.moved = moved;
    }

    /** Works the steps up to the line on the animal of this curriculum, then the line as it should run and as it ran. */
    public static Outcome of(Curriculum curriculum, Way way) {
        List<Step> steps = curriculum.breakdown().steps();
        int first = steps.indexOf(
                steps.stream().filter(way.line()::isCutAt).findFirst().orElseThrow());
        int end = first + way.line().steps().size();
        Animal before = Animal.whole(curriculum.skeleton()).after(done(steps.subList(0, first)));
        return new Outcome(
                way,
                before.after(done(steps.subList(first, end))),
                before.after(way.run().operations().get(way.side())),
                new PieceNames(curriculum, steps.subList(0, end)),
                new BoneWords(curriculum.skeleton()));
    }

    private static List<Operation> done(List<Step> steps) {
        return steps.stream().flatMap(step -> step.operations().stream()).toList();
    }

    /** The way the line ran. */
    public Way way() {
        return way;
    }

    /** The two cuttings, bone by bone. */
    public Comparison comparison() {
        return comparison;
    }

    /** The animal with the line cut where it ran. */
    public Animal moved() {
        return moved;
    }

    /** Every bone that ended up in another piece, in the order of the skeleton. */
    public List<Row> rows() {
        return comparison.elsewhere().stream()
                .map(bone -> new Row(
                        bone.part().name(),
                        Words.capital(say(bone.part())),
                        names.of(bone.should()),
                        names.of(bone.is())))
                .toList();
    }

    /** What a piece is called, with its article. */
    public String name(Comparison.Pair piece) {
        return names.of(piece);
    }

    /** One sentence for each piece that lost bones to another, and how many are left of what is counted there. */
    public List<String> sentences() {
        Map<List<String>, List<Whereabouts>> moves = new LinkedHashMap<>();
        comparison
                .elsewhere()
                .forEach(bone -> moves.computeIfAbsent(
                                List.of(name(bone.should()), name(bone.is())), pieces -> new ArrayList<>())
                        .add(bone));
        List<String> sentences = new ArrayList<>();
        moves.forEach((pieces, bones) -> sentences.add(Words.capital(say(bones)) + " should be in " + pieces.get(0)
                + " and " + (isOne(bones) ? "is" : "are") + " in " + pieces.get(1) + "."));
        sentences.add(
                moves.isEmpty() ? "No bone ends up in another piece." : "Every other bone is where it should be.");
        return sentences;
    }

    private static boolean isOne(List<Whereabouts> bones) {
        return bones.size() == 1;
    }

    private String say(List<Whereabouts> bones) {
        List<String> whole = bones.stream()
                .map(Whereabouts::part)
                .filter(part -> part.name().equals(part.bone().id()))
                .map(Part::name)
                .toList();
        List<String> said = new ArrayList<>();
        if (!whole.isEmpty()) {
            said.add(words.inSentence(whole));
        }
        bones.stream()
                .map(Whereabouts::part)
                .filter(part -> !part.name().equals(part.bone().id()))
                .forEach(part -> said.add(say(part)));
        return Words.list(said);
    }

    /** A bone in words, and which half of it: {@code the near half of left rib 13}. */
    private String say(Part part) {
        String said = words.inSentence(List.of(part.name()));
        if (part.halves().isSided()) {
            said = "the " + part.side().word() + " half of " + said;
        }
        for (End end : part.halves().ends()) {
            said = "the " + end.word() + " half of " + said;
        }
        return said;
    }

    /** Whether halves are told apart, so that near and far have to be explained. */
    public boolean tellsHalves() {
        return comparison.elsewhere().stream()
                .anyMatch(bone -> !bone.part().halves().ends().isEmpty());
    }
}
