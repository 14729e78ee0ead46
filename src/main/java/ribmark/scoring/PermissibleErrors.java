package ribmark.scoring;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How wrong a scale of one accuracy class may be, in steps of its load, both counted in its divisions; in use it may be wrong by
 * {@code inUse} times what it may be when it is verified. From {@code coarseFromPercent} of a piece on, a scale is too coarse for it.
 */
public record PermissibleErrors(
        String accuracyClass, List<Step> steps, double inUse, double coarseFromPercent, List<Ground> grounds) {

    /** Up to so many divisions of load, the error may be so many divisions. */
    public record Step(double upToDivisions, double errorDivisions) {}

    /** Keeps its own copies. */
    public PermissibleErrors {
        steps = List.copyOf(steps);
        grounds = List.copyOf(grounds);
    }

    /** What it may be wrong by when verified, in the unit of load and division; nothing beyond what the class may weigh. */
    public OptionalDouble whenVerified(double load, double division) {
        double divisions = Math.rint(load / division * 1e9) / 1e9;
        return steps.stream()
                .filter(step -> divisions <= step.upToDivisions())
                .mapToDouble(step -> step.errorDivisions() * division)
                .findFirst();
    }

    /** What it may be wrong by in use. */
    public OptionalDouble inUse(double load, double division) {
        OptionalDouble verified = whenVerified(load, division);
        return verified.isPresent() ? OptionalDouble.of(inUse * verified.getAsDouble()) : verified;
    }
}
