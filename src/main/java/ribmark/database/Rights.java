package ribmark.database;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What the user who serves requests may do: read and insert everywhere, change only what is not evidence. */
final class Rights {

    static final String REQUESTS = "REQUESTS";

    /** Tables whose rows are not evidence and may change or go. */
    private static final Set<String> MAY_CHANGE = Set.of("sessions", "failed_sign_ins", "one_time_links", "answered");

    private Rights() {}

    static void grant(Connection owner, Keys keys) throws SQLException {
        try (Statement statement = owner.createStatement()) {
            statement.execute("CREATE USER IF NOT EXISTS " + REQUESTS + " PASSWORD '" + keys.requests() + "'");
            for (String table : tables(statement)) {
                String rights = MAY_CHANGE.contains(table) ? "SELECT, INSERT, UPDATE, DELETE" : "SELECT, INSERT";
                statement.execute("GRANT " + rights + " ON " + table + " TO " + REQUESTS);
            }
        }
    }

    private static List<String> tables(Statement statement) throws SQLException {
        List<String> names = new ArrayList<>();
        String ours = "SELECT table_name FROM information_schema.tables WHERE table_schema = 'PUBLIC'";
        try (ResultSet rows = statement.executeQuery(ours)) {
            while (rows.next()) {
                names.add(rows.getString(1).toLowerCase(Locale.ROOT));
            }
        }
        names.remove("flyway_schema_history");
        return names;
    }
}
