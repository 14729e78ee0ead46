package ribmark.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import ribmark.basics.Refused;

/**
 * The one door to the tables. Reading runs side by side; writing is one at a time, in one transaction, and what was written is
 * forced to disk before {@link #writing} returns.
 */
public final class Database implements AutoCloseable {

    private static final int CONNECTIONS = 8;

    /** How long another program may take to let go of the file. */
    private static final long PATIENCE_MS = 4000;

    private final HikariDataSource pool;
    private final Jdbi jdbi;
    private final Connection owner;
    private final ReentrantLock writer = new ReentrantLock(true);
    private final ThreadLocal<Handle> current = new ThreadLocal<>();
    private volatile Runnable afterWriting = () -> {};

    private Database(HikariDataSource pool, Connection owner) {
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
        this.owner = owner;
    }

    /** Opens the database, brings its tables up to date, and from then on works as a user who may not rewrite evidence. */
    public static Database open(DatabaseUrl url, Keys keys) {
        System.setProperty("h2.bindAddress", "127.0.0.1");
        try {
            Connection owner = DriverManager.getConnection(url.text(), "OWNER", keys.owner());
            Tables.bringUpToDate(url, keys);
            Rights.grant(owner, keys);
            return new Database(pool(url.forRequests(), keys), owner);
        } catch (SQLException cannotOpen) {
            throw cannotOpen(cannotOpen);
        }
    }

    /** Opens a database that is there already, to read only; it may be open in a running program at the same time. */
    public static Database openToRead(DatabaseUrl url, Keys keys) {
        System.setProperty("h2.bindAddress", "127.0.0.1");
        try {
            return new Database(pool(url.forRequests() + ";IFEXISTS=TRUE", keys), null);
        } catch (HikariPool.PoolInitializationException cannotOpen) {
            throw cannotOpen(cannotOpen.getCause());
        }
    }

    /** Without the number that the database adds to its own sentence. */
    private static Refused cannotOpen(Throwable why) {
        String reason = String.valueOf(why.getMessage())
                .lines()
                .findFirst()
                .orElse("")
                .replace("IO Exception", "cannot read or write")
                .replaceAll(" *\\[\\d.*$", "");
        return new Refused("The database cannot be opened. It says: " + reason
                + ". Where another program is just starting or stopping on it, try again in a moment.");
    }

    private static HikariDataSource pool(String url, Keys keys) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setUsername(Rights.REQUESTS);
        config.setPassword(keys.requests());
        config.setMaximumPoolSize(CONNECTIONS);
        config.setInitializationFailTimeout(PATIENCE_MS);
        return new HikariDataSource(config);
    }

    /** What else is done each time something was written and is on disk, before the writer hears of it. */
    public void afterWriting(Runnable work) {
        afterWriting = work;
    }

    /** Looks something up; inside {@link #writing} it sees what was just written. */
    public <T> T reading(Function<Handle, T> work) {
        Handle open = current.get();
        return open != null ? work.apply(open) : jdbi.withHandle(work::apply);
    }

    /** Writes all of it or nothing, and returns only when it is on disk. Inside another writing it is part of that. */
    public <T> T writing(Function<Handle, T> work) {
        if (current.get() != null) {
            return work.apply(current.get());
        }
        writer.lock();
        try {
            T done = jdbi.inTransaction(handle -> within(handle, work));
            forceToDisk();
            afterWriting.run();
            return done;
        } finally {
            writer.unlock();
        }
    }

    /** The same for work that answers nothing. */
    public void write(Consumer<Handle> work) {
        writing(handle -> {
            work.accept(handle);
            return null;
        });
    }

    private <T> T within(Handle handle, Function<Handle, T> work) {
        current.set(handle);
        try {
            return work.apply(handle);
        } finally {
            current.remove();
        }
    }

    /** CHECKPOINT SYNC needs the owner's rights; the users who serve requests do not have them. */
    private void forceToDisk() {
        try (Statement statement = owner.createStatement()) {
            statement.execute("CHECKPOINT SYNC");
        } catch (SQLException notForced) {
            throw new IllegalStateException("What was written could not be forced to disk", notForced);
        }
    }

    @Override
    public void close() {
        pool.close();
        try {
            if (owner != null) {
                owner.close();
            }
        } catch (SQLException alreadyGone) {
            throw new IllegalStateException(alreadyGone);
        }
    }
}
