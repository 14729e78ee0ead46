package ribmark.curriculum;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.anatomy.Operation;
import ribmark.basics.Side;

/**
 * A line of the breakdown that can run elsewhere than it should: the steps that cut it, what is assumed of knife and saw
 * then, and the ways it can run.
 */
public record Line(String id, String name, List<String> steps, String assumes, List<Run> runs, List<RestsOn> restsOn) {

    /**
     * One way it can run: so many places towards one end, in words too. What is then done instead of the steps stands under
     * the side it ran wrong on; a side that is not there cannot be wrong alone.
     */
    public record Run(
            String towards, int by, String howFar, Map<Side, List<Operation>> operations, List<RestsOn> restsOn) {}

    /** The run towards this end and so many places away, if there is one. */
    public Optional<Run> run(String towards, int by) {
        return runs.stream()
                .filter(run -> run.towards().equals(towards) && run.by() == by)
                .findFirst();
    }

    /** Whether this step is one of those that cut it. */
    public boolean isCutAt(Step step) {
        return steps.contains(step.id());
    }
}
