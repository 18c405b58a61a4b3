package reglet.model;

/** How the program came to know a fact. Printed with every basis, so that nobody takes a remembered value for a read one. */
public enum Known {
    READ("read"), FROM_MEMORY("from memory"), COMMON_PRACTICE("common practice");

    private final String text;

    Known(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
