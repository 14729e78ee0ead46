package ribmark.proof;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Measures how long the check of the lamb takes beside starting the machine and only parsing the same YAML: run its main by
 * hand, with nothing else running. No test waits for a clock.
 */
final class CheckSpeed {

    private static final int ROUNDS = 9;
    private static final int WARMING = 20;

    /** Something to be measured. */
    private interface Work {
        void run() throws IOException, InterruptedException;
    }

    private CheckSpeed() {}

    /** Without arguments it measures; with one it does that one thing and ends, for the measuring of a cold start. */
    public static void main(String[] args) throws IOException, InterruptedException {
        switch (args.length == 0 ? "" : args[0]) {
            case "parse" -> parse(ContentFiles.ours());
            case "check" -> check(ContentFiles.ours());
            default -> measure();
        }
    }

    private static void measure() throws IOException, InterruptedException {
        double parseCold = median(ROUNDS, () -> anew("parse"));
        double checkCold = median(ROUNDS, () -> anew("check"));
        say("cold", parseCold, checkCold);
        ContentFiles lamb = ContentFiles.ours();
        for (int i = 0; i < WARMING; i++) {
            parse(lamb);
            check(lamb);
        }
        double checkWarm = median(ROUNDS, () -> check(lamb));
        say("warm", median(ROUNDS, () -> parse(lamb)), checkWarm);
        ContentFiles flock = hundredfold(lamb);
        double hundred = median(1, () -> check(flock));
        System.out.printf("a hundred breakdowns %.0f ms, %.1f times one%n", hundred, hundred / checkWarm);
    }

    private static void say(String when, double parse, double check) {
        System.out.printf("%s: parse %.0f ms, check %.0f ms, ratio %.2f%n", when, parse, check, check / parse);
    }

    private static void anew(String what) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> call =
                List.of(java, "-cp", System.getProperty("java.class.path"), CheckSpeed.class.getName(), what);
        if (new ProcessBuilder(call).inheritIO().start().waitFor() != 0) {
            throw new IllegalStateException(what + " failed");
        }
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

    private static double median(int rounds, Work work) throws IOException, InterruptedException {
        double[] took = new double[rounds];
        for (int i = 0; i < rounds; i++) {
            long from = System.nanoTime();
            work.run();
            took[i] = (System.nanoTime() - from) / 1e6;
        }
        Arrays.sort(took);
        return took[rounds / 2];
    }
}
