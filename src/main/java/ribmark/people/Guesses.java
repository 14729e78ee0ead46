package ribmark.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import ribmark.database.Database;

/** Slows down whoever guesses passwords: after ten wrong ones under a name in a quarter of an hour, it waits. */
public final class Guesses {

    private static final int AT_MOST = 10;
    private static final Duration WITHIN = Duration.ofMinutes(15);

    private final Database database;
    private final Clock clock;

    /** Wrong passwords are counted by name, whether or not there is such an account. */
    public Guesses(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    boolean tooMany(String name) {
        Instant since = clock.instant().minus(WITHIN);
        return database.reading(handle -> handle.createQuery(
                                "select count(*) from failed_sign_ins where name_key = :key and failed_at > :since")
                        .bind("key", PeopleStore.key(name))
                        .bind("since", since)
                        .mapTo(Integer.class)
                        .one())
                >= AT_MOST;
    }

    void wrong(String name) {
        String key = PeopleStore.key(name);
        String kept = key.length() > 200 ? key.substring(0, 200) : key;
        database.write(handle -> handle.execute(
                "insert into failed_sign_ins (name_key, failed_at) values (?, ?)", kept, clock.instant()));
    }

    void right(String name) {
        database.write(
                handle -> handle.execute("delete from failed_sign_ins where name_key = ?", PeopleStore.key(name)));
    }
}
