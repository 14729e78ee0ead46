package ribmark.proof;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import ribmark.contentfiles.ContentFiles;

/**
 * Measures how long the check of the lamb takes beside starting the machine and only parsing the same YAML, on the wall and
 * in time the processor spent: run its main by hand, from the jar, with nothing else running. No test waits for a clock.
 */
final class CheckSpeed {

    private static final int ROUNDS = 9;
    private static final int WARMING = 20;

    /** Something to be measured; it answers the processor's time in nanoseconds. */
    private interface Work {
        long run() throws IOException, InterruptedException;
    }

    /** The best of some rounds, in milliseconds. */
    private record Took(double wall, double processor) {

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.0f ms (processor %.0f ms)", wall, processor);
        }

        String times(Took other) {
            return String.format(
                    Locale.ROOT, "%.1f times (processor %.1f)", wall / other.wall, processor / other.processor);
        }
    }

    private CheckSpeed() {}

    /** Without arguments it measures; with one it does that one thing and ends, for the measuring of a cold start. */
    public static void main(String[] args) throws IOException, InterruptedException {
        switch (args.length == 0 ? "" : args[0]) {
            case "parse" -> parse(ContentFiles.ours());
            case "check" -> check(ContentFiles.ours());
            default -> measure();
        }
        if (args.length > 0) {
            System.out.println(processor());
        }
    }

    private static void measure() throws IOException, InterruptedException {
        say("cold", best(ROUNDS, () -> anew("parse")), best(ROUNDS, () -> anew("check")));
        ContentFiles lamb = ContentFiles.ours();
        for (int i = 0; i < WARMING; i++) {
            parse(lamb);
            check(lamb);
        }
        Took once = best(ROUNDS, here(() -> check(lamb)));
        say("warm", best(ROUNDS, here(() -> parse(lamb))), once);
        ContentFiles flock = hundredfold(lamb);
        Took hundred = best(1, here(() -> check(flock)));
        System.out.println("a hundred breakdowns " + hundred + ", " + hundred.times(once) + " one");
    }

    private static void say(String when, Took parse, Took check) {
        System.out.println(when + ": parse " + parse + ", check " + check + ", " + check.times(parse));
    }

    /** In a machine of its own, which tells what the processor spent on it from start to end. */
    private static long anew(String what) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> call =
                List.of(java, "-cp", System.getProperty("java.class.path"), CheckSpeed.class.getName(), what);
        Process process = new ProcessBuilder(call)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException(what + " failed");
        }
        return Long.parseLong(told.strip());
    }

    private static Work here(Runnable work) {
        return () -> {
            long from = processor();
            work.run();
            return processor() - from;
        };
    }

    private static long processor() {
        return ProcessHandle.current()
                .info()
                .totalCpuDuration()
                .map(Duration::toNanos)
                .orElse(0L);
    }

    private static void parse(ContentFiles files) {
        for (String path : files.paths()) {
            if (path.endsWith(".yaml")) {
                String text = new String(files.bytes(path).orElseThrow(), StandardCharsets.UTF_8);
                new Load(LoadSettings.builder().build()).loadFromString(text);
            }
        }
    }

    private static void check(ContentFiles files) {
        Check check = Check.of(files);
        if (!check.ok()) {
            throw new IllegalStateException(CheckText.of(check));
        }
    }

    /** The same breakdown a hundred times over, each under a name of its own. */
    private static ContentFiles hundredfold(ContentFiles lamb) {
        Map<String, byte[]> all = new TreeMap<>();
        for (String path : lamb.paths()) {
            byte[] bytes = lamb.bytes(path).orElseThrow();
            all.put(path, bytes);
            for (int i = 1; i < 100 && path.contains("/lamb/"); i++) {
                String name = "lamb-" + i;
                String text = new String(bytes, StandardCharsets.UTF_8);
                String own = path.endsWith("breakdown.yaml") ? text.replace("id: lamb\n", "id: " + name + "\n") : text;
                all.put(path.replace("/lamb/", "/" + name + "/"), own.getBytes(StandardCharsets.UTF_8));
            }
        }
        return ContentFiles.of(all);
    }

    private static Took best(int rounds, Work work) throws IOException, InterruptedException {
        double wall = Double.MAX_VALUE;
        double processor = Double.MAX_VALUE;
        for (int i = 0; i < rounds; i++) {
            long from = System.nanoTime();
            processor = Math.min(processor, work.run() / 1e6);
            wall = Math.min(wall, (System.nanoTime() - from) / 1e6);
        }
        return new Took(wall, processor);
    }
}
