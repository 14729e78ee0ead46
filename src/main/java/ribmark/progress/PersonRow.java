package ribmark.progress;

import java.util.UUID;
import ribmark.curriculum.Breakdown;
import ribmark.signing.RibStrip;

/** One apprentice as a row of a table: the strip, how many steps are signed off, what to do. */
public record PersonRow(UUID id, String name, RibStrip strip, int signedOff, String todo) {

    static PersonRow of(Progress progress, Breakdown breakdown) {
        return new PersonRow(
                progress.id(),
                progress.name(),
                RibStrip.of(breakdown, progress.record()),
                progress.signedOff(),
                progress.todo());
    }
}
