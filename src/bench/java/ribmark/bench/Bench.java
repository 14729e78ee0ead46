package ribmark.bench;

import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Runs the benchmarks named by a regular expression in many short rounds and tells the fastest round of each, which others on the
 * machine disturb least; then how many times its floor the scoring takes.
 */
public final class Bench {

    private Bench() {}

    /** The expression is the only argument. */
    public static void main(String[] args) throws RunnerException {
        var options = new OptionsBuilder()
                .include(args[0])
                .forks(3)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(2))
                .measurementIterations(200)
                .measurementTime(TimeValue.milliseconds(10))
                .verbosity(VerboseMode.SILENT)
                .jvmArgs("-Xmx512m", "-XX:+UseSerialGC")
                .build();
        Map<String, Double> fastest = new TreeMap<>();
        for (RunResult result : new Runner(options).run()) {
            String name = result.getParams().getBenchmark().replaceFirst(".*\\.", "");
            var times = result.getPrimaryResult().getStatistics();
            fastest.put(name, times.getMin());
            System.out.printf(
                    "%-12s fastest %.0f, median %.0f, mean %.0f %s%n",
                    name,
                    times.getMin(),
                    times.getPercentile(50),
                    times.getMean(),
                    result.getPrimaryResult().getScoreUnit());
        }
        if (fastest.containsKey("scored") && fastest.containsKey("byHand")) {
            System.out.printf("scored / byHand: %.2f%n", fastest.get("scored") / fastest.get("byHand"));
        }
    }
}
