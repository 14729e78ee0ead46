package ribmark.slips;

import static org.assertj.core.api.Assertions.assertThat;

/** How many lambs a drill takes, and whether a share of them meets its bar: a small drill gets room for the luck of the draw. */
final class Drill {

    static final boolean FULL = System.getProperty("drills") != null;

    private static final double LUCK = 3;

    private Drill() {}

    static int lambs(int few, int many) {
        return FULL ? many : few;
    }

    static void atLeast(String what, double bar, int hits, int of) {
        say(what, bar, hits, of);
        assertThat(percent(hits, of)).as(what).isGreaterThanOrEqualTo(bar - room(bar, of));
    }

    static void atMost(String what, double bar, int hits, int of) {
        say(what, bar, hits, of);
        assertThat(percent(hits, of)).as(what).isLessThanOrEqualTo(bar + room(bar, of));
    }

    private static double percent(int hits, int of) {
        return 100.0 * hits / of;
    }

    /** Three standard deviations of a share, in percent, in a small drill; none in a full one. */
    private static double room(double bar, int of) {
        return FULL ? 0 : LUCK * Math.sqrt(bar * (100 - bar) / of) + 100.0 / of;
    }

    private static void say(String what, double bar, int hits, int of) {
        System.out.printf("drill: %s: %.1f %% of %d, bar %.1f%n", what, percent(hits, of), of, bar);
    }
}
