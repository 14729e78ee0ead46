package ribmark.testing;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The program in a process of its own, so that it can really be killed. */
public final class OtherProcess implements AutoCloseable {

    private final Process process;
    private final BufferedReader out;

    private OtherProcess(List<String> command) {
        try {
            process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        } catch (IOException cannotStart) {
            throw new UncheckedIOException(cannotStart);
        }
    }

    /** Runs a command of the program, with something in front of the Java command where a test wants it. */
    public static OtherProcess running(List<String> before, String... arguments) {
        List<String> command = new ArrayList<>(before);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m", "-cp"));
        command.add(System.getProperty("java.class.path")
                .replace(File.pathSeparator + File.pathSeparator, File.pathSeparator));
        command.add("ribmark.App");
        command.addAll(List.of(arguments));
        return new OtherProcess(command);
    }

    /** The next line it prints. */
    public String line() {
        try {
            String line = out.readLine();
            if (line == null) {
                throw new AssertionError("The program ended before it said anything, exit " + process.waitFor());
            }
            return line;
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(broken);
        }
    }

    /** Its number among the processes of the machine. */
    public long pid() {
        return process.pid();
    }

    /** SIGKILL, and waits until it is gone. */
    public void kill() {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        waitFor();
    }

    /** SIGTERM, and waits until it has ended by itself. */
    public int stop() {
        process.destroy();
        return waitFor();
    }

    /** Waits for it to end. */
    public int waitFor() {
        try {
            return process.waitFor();
        } catch (InterruptedException interrupted) {
            throw new AssertionError(interrupted);
        }
    }

    @Override
    public void close() {
        kill();
    }
}
