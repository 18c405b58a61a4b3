package reglet.model;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import javax.measure.UnitConverter;
import javax.measure.format.UnitFormat;

import systems.uom.ucum.format.UCUMFormat;

/**
 * The one door to the units library: UCUM codes in, factors and offsets out. The library is asked once for each unit, on first use:
 * its own converters take a thousand times longer than a multiplication.
 */
final class Ucum {
    private static final Map<Unit, Line> TO_SI = new ConcurrentHashMap<>();
    /** Far enough from 0 that the offset of a temperature costs the factor no figure. */
    private static final double FAR = 1e9;

    /** si = factor × amount + offset. */
    private record Line(double factor, double offset) {
    }

    private Ucum() {
    }

    static double toSi(Unit unit, double amount) {
        Line line = line(unit);
        return amount * line.factor() + line.offset();
    }

    static double fromSi(Unit unit, double si) {
        Line line = line(unit);
        return (si - line.offset()) / line.factor();
    }

    static double factor(Unit unit) {
        return line(unit).factor();
    }

    static double offset(Unit unit) {
        return line(unit).offset();
    }

    /** Takes what the library said of a unit earlier. */
    static void known(Unit unit, double factor, double offset) {
        TO_SI.putIfAbsent(unit, new Line(factor, offset));
    }

    private static Line line(Unit unit) {
        return TO_SI.computeIfAbsent(unit, Ucum::asked);
    }

    private static synchronized Line asked(Unit unit) {
        try {
            UnitConverter converter = Library.FORMAT.parse(unit.ucum()).getConverterToAny(Library.FORMAT.parse(unit.dimension().si()));
            double offset = converter.convert(0.0);
            return new Line(offset == 0 ? converter.convert(1.0) : (converter.convert(FAR) - offset) / FAR, offset);
        } catch (javax.measure.IncommensurableException e) {
            throw new IllegalStateException(unit + " is no " + unit.dimension(), e);
        }
    }

    /** Loaded only when a unit is asked for that nobody knows yet. */
    private static final class Library {
        private static final UnitFormat FORMAT = started();

        /** The library looks for its parts through the thread that uses it first, which may be one that sees none of them. */
        private static UnitFormat started() {
            Thread thread = Thread.currentThread();
            ClassLoader before = thread.getContextClassLoader();
            thread.setContextClassLoader(UCUMFormat.class.getClassLoader());
            try {
                UnitFormat format = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
                format.parse("[in_i]").getConverterToAny(format.parse("m")).convert(1.0);
                return format;
            } catch (javax.measure.IncommensurableException impossible) {
                throw new IllegalStateException("an inch is a length", impossible);
            } finally {
                thread.setContextClassLoader(before);
            }
        }
    }
}
