package reglet.reading.words;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Dimension;
import reglet.model.Unit;

/** Units as makers spell them: "lbs. / sq. yd.", "LB per square yard", "ng/(Pa·s·m2)". */
public final class UnitSpelling {
    private static final Map<String, Unit> PLAIN = new HashMap<>();
    /** The same spellings are asked for by every component. */
    private static final Map<String, Optional<Unit>> SEEN = new ConcurrentHashMap<>();
    /** Units that nothing in the pack is told in, such as kN/m. */
    private static final Pattern SI = Pattern.compile("[kMmc]?(?:N|Pa|g|m|L)(?:[²³])?(?:\\s?[/·]\\s?[\\p{L}²³·()]{1,10})?");
    private static final Pattern TWO = Pattern.compile("(\\S.*?)\\s*[(\\[](.+)[)\\]]");
    /** "cfm/ft² @ 75 Pa (L/s·m²)": at what it was measured. */
    private static final Pattern AT = Pattern.compile("\\s*(?:@|\\bat\\b)\\s*[\\d.,]+\\s*\\p{L}+\\s*(?=[(\\[])");
    private static final int MOST_SEEN = 20_000;
    /** A word or a sign of a unit; "p.s.i." is one word. */
    private static final Pattern WORD = Pattern.compile("\\p{L}(?:\\.\\p{L})+\\b|\\p{L}+|[°\"'″′”’%#]");
    /** By the words of all its spellings, the dimensions of units, a bit each. */
    private static final Map<String, Integer> DIMENSIONS = new HashMap<>();
    /** Words that no spelling of a unit holds and that are read as those of one. */
    private static final Map<String, Unit> LONG = Map.ofEntries(Map.entry("ounce", Unit.OZ_YD2), Map.entry("gram", Unit.G),
        Map.entry("gm", Unit.G), Map.entry("kilogram", Unit.KG), Map.entry("nanogram", Unit.NG_PASM2), Map.entry("newton", Unit.N),
        Map.entry("week", Unit.DAY), Map.entry("″", Unit.IN), Map.entry("”", Unit.IN), Map.entry("′", Unit.FT), Map.entry("’", Unit.FT),
        Map.entry("#", Unit.LB), Map.entry("kn", Unit.N));

    static {
        for (Unit unit : Unit.values()) {
            unit.spellings().forEach(spelling -> PLAIN.putIfAbsent(plain(spelling), unit));
            PLAIN.putIfAbsent(plain(unit.symbol()), unit);
        }
        PLAIN.put(plain("kN/m²"), Unit.KPA);
        PLAIN.put(plain("N/mm²"), Unit.MPA);
        PLAIN.remove("");
        PLAIN.forEach((spelling, unit) -> words(spelling, unit));
        for (Unit unit : Unit.values()) {
            words(unit.symbol(), unit);
            unit.spellings().forEach(spelling -> words(spelling, unit));
        }
        LONG.forEach((word, unit) -> words(word, unit));
    }

    private UnitSpelling() {
    }

    /** The unit that a text is a spelling of, seen as one of a dimension; empty when it is none. */
    static Optional<Unit> of(String written, Dimension wanted) {
        if (SEEN.size() > MOST_SEEN) {
            SEEN.clear();
        }
        Optional<Unit> unit = SEEN.computeIfAbsent(written, fresh -> Unit.of(written.strip()).filter(found -> found != Unit.ONE)
            .or(() -> Optional.ofNullable(PLAIN.get(plain(written)))));
        return unit.map(found -> as(found, wanted));
    }

    private static void words(String spelling, Unit unit) {
        Matcher word = WORD.matcher(spelling.toLowerCase(Locale.ROOT));
        while (word.find()) {
            int dimensions = 0;
            for (Dimension wanted : Dimension.values()) {
                dimensions |= as(unit, wanted).dimension() == wanted ? 1 << wanted.ordinal() : 0;
            }
            DIMENSIONS.merge(singular(word.group().replace(".", "")), dimensions, (one, other) -> one | other);
        }
    }

    private static String singular(String word) {
        return word.length() > 2 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
    }

    /**
     * The dimensions of all units of which a word stands in a text, a bit each by their ordinals: an amount of another dimension can't
     * stand there, which is told much sooner than by reading it.
     */
    static int dimensions(String text) {
        int dimensions = 0;
        Matcher word = WORD.matcher(text.toLowerCase(Locale.ROOT));
        while (word.find()) {
            dimensions |= DIMENSIONS.getOrDefault(singular(word.group().replace(".", "")), 0);
        }
        return dimensions;
    }

    /** Whether a text is a spelling of any unit. */
    public static boolean isUnit(String written) {
        return of(written, Dimension.COUNT).isPresent();
    }

    /** Whether a text is a spelling of a unit. */
    public static boolean isUnit(String written, Unit unit) {
        return of(written, unit.dimension()).filter(found -> found == unit).isPresent();
    }

    /** The first of two units that amounts in two systems are meant in: "in. (mm)". */
    public static Optional<String> firstOf(String written) {
        Matcher two = TWO.matcher(AT.matcher(written.strip()).replaceFirst(" "));
        boolean both = two.matches() && !two.group(2).matches("(?i)m(?:in|ax)\\.?")
            && isUnit(two.group(1)) && (isUnit(two.group(2)) || SI.matcher(two.group(2)).matches()
            || two.group(2).equals("gauge"));
        return both ? Optional.of(two.group(1)) : Optional.empty();
    }

    /** In inch-pound sheets a pound is a force where a force is meant: "lb/ft²" of a load, "lb" of a pull. */
    private static Unit as(Unit unit, Dimension wanted) {
        if (wanted == Dimension.PRESSURE && unit == Unit.LB_FT2) {
            return Unit.PSF;
        }
        if (wanted == Dimension.AREAL_MASS && unit == Unit.PSF) {
            return Unit.LB_FT2;
        }
        return wanted == Dimension.FORCE && unit == Unit.LB ? Unit.LBF : unit;
    }

    /** One spelling for all: no dots and blanks, powers as figures, "per" as a stroke, no plural. */
    private static String plain(String written) {
        String text = written.strip().toLowerCase(Locale.ROOT).replace("²", "2").replace("³", "3").replace("^", "").replace('·', ' ')
            .replace('*', ' ').replace('⋅', ' ').replace('•', ' ').replace("μ", "µ").replaceAll("[()\\[\\]]", " ").replace("deg.", "deg ")
            .replaceAll("\\bu\\.?s\\.?\\s+(?=perm)", "").replace("#", "lb").replaceAll("\\bp\\.s\\.([if])\\b\\.?", "ps$1")
            .replaceAll("\\s+(?:of\\s+)?width$", "");
        text = text.replaceAll("\\b(?:linear|lineal|lin)\\b\\.?\\s*(?=f)", "").replaceAll("\\bper\\b", "/")
            .replaceAll("\\bs\\.?f\\.?\\b", "sq ft ").replaceAll("\\bs\\.?y\\.?\\b", "sq yd ")
            .replaceAll("\\bsquare\\b|\\bsq\\b\\.?", " sq ").replaceAll("\\bcubic\\b|\\bcu\\b\\.?", " cu ")
            .replaceAll("\\b(?:pounds?|lbs?)\\b\\.?", "lb").replaceAll("\\b(?:ounces?|oz)\\b\\.?", "oz")
            .replaceAll("\\b(?:inches|inch|in)\\b\\.?", "in").replaceAll("\\b(?:feet|foot|ft)\\b\\.?", "ft")
            .replaceAll("\\b(?:yards?|yds?|yd)\\b\\.?", "yd").replaceAll("\\bmillimet(?:re|er)s?\\b", "mm")
            .replaceAll("\\b(?:days?)\\b", "d").replaceAll("\\bhours?\\b|\\bhrs?\\b\\.?", "h").replaceAll("\\b(?:seconds?|secs?)\\b\\.?",
                "s")
            .replaceAll("\\bgrams?\\b|\\bgms?\\b", "g").replaceAll("\\bkilograms?\\b|\\bkgs\\b", "kg").replaceAll("\\bpercent\\b", "%")
            .replaceAll("\\bnanograms?\\b", "ng").replaceAll("\\b(?:newtons?)\\b", "n");
        text = text.replaceAll("sq\\s+(in|ft|yd|m|mm)\\b", "$12").replaceAll("cu\\s+(in|ft|yd|m)\\b", "$13")
            .replaceAll("\\b(in|ft|yd|mm|m)\\s+2\\b", "$12").replaceAll("\\s*/\\s*", "/");
        text = text.replaceAll("\\.(?=\\s|$|/)", "").replaceAll("[\\s.]+", " ").strip();
        text = text.replaceAll("^%,? (?:by )?(?:wt|weight|mass|vol|volume)$", "%");
        return text.replaceAll("(?<=[a-z])\\s+(?=[a-z])", ".").replace(" ", "");
    }

    /** "in. (mm)" at the end of a heading; empty where none stands there. */
    public static Optional<String> atEnd(String head) {
        return Stream.iterate(head.indexOf(' '), at -> at > 0, at -> head.indexOf(' ', at + 1)).map(at -> head.substring(at).strip())
            .filter(tail -> firstOf(tail).isPresent()).findFirst();
    }
}
