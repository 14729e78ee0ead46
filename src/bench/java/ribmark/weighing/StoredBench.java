package ribmark.weighing;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import ribmark.App;
import ribmark.Settings;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.carcase.Age;
import ribmark.carcase.Carcase;
import ribmark.carcase.Checks;
import ribmark.carcase.Decision;
import ribmark.carcase.Intake;
import ribmark.carcase.Ticket;
import ribmark.carcase.Weighed;
import ribmark.people.Acting;
import ribmark.people.Person;
import ribmark.web.Role;

/** A stored weigh-up of eleven weights read out of the database and scored again by the tables of today; nothing is written. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class StoredBench {

    private static final int CARCASES = 50;

    private App app;
    private final List<Carcase> carcases = new ArrayList<>();
    private int next;

    /** Lambs at the scale in a database of their own. */
    @Setup
    public void weigh() {
        app = new App(Settings.throwAway(0, Optional.empty()), Clock.systemUTC());
        Person maeve = app.people().add("Maeve", Set.of(Role.ASSESSOR), Optional.empty());
        for (int i = 0; i < CARCASES; i++) {
            carcases.add(lamb(new Acting(maeve, Role.ASSESSOR), 100 + i));
        }
        if (!(scoredAgain() > 0)) {
            throw new IllegalStateException("nothing is scored");
        }
    }

    private Carcase lamb(Acting by, int kill) {
        Weighed own = new Weighed(Weight.ofKilograms("20.120"), false);
        Ticket ticket = new Ticket(
                "0118",
                LocalDate.now(),
                "Fernside Abattoir",
                "K-" + kill,
                own,
                "kidneys in, skirt out",
                Optional.of("3L"));
        Checks checks = new Checks("UK 9107", true, Age.UNDER, Checks.Cord.IN, true, 46, OptionalInt.of(28));
        Carcase lamb =
                app.carcases().add(new Intake("lamb", ticket, own, "block", checks), Decision.ACCEPT, "", by.person());
        once(lamb, by, "scrag", "scrag", "0.760");
        pair(lamb, by, "single-fore", "shoulders", "3.260");
        pair(lamb, by, "best-end", "best-ends", "1.000");
        pair(lamb, by, "loin", "loins", "1.000");
        once(lamb, by, "breasts", "breasts", "1.385");
        once(lamb, by, "legs", "legs-chump-on", "6.640");
        once(lamb, by, "kidneys", "kidneys", "0.100");
        once(lamb, by, "kidney-fat", "kidney-fat", "0.610");
        return lamb;
    }

    private void pair(Carcase lamb, Acting by, String cut, String row, String kilograms) {
        keep(lamb, by, cut, row, Side.LEFT, kilograms);
        keep(lamb, by, cut, row, Side.RIGHT, kilograms);
    }

    private void once(Carcase lamb, Acting by, String cut, String row, String kilograms) {
        keep(lamb, by, cut, row, Side.ONCE, kilograms);
    }

    private void keep(Carcase lamb, Acting by, String cut, String row, Side side, String kilograms) {
        var typed = new KeptReading.Typed(
                cut,
                Optional.of(row),
                side,
                Weight.ofKilograms(kilograms),
                Optional.empty(),
                "block",
                false,
                Optional.empty(),
                Optional.empty());
        app.weighUps().keep(lamb.id(), typed, by);
    }

    /** One of them scored again. */
    @Benchmark
    public double scoredAgain() {
        next = (next + 1) % CARCASES;
        return app.weighed()
                .reckonNow(carcases.get(next))
                .orElseThrow()
                .score()
                .yieldScore()
                .orElse(Double.NaN);
    }

    /** Closes the database. */
    @TearDown
    public void close() {
        app.close();
    }
}
