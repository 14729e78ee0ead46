package ribmark.evidence;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** One record as it stands in the log. */
public record Kept(long seq, Instant recordedAt, String kind, String text, String digestBefore, String digest) {

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS);

    /** What is known before the record is written. */
    record Setting(long seq, Instant recordedAt, String key, String contentVersion, String digestBefore) {}

    static Kept of(Entry entry, Map<String, String> wordDigests, Setting setting) {
        Map<String, Object> all = new TreeMap<>();
        all.put("form", "ribmark evidence 1");
        all.put("seq", setting.seq());
        all.put("recordedAt", setting.recordedAt().toString());
        entry.observedAt().ifPresent(moment -> all.put("observedAt", moment.toString()));
        all.put("kind", entry.kind());
        all.put("key", setting.key());
        all.put("content", setting.contentVersion());
        all.put("facts", entry.facts());
        all.put("words", new TreeMap<>(wordDigests));
        all.put("before", setting.digestBefore());
        String text = json(all);
        return new Kept(
                setting.seq(), setting.recordedAt(), entry.kind(), text, setting.digestBefore(), Digest.of(text));
    }

    /** Whether the text still has the digest it was given, and says the same as the columns beside it. */
    boolean holds() {
        JsonNode said = read();
        return digest.equals(Digest.of(text))
                && said.path("seq").asLong() == seq
                && said.path("kind").asText().equals(kind)
                && said.path("recordedAt").asText().equals(recordedAt.toString())
                && said.path("before").asText().equals(digestBefore);
    }

    /** The facts of the record. */
    public Map<String, String> facts() {
        return pairs("facts");
    }

    /** The salted digests of the words that belong to it. */
    Map<String, String> wordDigests() {
        return pairs("words");
    }

    private Map<String, String> pairs(String field) {
        Map<String, String> pairs = new HashMap<>();
        read().path(field)
                .properties()
                .forEach(pair -> pairs.put(pair.getKey(), pair.getValue().asText()));
        return pairs;
    }

    private JsonNode read() {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException altered) {
            return JSON.createObjectNode();
        }
    }

    private static String json(Map<String, Object> all) {
        try {
            return JSON.writeValueAsString(all);
        } catch (JsonProcessingException never) {
            throw new IllegalStateException(never);
        }
    }
}
