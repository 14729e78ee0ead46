package ribmark.testing;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import ribmark.basics.Weight;
import ribmark.carcase.Age;
import ribmark.carcase.Checks;
import ribmark.carcase.Intake;
import ribmark.carcase.Ticket;
import ribmark.carcase.Weighed;

/** Carcases as they arrive in tests; everything about them is invented. */
public final class Carcases {

    private Carcases() {}

    /** A young lamb of this weight, cold, kidneys in, with nothing wrong. */
    public static Intake lambOf(String kilograms) {
        Weighed own = new Weighed(Weight.ofKilograms(kilograms), false);
        Ticket ticket = new Ticket(
                "0118",
                LocalDate.of(2026, 11, 23),
                "Fernside Abattoir",
                "B-47",
                own,
                "kidneys in, skirt out",
                Optional.of("3L"));
        Checks checks = new Checks("UK 9107", true, Age.UNDER, Checks.Cord.IN, true, 46, OptionalInt.of(28));
        return new Intake("lamb", ticket, own, "rail", checks);
    }
}
