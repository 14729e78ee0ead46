package ribmark.slips;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;

/** A line the weights may speak of: which, towards where, by how many steps, on which side; without a line, that nothing was moved. */
public record Explanation(
        Optional<String> line, Optional<String> towards, int by, Optional<Side> side, double probability) {

    /** What two of them have in common but for how far the line went. */
    List<Object> way() {
        return List.of(line, towards, side);
    }
}
