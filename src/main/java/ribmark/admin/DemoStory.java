package ribmark.admin;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ribmark.basics.Refused;

/** What happened at the college of the demo, told by several files and played out in the order it happened. */
final class DemoStory {

    private record Happening(Instant when, String told, Runnable work) {}

    private final DemoMoments moments;
    private final List<Happening> all = new ArrayList<>();

    DemoStory(DemoMoments moments) {
        this.moments = moments;
    }

    DemoMoments moments() {
        return moments;
    }

    /** Something that happened at a moment; what is told is named when it cannot have happened. */
    void at(Instant when, String told, Runnable work) {
        if (when.isAfter(moments.now())) {
            throw new Refused(told + ": this has not happened yet.");
        }
        all.add(new Happening(when, told, work));
    }

    void at(String when, String told, Runnable work) {
        at(moments.at(when), told, work);
    }

    /** Lets everything happen, the clock standing at each moment; equal moments in the order told. */
    void playOut(DemoClock clock) {
        all.sort(Comparator.comparing(Happening::when));
        for (Happening happening : all) {
            clock.standAt(happening.when());
            try {
                happening.work().run();
            } catch (Refused | ribmark.basics.NotFound no) {
                throw new Refused(happening.told() + ": " + no.getMessage());
            }
        }
    }
}
