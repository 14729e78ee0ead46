package ribmark.blocksheet;

import java.util.Map;
import java.util.TreeMap;
import ribmark.evidence.Entry;

/** What the assessor says at the end, as typed: a sentence for each stage seen, one thing well, one to change, what is next and when. */
public record Draft(Map<String, String> stages, String well, String change, String next, String nextDay) {

    /** How the sentence about a stage is named, in the log and on the page. */
    static final String STAGE = "stage-";

    /** Keeps a copy of the sentences. */
    public Draft {
        stages = Map.copyOf(stages);
    }

    Entry into(Entry entry) {
        Entry said = entry;
        for (Map.Entry<String, String> stage : new TreeMap<>(stages).entrySet()) {
            said = said.words(STAGE + stage.getKey(), stage.getValue());
        }
        return said.words("well", well).words("change", change).words("next", next);
    }

    static Draft of(Map<String, String> words, String nextDay) {
        return new Draft(stages(words), at(words, "well"), at(words, "change"), at(words, "next"), nextDay);
    }

    static Map<String, String> stages(Map<String, String> words) {
        Map<String, String> stages = new TreeMap<>();
        words.forEach((field, text) -> {
            if (field.startsWith(STAGE)) {
                stages.put(field.substring(STAGE.length()), text);
            }
        });
        return stages;
    }

    private static String at(Map<String, String> words, String field) {
        return words.getOrDefault(field, "");
    }
}
