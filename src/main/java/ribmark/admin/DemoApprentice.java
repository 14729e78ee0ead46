package ribmark.admin;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** One apprentice of the demo as their file tells the story: sheets, signatures, answers. */
record DemoApprentice(
        List<DemoSheet> sheets, List<Signed> signedOff, List<TakenBack> takenBack, List<Answered> answered) {

    /** What is left out of a file has not happened. */
    DemoApprentice {
        sheets = sheets == null ? List.of() : sheets;
        signedOff = signedOff == null ? List.of() : signedOff;
        takenBack = takenBack == null ? List.of() : takenBack;
        answered = answered == null ? List.of() : answered;
    }

    /** Steps an assessor signed off in one sitting, each with what convinced. */
    record Signed(String when, String by, Map<String, String> steps) {}

    /** A sign-off taken back. */
    record TakenBack(String when, String by, String step, String why) {}

    /** What the apprentice answered to the feedback on a lamb. */
    record Answered(String when, int lamb, String agrees, String words) {}

    static DemoApprentice read(String name) {
        return DemoFile.read("apprentices/" + name.toLowerCase(Locale.ROOT) + ".yaml", DemoApprentice.class);
    }
}
