package reglet.model;

/** What kind of thing a quantity measures, with the UCUM code of the SI unit that its number is held in. */
public enum Dimension {
    LENGTH("m"), AREA("m2"), VOLUME("m3"), MASS("kg"), AREAL_MASS("kg/m2"), DENSITY("kg/m3"), FORCE("N"), LINE_FORCE("N/m"),
    PRESSURE("Pa"), TIME("s"), TEMPERATURE("K"), SPEED("m/s"), PERMEANCE("kg/(s.m2.Pa)"), AREAL_FLOW("m3/(s.m2)"),
    THERMAL_EXPANSION("1/K"), RATIO("1"), COUNT("1");

    private final String si;

    Dimension(String si) {
        this.si = si;
    }

    /** UCUM code of the SI unit, as printed for programs. */
    public String si() {
        return si;
    }

    /** The name in words, for messages: "areal mass". */
    public String text() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    /** The name with its article: "a length", "an areal mass". */
    public String withArticle() {
        return ("AEIOU".indexOf(name().charAt(0)) < 0 ? "a " : "an ") + text();
    }
}
