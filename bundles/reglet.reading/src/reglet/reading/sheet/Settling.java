package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.model.Box;
import reglet.model.Compare;
import reglet.model.Method;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.SheetReading.Found;
import reglet.model.SheetValue;
import reglet.model.Value;
import reglet.reading.value.Taken;

/**
 * Of several values that a sheet states for the same property of the same model one is shown: the one by the method that the pack asks for.
 * The others stand beside it, so that a person chooses. Among values that nothing tells apart none is shown as sure.
 */
final class Settling {
    private static final double SAME = 0.02;
    /** The others are shown by other methods. */
    private static final double BY_METHOD = 0.85;
    private static final double CONTRADICTED = 0.6;
    private static final double NEAR = 0.15;
    /** Points: as far as two amounts of one cell are apart, with a word between them. */
    private static final double WORD = 50;
    private static final Pattern OF_ONE = Pattern.compile("(?i)\\b(?:individual|single|any (?:one )?|(?:lowest|least|minimum)(?: "
        + "individual)?) "
        + "(?:unit|specimen|sample|stone|cube|piece)s?\\b|\\bindividual\\b");

    private Settling() {
    }

    static List<Found> settle(List<Found> found, Pack pack) {
        Map<String, List<Found>> stated = new LinkedHashMap<>();
        found.forEach(one -> stated.computeIfAbsent(one.value().property() + "\n" + one.model(), key -> new ArrayList<>()).add(one));
        List<Found> settled = stated.values().stream().map(all -> settled(all, pack.property(all.get(0).value().property()))).toList();
        // what is said of all models is not said again beside what is said of each
        return settled.stream().filter(one -> !one.model().isEmpty() || settled.stream().noneMatch(other -> !other.model().isEmpty()
            && other.value().property().equals(one.value().property()) && other.confidence() >= Taken.LEAST_CONFIDENCE
            && !isLimit(one, other))).toList();
    }

    /** "No unit is thicker than 2-5/8 in." beside what each is: a limit to all models says something else. */
    private static boolean isLimit(Found all, Found model) {
        return all.value().compare().isPresent() && model.value().compare().isEmpty() && !same(all.value().value(), model.value().value())
            && holds(all.value(), model.value().value());
    }

    /** Whether a limit is one to such a value: "up to 1/16 in. opening" is none to a joint of 1/2 in. */
    private static boolean holds(SheetValue limit, Value value) {
        return !(limit.value() instanceof Quantity most) || !(value instanceof Quantity one) || (limit.compare().orElseThrow()
            == Compare.AT_MOST ? one.si() <= most.si() : one.si() >= most.si());
    }

    private static Found settled(List<Found> stated, Optional<Property> property) {
        Method asked = property.map(Property::method).orElse(Method.NONE);
        // what would not be shown disturbs nothing
        List<Found> shown = stated.stream().filter(one -> one.confidence() >= Taken.LEAST_CONFIDENCE).toList();
        List<Found> all = shown.isEmpty() ? stated : shown;
        Found kept = fuller(all, all.stream().min(Comparator.<Found>comparingInt(one -> -fit(one, asked)).thenComparingInt(one ->
            -Age.of(one.label())).thenComparingInt(one -> isOfOne(one) ? 1 : 0).thenComparingInt(one -> isLimitBeside(one, all, property)
                ? 0 : 1).thenComparing(one -> -one.confidence())
            .thenComparing(one -> one.value().compare().isPresent() ? 0 : 1)).orElseThrow());
        List<Found> others = new ArrayList<>();
        for (Found one : shown) {
            if (one != kept && isAnother(one, kept) && others.stream().allMatch(other -> isAnother(one, other))) {
                others.add(one);
            }
        }
        Optional<Found> against = others.stream().filter(one -> !same(one.value().value(), kept.value().value())).findFirst();
        if (against.isEmpty()) {
            return new Found(kept.value(), kept.label(), kept.model(), kept.confidence(), kept.doubt(), others);
        }
        boolean older = others.stream().allMatch(one -> Age.of(one.label()) < Age.of(kept.label()) && fit(one, asked) <= fit(kept,
            asked));
        boolean average = !isOfOne(kept) && others.stream().allMatch(one -> isOfOne(one) && fit(one, asked) <= fit(kept, asked));
        boolean told = older || average || fit(kept, asked) > 0 && others.stream().allMatch(one -> fit(one, asked) < fit(kept, asked));
        Found left = against.get();
        return new Found(kept.value(), kept.label(), kept.model(), Math.min(kept.confidence(), told ? BY_METHOD : CONTRADICTED),
            "The sheet also states " + left.value().text() + (left.value().method().isEmpty() || left.value().method()
                .equals(kept.value().method()) ? "" : " by " + left.value().method()) + " on page " + left.value().page() + ".", others);
    }

    /** "Dry film 10 mils" beside "at least 10 mils", or beside "10 mils, ASTM D6132": the same, said more fully. */
    private static Found fuller(List<Found> all, Found first) {
        if (first.value().compare().isPresent()) {
            return first;
        }
        List<Found> near = all.stream().filter(one -> first.confidence() - one.confidence() < NEAR).toList();
        return near.stream().filter(one -> one.value().compare().isPresent() && one.value().value().equals(first.value().value())
            && one.value().method().equals(first.value().method())).findFirst().orElseGet(() -> near.stream()
                .filter(one -> first.value().method().isEmpty() && !one.value().method().isEmpty() && one.value().compare().isEmpty()
                    && same(one.value().value(), first.value().value())).findFirst().orElse(first));
    }

    /** "15 % average, 19 % max.": the limit of two amounts in one place, of a property that is asked for by such a limit. */
    private static boolean isLimitBeside(Found one, List<Found> all, Optional<Property> property) {
        return property.filter(asked -> one.value().compare().equals(Optional.of(asked.compare())) && !one.label().equals(asked.label()))
            .isPresent() && all.stream().anyMatch(
            other -> other != one && other.value().compare().isEmpty() && !same(one.value().value(), other.value().value())
                && areBeside(one.value(), other.value()));
    }

    /** Whether two amounts stand in one line, with no more than a word between them. */
    private static boolean areBeside(SheetValue one, SheetValue other) {
        Optional<Box> first = one.box();
        Optional<Box> second = other.box();
        return one.page() == other.page() && first.isPresent() && second.isPresent() && Math.abs(first.get().y() - second.get().y()) < 1
            && Math.max(first.get().x(), second.get().x()) - Math.min(first.get().x() + first.get().width(), second.get().x() + second
                .get().width()) < WORD;
    }

    /** "Compressive strength, lowest unit" beside "compressive strength, average of five". */
    private static boolean isOfOne(Found one) {
        return OF_ONE.matcher(one.label()).find();
    }

    /** How well a value's method is the one asked for: its part too, the standard, or neither. */
    private static int fit(Found one, Method asked) {
        String method = one.value().method();
        if (asked.isNone() || !method.startsWith(asked.standard())) {
            return 0;
        }
        return asked.part().isEmpty() || method.endsWith(asked.part()) ? 3 : method.equals(asked.standard()) ? 2 : 1;
    }

    /** Whether a sheet says something else with one than with the other: another amount, or the same by another standard. */
    private static boolean isAnother(Found one, Found other) {
        return !same(one.value().value(), other.value().value()) || !one.value().method().isEmpty() && !other.value().method().isEmpty()
            && !one.value().method().equals(other.value().method());
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
