package reglet.reading.value;

import java.util.HashMap;
import java.util.Map;

import reglet.model.Pack;
import reglet.model.Plausible;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Value;

/** Tells whether an amount is one that products of the trade are known to have, by the pack. */
public final class Bounds {
    private final Map<String, Plausible> plausible = new HashMap<>();

    public Bounds(Pack pack) {
        pack.plausible().forEach(one -> plausible.put(one.property(), one));
    }

    /** Whether a value of a property, by its path, may be one; what the pack says nothing of may. */
    public boolean holds(String path, Value value) {
        Plausible known = plausible.get(path);
        return known == null || (value instanceof Range range ? known.holds(range.low()) && known.holds(range.high())
            : !(value instanceof Quantity amount) || known.holds(amount));
    }
}
