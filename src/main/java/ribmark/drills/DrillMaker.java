package ribmark.drills;

import java.util.List;
import java.util.Random;

/** Makes questions of one kind; each about something it can ask at a step. */
interface DrillMaker {

    DrillKind kind();

    /** Everything it can ask about, in the order worked. */
    List<Subject> subjects();

    /** One question about a subject; the same chance makes the same question. */
    Drill make(Subject subject, Random random);
}
