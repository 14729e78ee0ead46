package ribmark.testing;

import java.util.Optional;
import java.util.Set;
import ribmark.App;
import ribmark.Settings;
import ribmark.people.Person;
import ribmark.web.Role;

/** The real program on a free port, with a database of its own that is gone afterwards. */
public final class TestApp implements AutoCloseable {

    /** The password of everybody in a test. */
    public static final String PASSWORD = "four quiet words here";

    private static String hash;

    /** The clock of this program; it stands still until moved. */
    public final MovableClock clock = new MovableClock();

    /** The program itself. */
    public final App app;

    /** Where it listens. */
    public final String address;

    /** Starts it. */
    public TestApp() {
        this(Settings.throwAway(0, Optional.empty()));
    }

    /** Starts it with settings of the test's own. */
    public TestApp(Settings settings) {
        app = new App(settings, clock);
        address = app.start();
    }

    /** Somebody with an account, in these roles; the same name answers the same person. */
    public Person person(String name, Role... roles) {
        return app.people().named(name).orElseGet(() -> {
            Person made = app.people().add(name, Set.of(roles), Optional.empty());
            app.letIn(made, hashOnce());
            return made;
        });
    }

    /** A browser of somebody who has just signed in. */
    public Browser as(String name, Role... roles) {
        person(name, roles);
        Browser browser = new Browser(address);
        browser.signIn(name, PASSWORD);
        return browser;
    }

    /** A browser of nobody yet. */
    public Browser visitor() {
        return new Browser(address);
    }

    private synchronized String hashOnce() {
        synchronized (TestApp.class) {
            if (hash == null) {
                hash = app.passwords().hash(PASSWORD);
            }
            return hash;
        }
    }

    @Override
    public void close() {
        app.close();
    }
}
