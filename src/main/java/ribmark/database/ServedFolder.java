package ribmark.database;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import ribmark.basics.Refused;

/** A folder of data that one running program has to itself, so that records are written by one hand; a kill lets go of it. */
public record ServedFolder(FileChannel held) implements AutoCloseable {

    /** Takes the folder, or refuses because another program has it. */
    public static ServedFolder alone(Path folder) {
        try {
            FileChannel file = FileChannel.open(
                    folder.resolve("served.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!takes(file)) {
                file.close();
                throw new Refused("Another program serves " + folder
                        + " already. Stop that one first, or name another folder with --data.");
            }
            return new ServedFolder(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static boolean takes(FileChannel file) throws IOException {
        try {
            return file.tryLock() != null;
        } catch (OverlappingFileLockException here) {
            return false;
        }
    }

    @Override
    public void close() {
        try {
            held.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
