package ribmark.curriculum;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ribmark.scoring.Ground;

/** One line of "How we know": what is claimed, how it is known, and the source it was taken from. */
public record Known(String fact, String basis, String key, String title, String place) {

    /** The lines for what something rests on, each once. */
    public static List<Known> of(Curriculum curriculum, Stream<RestsOn> grounds) {
        return grounds.map(ground -> of(curriculum, ground)).distinct().toList();
    }

    /** The lines for what a limit rests on. */
    static List<Known> ofLimits(Curriculum curriculum, List<Ground> grounds) {
        List<Known> lines = new ArrayList<>();
        for (Ground ground : grounds) {
            lines.add(new Known(
                    ground.fact(), ground.basis().word(), ground.source(), title(curriculum, ground.source()), null));
        }
        return lines;
    }

    private static Known of(Curriculum curriculum, RestsOn ground) {
        return new Known(
                ground.fact(), ground.basis(), ground.source(), title(curriculum, ground.source()), place(ground));
    }

    private static String title(Curriculum curriculum, String key) {
        return curriculum.source(key).map(Source::title).orElse(key);
    }

    private static String place(RestsOn ground) {
        String holds = ground.place().map(where -> "Holds in " + where + ". ").orElse("");
        String checked =
                ground.checked().map(day -> "Last looked up " + day + ".").orElse("");
        return holds.isEmpty() && checked.isEmpty() ? null : (holds + checked).strip();
    }
}
