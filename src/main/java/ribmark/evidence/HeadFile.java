package ribmark.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** The head kept outside the tables, because a chain alone cannot show that its end was cut off. */
public record HeadFile(Path file) {

    /** Replaces the head in one move, so that a kill leaves the old or the new one. */
    public void keep(Head head) {
        try {
            Path fresh = file.resolveSibling(file.getFileName() + ".new");
            Files.writeString(fresh, head + "\n");
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The head as last kept, if there is one. */
    public Optional<Head> read() {
        try {
            return Files.exists(file) ? Optional.of(Head.parse(Files.readString(file))) : Optional.empty();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
