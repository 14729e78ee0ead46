package ribmark.database;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import ribmark.basics.Refused;

/**
 * The address of the database, with the settings that keep what was acknowledged. H2's own default loses commits on a plain
 * kill; WRITE_DELAY=0 does not.
 */
public record DatabaseUrl(String text) {

    private static final String FILE = "JDBC:H2:FILE:";
    private static final String SAFE = ";WRITE_DELAY=0";
    private static final List<String> UNSAFE = List.of(
            "LOG=",
            "LOCK_MODE=",
            "FILE_LOCK=NO",
            "READ_UNCOMMITTED",
            "UNDO_LOG=",
            "MULTI_THREADED=",
            "INIT=",
            "RUNSCRIPT");

    /** Refuses any address under which a signature could be lost. */
    public DatabaseUrl {
        String upper = text.toUpperCase(Locale.ROOT);
        if (!upper.startsWith(FILE) && !upper.startsWith("JDBC:H2:MEM:")) {
            throw new Refused("The database address must begin with jdbc:h2:file: and name a file. It was: " + text);
        }
        if (!(upper + ";").contains(SAFE + ";") || upper.split("WRITE_DELAY=", -1).length != 2) {
            throw new Refused("The database address is not safe: without " + SAFE.substring(1)
                    + " a kill loses marks already confirmed. Add " + SAFE + " to it.");
        }
        for (String setting : UNSAFE) {
            if (upper.contains(setting)) {
                throw new Refused("The database address is not safe: take out " + setting
                        + " which weakens what is kept. It was: " + text);
            }
        }
    }

    /** One that a college names for its own data: it must outlive the program. */
    public static DatabaseUrl named(String text) {
        DatabaseUrl named = new DatabaseUrl(text);
        if (!text.toUpperCase(Locale.ROOT).startsWith(FILE)) {
            throw new Refused("The database address is not safe: what is kept in memory is gone when the program stops."
                    + " Begin it with jdbc:h2:file: and name a file.");
        }
        return named;
    }

    /** A file in this folder, shared with a second command over loopback only. */
    public static DatabaseUrl inFolder(Path folder) {
        Path file = folder.toAbsolutePath().normalize().resolve("ribmark");
        return new DatabaseUrl("jdbc:h2:file:" + file + SAFE + ";AUTO_SERVER=TRUE");
    }

    /** Gone when the program ends. */
    public static DatabaseUrl throwAway() {
        return new DatabaseUrl("jdbc:h2:mem:" + UUID.randomUUID() + SAFE);
    }

    /** The same for the user who serves requests, who has not the right to change settings; the owner's connection has set them. */
    String forRequests() {
        return text.replaceAll("(?i);WRITE_DELAY=0", "");
    }
}
