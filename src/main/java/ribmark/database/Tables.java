package ribmark.database;

import org.flywaydb.core.Flyway;

/** Brings the tables up to date, one numbered file after the other. */
final class Tables {

    private Tables() {}

    static void bringUpToDate(DatabaseUrl url, Keys keys) {
        Flyway.configure()
                .dataSource(url.text(), "OWNER", keys.owner())
                .locations("classpath:db/migration")
                .cleanDisabled(true)
                .loggers("slf4j")
                .load()
                .migrate();
    }
}
