package ribmark.admin;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import ribmark.basics.Refused;

/** The FILE of a command: a path, or {@code -} for standard input. */
record InputFile(String name, InputStream standardInput) {

    byte[] read() {
        try {
            if (name.equals("-")) {
                return standardInput.readAllBytes();
            }
            Path path = Path.of(name);
            if (!Files.isRegularFile(path)) {
                throw new Refused("There is no file " + name + ".");
            }
            return Files.readAllBytes(path);
        } catch (IOException | InvalidPathException unreadable) {
            throw new Refused("The file " + name + " cannot be read.");
        }
    }

    boolean endsIn(String ending) {
        return name.endsWith(ending);
    }
}
