package reglet.model;

import java.util.EnumMap;
import java.util.Map;

import javax.measure.UnitConverter;
import javax.measure.format.UnitFormat;

import systems.uom.ucum.format.UCUMFormat;

/** The one door to the units library: UCUM codes in, converters out. Converters are made once, on first use. */
final class Ucum {
    private static final UnitFormat FORMAT = started();
    private static final Map<Unit, UnitConverter> TO_SI = new EnumMap<>(Unit.class);

    private Ucum() {
    }

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

    static double toSi(Unit unit, double amount) {
        return converter(unit).convert(amount);
    }

    static double fromSi(Unit unit, double si) {
        return converter(unit).inverse().convert(si);
    }

    private static synchronized UnitConverter converter(Unit unit) {
        return TO_SI.computeIfAbsent(unit, wanted -> {
            try {
                return FORMAT.parse(wanted.ucum()).getConverterToAny(FORMAT.parse(wanted.dimension().si()));
            } catch (javax.measure.IncommensurableException e) {
                throw new IllegalStateException(wanted + " is no " + wanted.dimension(), e);
            }
        });
    }
}
