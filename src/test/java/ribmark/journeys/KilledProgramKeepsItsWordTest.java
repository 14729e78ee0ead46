package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.App;
import ribmark.Settings;
import ribmark.evidence.Verification;
import ribmark.people.Person;
import ribmark.testing.Browser;
import ribmark.testing.OtherProcess;

/** S-01 and S-09: what was answered "kept" is there after a kill at a random moment, and after an orderly stop. */
class KilledProgramKeepsItsWordTest {

    private static final String PASSWORD = "a sentence of my own";

    @Test
    void nothing_acknowledged_is_lost_by_a_kill(@TempDir Path folder) {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        List<String> kept = new ArrayList<>();
        int kills = Math.max(3, Integer.getInteger("drills", 3));
        for (int kill = 0; kill < kills; kill++) {
            try (OtherProcess program =
                    OtherProcess.running(List.of(), "serve", "--port", "0", "--data", folder.toString())) {
                Browser admin = signedIn(program, kill == 0);
                Thread killer = killAfter(program, 50 + random.nextInt(1500));
                addPeopleUntilItIsGone(admin, kill, kept);
                join(killer);
            }
            assertThat(namesIn(folder)).as("seed %d, kill %d", seed, kill).containsAll(kept);
        }
        assertThat(kept).as("something was acknowledged").isNotEmpty();
    }

    @Test
    void an_orderly_stop_ends_within_ten_seconds_and_loses_nothing(@TempDir Path folder) {
        long before = System.nanoTime();
        try (OtherProcess program =
                OtherProcess.running(List.of(), "serve", "--port", "0", "--data", folder.toString())) {
            Browser admin = signedIn(program, true);
            List<String> kept = new ArrayList<>();
            assertThat(add(admin, "Ada", kept)).isTrue();
            before = System.nanoTime();
            program.stop();
            assertThat(namesIn(folder)).contains("Ada");
        }
        assertThat((System.nanoTime() - before) / 1_000_000_000L).isLessThan(20);
    }

    static Browser signedIn(OtherProcess program, boolean first) {
        String address = program.line().replaceFirst(".* (http://\\S+)$", "$1");
        Browser browser = Browser.at(address);
        if (first) {
            String link = program.line().replaceFirst(".*(/new-password/\\S+)$", "$1");
            browser.open(link).fill("name", "Petra").fill("password", PASSWORD).press("Keep this password");
        }
        browser.signIn("Petra", PASSWORD);
        return browser;
    }

    private static void addPeopleUntilItIsGone(Browser admin, int kill, List<String> kept) {
        try {
            for (int n = 0; n < 10_000 && add(admin, "Person " + kill + "." + n, kept); n++) {
                Thread.onSpinWait();
            }
        } catch (AssertionError gone) {
            assertThat(gone.getMessage()).as("the program is gone").isNotNull();
        }
    }

    private static boolean add(Browser admin, String name, List<String> kept) {
        var form = admin.open("/people/new").fill("name", name).choose("roles", "apprentice");
        HttpResponse<String> answer = form.pressAndStay("Add them");
        if (answer.statusCode() == 303) {
            kept.add(name);
        }
        return answer.statusCode() == 303;
    }

    private static List<String> namesIn(Path folder) {
        Settings settings = Settings.inFolder(0, folder, Optional.empty(), Optional.empty());
        try (App app = new App(settings, Clock.systemUTC())) {
            Verification found = app.verify();
            assertThat(found.holds()).as(found.why()).isTrue();
            return app.people().all().stream().map(Person::name).toList();
        }
    }

    private static Thread killAfter(OtherProcess program, int millis) {
        Thread killer = new Thread(() -> {
            try {
                Thread.sleep(millis);
            } catch (InterruptedException early) {
                Thread.currentThread().interrupt();
            }
            program.kill();
        });
        killer.start();
        return killer;
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException interrupted) {
            throw new AssertionError(interrupted);
        }
    }
}
