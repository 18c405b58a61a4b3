package reglet.model;

/** The sense of a requirement. */
public enum Compare {
    AT_LEAST("at least"), AT_MOST("at most"), BETWEEN("between"), EXACTLY("exactly"), ONE_OF("one of");

    private final String text;

    Compare(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
