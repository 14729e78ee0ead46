package ribmark.carcase;

import java.util.Optional;
import ribmark.web.Form;

/** A later decision as typed: one that may follow the one before, and always a reason. */
record DecisionForm(Optional<Decision> decision, String reason) {

    static DecisionForm read(Form form, Carcase carcase) {
        Optional<Decision> decision = Decision.of(form.oneOf(
                "decision",
                "What happens to " + carcase.name(),
                carcase.decision().next().stream().map(Decision::word).toList()));
        String reason = form.words("reason", "Reason", example(decision));
        return new DecisionForm(decision, reason);
    }

    private static String example(Optional<Decision> decision) {
        return decision.equals(Optional.of(Decision.ACCEPT))
                ? "Write what changed, and who was asked."
                : "Write what was seen, so that others know.";
    }
}
