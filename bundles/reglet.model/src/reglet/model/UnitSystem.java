package reglet.model;

/** The two systems of units that the trade writes in. */
public enum UnitSystem {
    INCH_POUND("inch-pound"), SI("SI");

    private final String text;

    UnitSystem(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
