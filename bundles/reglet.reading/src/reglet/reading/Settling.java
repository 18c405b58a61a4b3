package reglet.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.SheetReading.Found;
import reglet.model.Value;

/** Makes one value of several that a sheet states for the same property of the same model. */
final class Settling {
    private static final double SAME = 0.02;

    private Settling() {
    }

    static List<Found> settle(List<Found> found, Pack pack) {
        Map<String, Found> settled = new LinkedHashMap<>();
        for (Found next : found) {
            settled.merge(next.value().property() + "\n" + next.model(), next, (one, other) -> choose(one, other, pack));
        }
        List<Found> all = new ArrayList<>();
        for (Found one : settled.values()) {
            // what is said of all models is not said again beside what is said of each
            boolean perModel = one.model().isEmpty() && settled.values().stream()
                .anyMatch(other -> !other.model().isEmpty() && other.value().property().equals(one.value().property()));
            if (!perModel) {
                all.add(one);
            }
        }
        return all;
    }

    private static Found choose(Found one, Found other, Pack pack) {
        String asked = pack.property(one.value().property()).map(Property::method).map(method -> method.standard()).orElse("");
        boolean first = one.value().method().startsWith(asked) && !one.value().method().isEmpty()
            || !(other.value().method().startsWith(asked) && !other.value().method().isEmpty());
        boolean equalMethod = one.value().method().equals(other.value().method());
        Found kept = equalMethod || asked.isEmpty() ? one.confidence() >= other.confidence() ? one : other : first ? one : other;
        Found left = kept == one ? other : one;
        if (Math.min(kept.confidence(), left.confidence()) < SheetReader.LEAST_CONFIDENCE) {
            // what would not be shown disturbs nothing
            return kept.confidence() >= left.confidence() ? kept : left;
        }
        if (same(one.value().value(), other.value().value())) {
            return kept;
        }
        boolean others = !equalMethod && !asked.isEmpty() && kept.value().method().startsWith(asked);
        return new Found(kept.value(), kept.label(), kept.model(), Math.min(kept.confidence(), others ? 0.85 : 0.6),
            "The sheet also states " + left.value().text() + " on page " + left.value().page() + ".");
    }

    private static boolean same(Value one, Value other) {
        if (one instanceof Quantity a && other instanceof Quantity b) {
            return Math.abs(a.si() - b.si()) <= SAME * Math.max(Math.abs(a.si()), Math.abs(b.si()));
        }
        if (one instanceof Range a && other instanceof Range b) {
            return same(a.low(), b.low()) && same(a.high(), b.high());
        }
        return one.text().equals(other.text());
    }

}
