package reglet.worksheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import reglet.model.Basis;
import reglet.model.Numbers;
import reglet.model.Unit;
import reglet.model.UnitSystem;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** A worksheet while it is being written. */
final class Sheet {
    private final String name;
    private final String title;
    private final Given given;
    private final List<Worksheet.Step> steps = new ArrayList<>();
    private final Map<String, Worksheet.Amount> results = new LinkedHashMap<>();
    private final List<String> assumed = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private OptionalDouble margin = OptionalDouble.empty();

    Sheet(String name, String title, Given given) {
        this.name = name;
        this.title = title;
        this.given = given;
    }

    /** Writes a step down and hands its number on: the SI number in, the same out. */
    double step(String symbol, String label, String formula, String substitution, double si, Unit unit, Basis... basis) {
        steps.add(new Worksheet.Step(symbol, label, formula, substitution, amount(label, si, unit), List.of(basis)));
        return si;
    }

    void result(String key, String label, double si, Unit unit) {
        results.put(key, amount(label, si, unit));
    }

    void assume(String... sentences) {
        assumed.addAll(List.of(sentences));
    }

    void warn(String sentence) {
        warnings.add(sentence);
    }

    /** Ten figures: 15 psf against 15 psf is 1, not a binary digit less. */
    void margin(double ratio) {
        margin = OptionalDouble.of(Double.parseDouble(Numbers.plain(ratio)));
    }

    UnusableInput refusal(String key, String what, String expected) {
        return given.refusal(key, what, expected);
    }

    Worksheet done() {
        assumed.add(Worksheets.CAUTION);
        return new Worksheet(name, title, "", "", "", given.inputs(), steps, results, margin, assumed, warnings);
    }

    /** Results are shown in the system that the inputs were typed in; the formulas keep the units they were published in. */
    private Worksheet.Amount amount(String label, double si, Unit unit) {
        if (!Double.isFinite(si)) {
            throw new IllegalStateException(name + ": " + label + " came out as " + si);
        }
        boolean other = unit.system().filter(system -> system != given.system()).isPresent() && given.system() == UnitSystem.SI;
        return new Worksheet.Amount(label, si, other ? unit.other().orElse(unit) : unit);
    }

    /** A number in SI as people read it, four figures: "20.14 psf". */
    static String show(double si, Unit unit) {
        return number(unit.fromSi(si), unit);
    }

    /** A number of the unit, with the unit. */
    static String number(double number, Unit unit) {
        String digits = bare(number);
        return switch (unit) {
            case PERCENT -> digits + "%";
            case ONE -> digits;
            default -> digits + " " + unit.symbol();
        };
    }

    /** A bare number, four figures. */
    static String bare(double number) {
        return Numbers.significant(number, 4, Numbers.Side.NEAREST);
    }

    /** A difference of temperatures, given in kelvin; a degree Fahrenheit is 5/9 of one. */
    static String degrees(double kelvin) {
        return bare(kelvin * 9 / 5) + " °F";
    }
}
