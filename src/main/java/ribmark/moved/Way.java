package ribmark.moved;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Line;
import ribmark.curriculum.Step;

/** One way a line may have run elsewhere: so many places towards one end, on both sides or on one. */
public record Way(Line line, Line.Run run, Side side) {

    /** The sides a line can be wrong on, as asked. */
    static final List<Side> SIDES = List.of(Side.BOTH, Side.LEFT, Side.RIGHT);

    /** Every way the lines of a breakdown can run elsewhere, in the order of the file. */
    public static List<Way> all(Breakdown breakdown) {
        return breakdown.lines().stream().flatMap(Way::of).toList();
    }

    /** Every way the lines that this step cuts can run elsewhere. */
    public static List<Way> at(Breakdown breakdown, Step step) {
        return breakdown.linesCutAt(step).stream().flatMap(Way::of).toList();
    }

    private static Stream<Way> of(Line line) {
        return line.runs().stream()
                .flatMap(run ->
                        SIDES.stream().filter(run.operations()::containsKey).map(side -> new Way(line, run, side)));
    }

    /** The way these words name, as {@link #words()} gives them, if there is one. */
    public static Optional<Way> of(Breakdown breakdown, List<String> words) {
        return all(breakdown).stream().filter(way -> way.words().equals(words)).findFirst();
    }

    /** The line, the end it moved to, how many places and the side, as files and addresses say them. */
    public List<String> words() {
        return Arrays.asList(line.id(), run.towards(), Integer.toString(run.by()), side.word());
    }

    /** {@code one rib towards the head on the left}. */
    public String howFar() {
        return run.howFar() + " towards the " + run.towards() + (side == Side.BOTH ? "" : " on the " + side.word());
    }

    /** {@code The fore line ran one rib towards the head on the left}. */
    public String says() {
        return line.name() + " ran " + howFar();
    }

    /** Where its answer is read, for a step that cuts the line. */
    public String address(String step) {
        return "/steps/" + step + "/moved?line=" + line.id() + "&towards=" + run.towards() + "&by=" + run.by()
                + "&side=" + side.word();
    }
}
