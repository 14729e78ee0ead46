package ribmark.testing;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import ribmark.App;
import ribmark.Settings;
import ribmark.admin.DemoClock;
import ribmark.admin.DemoCollege.SignIn;
import ribmark.web.Role;

/** The demo on a free port, filled once for all tests that only read it. */
public final class TestDemo {

    private static TestDemo running;

    /** The program itself. */
    public final App app;

    /** Where it listens. */
    public final String address;

    private TestDemo() {
        app = App.demo(Settings.throwAway(0, Optional.empty()), new DemoClock(Clock.systemUTC()));
        app.college().fill();
        address = app.start();
    }

    /** The one demo of this run; it ends with the run. */
    public static synchronized TestDemo once() {
        if (running == null) {
            running = new TestDemo();
        }
        return running;
    }

    /** A demo of its own, for a test that changes things; it ends with the run. */
    public static TestDemo fresh() {
        return new TestDemo();
    }

    /** The first of those who act in a role. */
    public String first(Role role) {
        return signIns().stream()
                .filter(one -> one.role().equals(role.word()))
                .map(SignIn::name)
                .findFirst()
                .orElseThrow();
    }

    /** The password of everybody in the demo. */
    public String password() {
        return signIns().get(0).password();
    }

    /** Everybody who can sign in. */
    public List<SignIn> signIns() {
        return app.college().signIns();
    }

    /** A browser of somebody of the demo who has just signed in. */
    public Browser as(String name) {
        SignIn one = signIns().stream()
                .filter(signIn -> signIn.name().equals(name))
                .findFirst()
                .orElseThrow();
        Browser browser = new Browser(address);
        browser.signIn(one.name(), one.password());
        return browser;
    }

    /** Everything in every table but the sessions, to see whether anything was changed. */
    public TreeMap<String, List<String>> everything() {
        return app.database().reading(handle -> {
            TreeMap<String, List<String>> all = new TreeMap<>();
            tables(handle).forEach(table -> all.put(table, rows(handle, table)));
            return all;
        });
    }

    private static List<String> tables(Handle handle) {
        return handle.createQuery("select lower(table_name) from information_schema.tables"
                        + " where table_schema = 'PUBLIC' order by 1")
                .mapTo(String.class)
                .filter(table -> !table.equals("sessions") && !table.equals("flyway_schema_history"))
                .list();
    }

    private static List<String> rows(Handle handle, String table) {
        return handle
                .createQuery("select * from " + table)
                .mapToMap()
                .map(row -> new TreeMap<>(row).toString())
                .stream()
                .sorted()
                .toList();
    }
}
