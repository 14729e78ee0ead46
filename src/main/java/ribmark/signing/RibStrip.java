package ribmark.signing;

import java.util.ArrayList;
import java.util.List;
import ribmark.competence.Standing;
import ribmark.curriculum.Breakdown;

/** The standing pattern of one apprentice: a rib for each step, stage by stage, and the same said in words. */
public record RibStrip(List<Stage> stages, String words) {

    /** One piece of backbone with its ribs; each rib is the code of a standing. */
    public record Stage(String title, List<String> ribs) {}

    /** Draws it from what was derived. */
    public static RibStrip of(Breakdown breakdown, ApprenticeRecord record) {
        List<Stage> stages = breakdown.stages().stream()
                .map(stage -> new Stage(
                        stage.title().toLowerCase(java.util.Locale.ROOT),
                        record.stage(stage.id()).stream()
                                .map(step -> code(step.standing()))
                                .toList()))
                .toList();
        return new RibStrip(stages, words(record));
    }

    /** The code under which the drawing of a standing is found. */
    public static String code(Standing standing) {
        return standing.word().replace(' ', '-');
    }

    private static String words(ApprenticeRecord record) {
        List<String> counts = new ArrayList<>();
        for (Standing standing : List.of(
                Standing.SIGNED_OFF,
                Standing.READY_TO_SIGN,
                Standing.DUE_AGAIN,
                Standing.THIN_EVIDENCE,
                Standing.PRACTISING,
                Standing.NOT_STARTED)) {
            int many = record.count(standing);
            if (many > 0) {
                counts.add(many + " " + standing.word());
            }
        }
        return String.join(", ", counts) + ".";
    }
}
