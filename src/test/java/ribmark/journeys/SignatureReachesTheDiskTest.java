package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.testing.Browser;
import ribmark.testing.OtherProcess;

/** S-02: everything acknowledged was forced to disk before the answer, counted in the calls the program makes to the system. */
class SignatureReachesTheDiskTest {

    private static final int DEEDS = 20;

    @Test
    void each_acknowledged_deed_is_forced_to_disk(@TempDir Path folder) throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/strace")), "strace is not on this machine");
        Path calls = folder.resolve("calls");
        List<String> strace =
                List.of("/usr/bin/strace", "-f", "-e", "trace=fsync,fdatasync,msync", "-o", calls.toString());
        try (OtherProcess program = OtherProcess.running(
                strace, "serve", "--port", "0", "--data", folder.resolve("data").toString())) {
            Browser admin = KilledProgramKeepsItsWordTest.signedIn(program, true);
            long before = forced(calls);
            for (int n = 0; n < DEEDS; n++) {
                int status = admin.open("/people/new")
                        .fill("name", "Person " + n)
                        .choose("roles", "apprentice")
                        .pressAndStay("Add them")
                        .statusCode();
                assertThat(status).isEqualTo(303);
            }
            assertThat(forced(calls) - before)
                    .as("calls that force to disk, for %d deeds", DEEDS)
                    .isGreaterThanOrEqualTo(DEEDS);
        }
    }

    private static long forced(Path calls) throws IOException {
        try (var lines = Files.lines(calls)) {
            return lines.filter(line -> line.contains("fsync(") || line.contains("fdatasync("))
                    .count();
        }
    }
}
