package ribmark.blocksheet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;

/** What the assessor said at the end and put their name to: a sentence for each stage seen, one thing well, one to change, what is next. */
public record Closing(
        Instant closedAt,
        LocalDate nextDay,
        String well,
        String change,
        String next,
        Map<String, String> stages,
        long evidenceSeq) {

    /** Keeps a copy of the sentences. */
    public Closing {
        stages = Map.copyOf(stages);
    }

    /** What was seen at a stage, or nothing. */
    public String stage(String stageId) {
        return stages.getOrDefault(stageId, "");
    }
}
