package reglet.model;

/**
 * The standard that a value is shown by.
 *
 * @param standard key of a {@link Standard}; "" when no method is asked
 * @param part     annex, table or procedure within it; "" for the whole
 */
public record Method(String standard, String part) {
    public static final Method NONE = new Method("", "");

    public boolean isNone() {
        return standard.isEmpty();
    }
}
