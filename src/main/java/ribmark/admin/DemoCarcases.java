package ribmark.admin;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ribmark.basics.Refused;
import ribmark.basics.Weight;
import ribmark.carcase.Age;
import ribmark.carcase.Checks;
import ribmark.carcase.Decision;
import ribmark.carcase.Intake;
import ribmark.carcase.Ticket;
import ribmark.carcase.Weighed;

/** The carcases of the demo as their file gives them. What most have in common is left out there. */
record DemoCarcases(List<Body> carcases) {

    /** One carcase: what its ticket says, what was found, and what was decided first and later. */
    record Body(
            int lamb,
            String when,
            String by,
            String kill,
            int hung,
            String from,
            String ticketKg,
            String kg,
            boolean hot,
            String scale,
            boolean kidneysOut,
            String fat,
            String dressing,
            String mark,
            boolean blurred,
            String age,
            String cord,
            int meatTenthsC,
            Integer kidneyTenthsC,
            String decision,
            String reason,
            List<Later> later,
            List<Count> counted) {

        Body {
            later = later == null ? List.of() : later;
            counted = counted == null ? List.of() : counted;
        }

        Decision decided() {
            return decision == null ? Decision.ACCEPT : DemoCarcases.decision(decision);
        }

        String why() {
            return reason == null ? "" : reason;
        }

        Intake intake(String breakdown, String usualDressing, LocalDate arrived) {
            Ticket ticket = new Ticket(
                    kill,
                    arrived.minusDays(hung),
                    from,
                    "B" + kill.substring(0, 2),
                    new Weighed(Weight.ofKilograms(ticketKg), hot),
                    dressing == null ? usualDressing : dressing,
                    Optional.ofNullable(fat));
            Weighed own = new Weighed(Weight.ofKilograms(kg), hot);
            return new Intake(breakdown, ticket, own, scale == null ? "rail" : scale, checks());
        }

        private Checks checks() {
            return new Checks(
                    mark,
                    !blurred,
                    Age.of(age == null ? Age.UNDER.code() : age).orElseThrow(() -> unknown("age", age)),
                    Checks.Cord.of(cord == null ? Checks.Cord.IN.code() : cord)
                            .orElseThrow(() -> unknown("cord", cord)),
                    !kidneysOut,
                    meatTenthsC,
                    kidneyTenthsC == null ? OptionalInt.empty() : OptionalInt.of(kidneyTenthsC));
        }
    }

    /** A later decision. */
    record Later(String when, String by, String decision, String reason) {

        Decision decided() {
            return DemoCarcases.decision(decision);
        }
    }

    /** Ribs or loin vertebrae as somebody counted them. */
    record Count(String when, String by, Integer thoracic, Integer lumbar) {

        OptionalInt ribs() {
            return thoracic == null ? OptionalInt.empty() : OptionalInt.of(thoracic);
        }

        OptionalInt loin() {
            return lumbar == null ? OptionalInt.empty() : OptionalInt.of(lumbar);
        }
    }

    static DemoCarcases read() {
        return DemoFile.read("carcases.yaml", DemoCarcases.class);
    }

    private static Decision decision(String word) {
        return Decision.of(word).orElseThrow(() -> unknown("decision", word));
    }

    private static Refused unknown(String what, String word) {
        return new Refused("“" + word + "” is no " + what + ".");
    }
}
