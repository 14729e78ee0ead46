package ribmark.carcase;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ribmark.curriculum.Breakdown.AtIntake;
import ribmark.curriculum.Curriculum;
import ribmark.web.Form;

/** The two counts that may be typed for an animal, at intake or once the ribs can be seen. */
record CountForm(OptionalInt thoracic, OptionalInt lumbar) {

    static final String RIBS = "Pairs of ribs";
    static final String LOIN = "Loin vertebrae";

    /** Reads both; either may be left empty. */
    static CountForm read(Form form, Curriculum curriculum) {
        List<Integer> usual = curriculum.breakdown().formula().counts();
        Optional<Integer> most = curriculum.breakdown().atIntake().map(AtIntake::countsDifferBy);
        return new CountForm(
                count(form, "thoracic", RIBS, usual.get(1), most), count(form, "lumbar", LOIN, usual.get(2), most));
    }

    /** Whether anything was counted. */
    boolean isThere() {
        return thoracic.isPresent() || lumbar.isPresent();
    }

    private static OptionalInt count(Form form, String field, String label, int usual, Optional<Integer> most) {
        String typed = form.value(field);
        if (typed.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!typed.matches("[1-9][0-9]?")) {
            form.add(
                    field, label + ": “" + typed + "” is not a count. Type a whole number, for example " + usual + ".");
            return OptionalInt.empty();
        }
        int count = Integer.parseInt(typed);
        if (most.isPresent() && Math.abs(count - usual) > most.get()) {
            form.add(
                    field,
                    label + ": " + count + " is far from the usual " + usual
                            + ". Count again on both sides, or leave it empty until you can see them all.");
        }
        return OptionalInt.of(count);
    }
}
