package reglet.comparing;

import java.util.List;
import java.util.Optional;

import reglet.model.Compare;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.ShortBy;
import reglet.model.Day;
import reglet.model.Grade;
import reglet.model.Numbers;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.Unit;
import reglet.model.Value;

/**
 * Quantities, ranges, grades and dates. What is required and what the sheet states are both stretches of one line: "at least 2" is
 * everything from 2 upwards, a plain 2 is 2 alone. A product meets the requirement when all that the sheet leaves possible is
 * allowed, and falls short when nothing of it is. Between the two, a bounded range falls short, since the sheet itself says that
 * the product reaches outside; an open end settles nothing.
 */
final class Amounts {
    /** Relative difference below which two numbers are the same but for the arithmetic of a conversion. */
    private static final double ARITHMETIC = 1e-9;

    private Amounts() {
    }

    /** From low to high, both included; infinite where open. */
    private record Stretch(double low, double high) {

        static Stretch of(Compare sense, double low, double high) {
            return switch (sense) {
                case AT_LEAST -> new Stretch(low, Double.POSITIVE_INFINITY);
                case AT_MOST -> new Stretch(Double.NEGATIVE_INFINITY, high);
                default -> new Stretch(low, high);
            };
        }

        boolean bounded() {
            return Double.isFinite(low) && Double.isFinite(high);
        }

        boolean within(Stretch other) {
            return compare(low, other.low) >= 0 && compare(high, other.high) <= 0;
        }

        boolean apart(Stretch other) {
            return compare(high, other.low) < 0 || compare(low, other.high) > 0;
        }

        /** How far this reaches below another; 0 when it doesn't, the gap when it lies below and has no low end. */
        double below(Stretch other) {
            return Math.max(0, other.low - (Double.isFinite(low) ? low : high));
        }

        double above(Stretch other) {
            return Math.max(0, (Double.isFinite(high) ? high : low) - other.high);
        }

        private static int compare(double a, double b) {
            return Double.isFinite(a) && Double.isFinite(b) ? Quantity.compareSi(a, b) : Double.compare(a, b);
        }
    }

    /** Empty when the requirement is one of words. */
    static Optional<Verdict> judge(Requirement requirement, SheetValue submitted, List<String> notes) {
        Value asked = requirement.value();
        Value shown = submitted.value();
        if (asked instanceof Grade step) {
            return Optional.of(grade(requirement.property().compare(), step, submitted, notes));
        }
        if (asked instanceof Day day) {
            return Optional.of(date(requirement.property().compare(), day, submitted, notes));
        }
        if (!(asked instanceof Quantity) && !(asked instanceof Range)) {
            return Optional.empty();
        }
        Quantity askedLow = low(asked);
        if (!(shown instanceof Quantity) && !(shown instanceof Range)) {
            notes.add("The sheet says \"" + shown.text() + "\", which is no amount; a " + askedLow.dimension().text() + " is asked for.");
            return Optional.of(new Verdict(Result.CANNOT_COMPARE, ""));
        }
        if (low(shown).dimension() != askedLow.dimension()) {
            notes.add("The sheet states a " + low(shown).dimension().text() + ", \"" + shown.text() + "\"; a "
                + askedLow.dimension().text() + " is asked for.");
            return Optional.of(new Verdict(Result.CANNOT_COMPARE, ""));
        }
        converted(shown, askedLow.unit(), notes);
        return Optional.of(amount(requirement.property().compare(), asked, requirement.property().limit() ? limit(submitted, notes)
            : submitted,
            notes));
    }

    /** A limit of use is the number itself: "at 25 °F and above" says that the lowest temperature is 25 °F. */
    private static SheetValue limit(SheetValue submitted, List<String> notes) {
        if (submitted.compare().orElse(Compare.EXACTLY) == Compare.EXACTLY || !(submitted.value() instanceof Quantity)) {
            return submitted;
        }
        notes.add("What the sheet gives is the limit of use itself, " + submitted.value().text() + ".");
        return new SheetValue(submitted.property(), submitted.value(), Optional.empty(), submitted.method(), submitted.edition(),
            submitted.text(), submitted.page(), submitted.box(), submitted.confirmed());
    }

    private static Verdict amount(Compare sense, Value asked, SheetValue submitted, List<String> notes) {
        Value shown = submitted.value();
        Stretch allowed = allowed(sense, asked);
        Stretch stated = Stretch.of(submitted.compare().orElse(Compare.EXACTLY), low(shown).si(), high(shown).si());
        if (covers(sense, asked)) {
            return result(stated.bounded(), allowed.within(stated), Optional.empty(), submitted, sense, asked, notes);
        }
        boolean within = stated.within(allowed);
        if (within && (stated.below(allowed) > ARITHMETIC * Math.abs(allowed.low)
            || stated.above(allowed) > ARITHMETIC * Math.abs(allowed.high))) {
            notes.add("It counts as equal: the difference is within " + Numbers.plain(Quantity.TOLERANCE * 100) + "%.");
        }
        boolean settled = within || stated.bounded() || stated.apart(allowed);
        if (settled && !within && !stated.apart(allowed)) {
            notes.add("All of the range that the sheet states has to lie within what is required.");
        }
        Optional<ShortBy> by = settled && !within ? shortBy(allowed, stated, low(asked), notes) : Optional.empty();
        return result(settled, within, by, submitted, sense, asked, notes);
    }

    /** "At least" a range asks for a product that covers it: good from -20 °F to 120 °F at least. */
    private static boolean covers(Compare sense, Value asked) {
        return sense == Compare.AT_LEAST && asked instanceof Range;
    }

    private static Stretch allowed(Compare sense, Value asked) {
        return asked instanceof Range range ? new Stretch(range.low().si(), range.high().si())
            : Stretch.of(sense, low(asked).si(), high(asked).si());
    }

    private static Verdict grade(Compare sense, Grade asked, SheetValue submitted, List<String> notes) {
        int rank = asked.scale().indexOf(submitted.value().text());
        if (rank < 0) {
            notes.add("\"" + submitted.value().text() + "\" is no step of the scale " + String.join(", ", asked.scale()) + ".");
            return new Verdict(Result.CANNOT_COMPARE, "");
        }
        Stretch allowed = Stretch.of(sense, asked.rank(), asked.rank());
        Stretch stated = Stretch.of(submitted.compare().orElse(Compare.EXACTLY), rank, rank);
        boolean within = stated.within(allowed);
        return result(within || stated.bounded() || stated.apart(allowed), within, Optional.empty(), submitted, sense, asked, notes);
    }

    /** Days are counted from the one asked for, so that each tells. */
    private static Verdict date(Compare sense, Day asked, SheetValue submitted, List<String> notes) {
        if (!(submitted.value() instanceof Day shown)) {
            notes.add("The sheet says \"" + submitted.value().text() + "\", which is no date; one is asked for.");
            return new Verdict(Result.CANNOT_COMPARE, "");
        }
        long off = shown.since(asked);
        Stretch allowed = Stretch.of(sense, 0, 0);
        Stretch stated = Stretch.of(submitted.compare().orElse(Compare.EXACTLY), off, off);
        boolean within = stated.within(allowed);
        boolean settled = within || stated.bounded() || stated.apart(allowed);
        if (settled && !within) {
            notes.add("It is " + Math.abs(off) + (Math.abs(off) == 1 ? " day" : " days") + (off < 0 ? " earlier." : " later."));
        }
        return result(settled, within, Optional.empty(), submitted, sense, asked, notes);
    }

    private static Verdict result(boolean settled, boolean meets, Optional<ShortBy> by, SheetValue submitted, Compare sense, Value asked,
            List<String> notes) {
        if (!settled) {
            notes.add("The sheet says \"" + submitted.compare().map(Compare::text).orElse("exactly") + " " + submitted.value().text()
                + "\", which does not settle \"" + sense.text() + " " + asked.text() + "\".");
            return new Verdict(Result.CANNOT_COMPARE, "");
        }
        return new Verdict(meets ? Result.MEETS : Result.FALLS_SHORT, by, "");
    }

    private static Optional<ShortBy> shortBy(Stretch allowed, Stretch stated, Quantity asked, List<String> notes) {
        boolean low = stated.below(allowed) >= stated.above(allowed);
        double by = low ? stated.below(allowed) : stated.above(allowed);
        double limit = Math.abs(low ? allowed.low : allowed.high);
        if (limit == 0) {
            // a share of nothing can't be told, so the amount is told in words
            notes.add("It is off by " + difference(by, asked.unit()) + ".");
            return Optional.empty();
        }
        return Optional.of(new ShortBy(by, asked.dimension(), by / limit));
    }

    private static String difference(double si, Unit unit) {
        return new Quantity(si, unit, Numbers.significant(unit.fromSi(si) - unit.fromSi(0), 3, Numbers.Side.NEAREST)).text();
    }

    private static void converted(Value shown, Unit unit, List<String> notes) {
        if (low(shown).unit() != unit) {
            String same = shown instanceof Range range ? new Range(range.low().as(unit), range.high().as(unit)).text()
                : low(shown).as(unit).text();
            notes.add(shown.text() + " is " + same + ".");
        }
    }

    private static Quantity low(Value value) {
        return value instanceof Range range ? range.low() : (Quantity) value;
    }

    private static Quantity high(Value value) {
        return value instanceof Range range ? range.high() : (Quantity) value;
    }
}
