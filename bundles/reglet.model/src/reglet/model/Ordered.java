package reglet.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Unmodifiable copies of maps that keep their order: outputs must not depend on hashing. */
public final class Ordered {
    private Ordered() {
    }

    public static <K, V> Map<K, V> copy(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
