package ribmark.database;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.UUID;

/** The passwords of the database's two users: the owner, and the one that serves requests and may not rewrite evidence. */
public record Keys(String owner, String requests) {

    /** Made up for a database that nobody opens twice. */
    public static Keys fresh() {
        return new Keys(UUID.randomUUID().toString(), UUID.randomUUID().toString());
    }

    /** Those kept beside the database file, made at the first start; only the account that runs the program can read them. */
    public static Keys in(Path folder) {
        Path file = folder.resolve("database.keys");
        try {
            if (Files.notExists(file)) {
                Files.createDirectories(folder);
                Files.createFile(file);
                if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
                    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
                }
                Keys made = fresh();
                Files.write(file, List.of(made.owner, made.requests));
            }
            List<String> lines = Files.readAllLines(file);
            return new Keys(lines.get(0), lines.get(1));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
