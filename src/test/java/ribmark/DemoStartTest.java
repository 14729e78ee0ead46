package ribmark;
import org.junit.jupiter.api.Test;
class DemoStartTest {
    @Test
    void it_starts() {
        long t = System.nanoTime();
        try (App app = DemoCommand.filled(Settings.throwAway(0, java.util.Optional.empty()))) {
            System.out.println("filled in " + (System.nanoTime() - t) / 1000000 + " ms " + app.log().all().size() + " " + app.verify());
        }
    }
}
