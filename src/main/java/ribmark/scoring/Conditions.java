package ribmark.scoring;

import java.util.Optional;

/** How a carcase came to the scale: its weight once cold, kidneys in or out, the fat class on its ticket, and how its vertebrae differ. */
public record Conditions(double coldKg, boolean kidneysIn, Optional<String> fatClass, Vertebrae vertebrae) {

    /** A carcase whose vertebrae nobody has counted, or that has the usual ones. */
    public Conditions(double coldKg, boolean kidneysIn, Optional<String> fatClass) {
        this(coldKg, kidneysIn, fatClass, Vertebrae.USUAL);
    }

    /** The same carcase with its vertebrae counted. */
    public Conditions counted(Vertebrae otherwise) {
        return new Conditions(coldKg, kidneysIn, fatClass, otherwise);
    }
}
