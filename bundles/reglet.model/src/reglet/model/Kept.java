package reglet.model;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What was worked out and may be asked for again. The least asked for is forgotten first, so that a person who works all day doesn't
 * fill the memory. What is kept must follow from its key alone. Safe for use by several threads.
 */
public final class Kept<K, V> {
    private final Map<K, V> known;

    /** @param most how many are kept */
    public Kept(int most) {
        this.known = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** The value for a key; worked out, perhaps by two threads at once, when it isn't known. What throws isn't kept. */
    public V get(K key, Function<K, V> how) {
        synchronized (known) {
            V found = known.get(key);
            if (found != null) {
                return found;
            }
        }
        V made = how.apply(key);
        synchronized (known) {
            known.put(key, made);
        }
        return made;
    }
}
