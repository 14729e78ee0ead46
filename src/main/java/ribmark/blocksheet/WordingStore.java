package ribmark.blocksheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import ribmark.basics.Newest;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.evidence.Digest;
import ribmark.evidence.Quoted;

/** How steps were worded under each version of the content that a mark was given under; kept once, and never changed. */
public final class WordingStore {

    /** The wordings that marks name by their digest. */
    public static final Quoted QUOTED = new Quoted("step-marked", "wording", "content_wordings");

    /** So many versions are remembered, read once each: ours. */
    private static final int VERSIONS = 50;

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS);

    private final Supplier<Curriculum> curriculum;
    private final Clock clock;
    private final Newest<String, String> written = new Newest<>(VERSIONS);
    private final Newest<String, Map<String, Worded>> read = new Newest<>(VERSIONS);

    /** The curriculum is the one in use; the clock says when its wording was kept. */
    public WordingStore(Supplier<Curriculum> curriculum, Clock clock) {
        this.curriculum = curriculum;
        this.clock = clock;
    }

    /** Keeps the wording in use, if it is not kept yet, as part of the writing under way, and answers its digest. */
    String keep(Handle handle) {
        Curriculum now = curriculum.get();
        String words = written.get(now.version(), version -> text(now));
        String digest = Digest.of(words);
        if (handle.createQuery("select count(*) from content_wordings where digest = :digest")
                        .bind("digest", digest)
                        .mapTo(Integer.class)
                        .one()
                == 0) {
            handle.execute(
                    "insert into content_wordings (digest, version, words, kept_at) values (?, ?, ?, ?)",
                    digest,
                    now.version(),
                    words,
                    clock.instant());
        }
        return digest;
    }

    /** A step as worded under this digest; nothing when it was not kept, or is no longer what it was. */
    Optional<Worded> find(Handle handle, String digest, String step) {
        return Optional.ofNullable(digest)
                .map(known -> read.get(known, one -> read(handle, one)))
                .map(steps -> steps.get(step));
    }

    private static Map<String, Worded> read(Handle handle, String digest) {
        return handle.createQuery("select words from content_wordings where digest = :digest")
                .bind("digest", digest)
                .mapTo(String.class)
                .findOne()
                .filter(words -> Digest.of(words).equals(digest))
                .map(WordingStore::steps)
                .orElse(Map.of());
    }

    private static String text(Curriculum curriculum) {
        Map<String, Worded> steps = new TreeMap<>();
        for (Step step : curriculum.breakdown().steps()) {
            steps.put(step.id(), Worded.of(step, curriculum.version()));
        }
        try {
            return JSON.writeValueAsString(steps);
        } catch (JsonProcessingException never) {
            throw new IllegalStateException(never);
        }
    }

    private static Map<String, Worded> steps(String words) {
        try {
            return JSON.readValue(words, new TypeReference<TreeMap<String, Worded>>() {});
        } catch (JsonProcessingException otherForm) {
            throw new IllegalStateException(otherForm);
        }
    }
}
