package ribmark;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;
import ribmark.database.DatabaseUrl;
import ribmark.database.Keys;

/** Every setting, its default, and where it comes from: an option of the command, else RIBMARK_… in the environment. */
public record Settings(int port, DatabaseUrl url, Keys keys, Optional<Path> data, Optional<Path> content, ZoneId zone) {

    /** The port when none is named. */
    public static final String PORT = "8080";

    /** The folder of the college's data when none is named. */
    public static final String DATA = "ribmark-data";

    /** A throw-away database that is gone when the program ends. */
    public static Settings throwAway(int port, Optional<Path> content) {
        return new Settings(
                port, DatabaseUrl.throwAway(), Keys.fresh(), Optional.empty(), content, ZoneId.systemDefault());
    }

    /** The college's own data in a folder; a database address of its own is checked for safety. */
    public static Settings inFolder(int port, Path data, Optional<String> url, Optional<Path> content) {
        DatabaseUrl address = url.map(DatabaseUrl::named).orElseGet(() -> DatabaseUrl.inFolder(data));
        return new Settings(port, address, Keys.in(data), Optional.of(data), content, ZoneId.systemDefault());
    }
}
