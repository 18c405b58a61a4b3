package reglet.model;

/** What is asked for to show that a requirement is met. */
public enum Evidence {
    NONE("none"), PRODUCT_DATA("product data"), SAMPLE("sample"), SHOP_DRAWING("shop drawing"), TEST_REPORT("test report"),
    CERTIFICATE("certificate"), EVALUATION_REPORT("evaluation report"), COMPATIBILITY("compatibility statement"),
    CALCULATION("calculation"), FIELD_CHECK("field check");

    private final String text;

    Evidence(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
