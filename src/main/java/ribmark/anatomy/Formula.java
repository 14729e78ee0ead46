package ribmark.anatomy;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.basics.Refused;

/** How many vertebrae an animal has in each region of its spine, from head to tail. */
public record Formula(List<Integer> counts) {

    /** More than this in one region is taken for a slip of the pen; ours, well above any count read for sheep. */
    public static final int MOST = 30;

    private static final Pattern WRITTEN = Pattern.compile("(0|[1-9][0-9]{0,3})(\\s*,\\s*(0|[1-9][0-9]{0,3}))*");

    /** Refuses a count nobody has seen. */
    public Formula {
        counts = List.copyOf(counts);
        for (int count : counts) {
            if (count < 0 || count > MOST) {
                throw new Refused("A vertebral formula with " + count + " in one region is out of range: count again, "
                        + MOST + " is the most.");
            }
        }
    }

    /** Reads whole numbers with commas between them. */
    public static Formula parse(String written) {
        String text = written == null ? "" : written.strip();
        if (!WRITTEN.matcher(text).matches()) {
            throw new Refused("“" + text
                    + "” is not a vertebral formula: write the number of vertebrae in each region, head to tail, as whole"
                    + " numbers with commas between them.");
        }
        return new Formula(Stream.of(text.split(","))
                .map(count -> Integer.valueOf(count.strip()))
                .toList());
    }

    /** As it is written. */
    @Override
    public String toString() {
        return counts.stream().map(String::valueOf).collect(Collectors.joining(","));
    }
}
