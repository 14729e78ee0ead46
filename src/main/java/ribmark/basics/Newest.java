package ribmark.basics;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Remembers what was worked out, the few newest of it, so that whoever asks for many different things fills no memory. */
public final class Newest<K, V> {

    private final Map<K, V> kept;

    /** Keeps at most so many. */
    public Newest(int most) {
        this.kept = new LinkedHashMap<>() {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** What is remembered under this key, or else worked out now. */
    public synchronized V get(K key, Function<K, V> working) {
        V value = kept.get(key);
        if (value == null) {
            value = working.apply(key);
            kept.put(key, value);
        }
        return value;
    }
}
