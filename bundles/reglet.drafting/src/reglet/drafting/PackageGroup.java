package reglet.drafting;

/** What the parts of a package are, in the order in which they are bound. */
public enum PackageGroup {
    FRONT("Front matter"), DATA("Data sheets"), REPORTS("Certificates and reports"), WORK("Worksheets and details");

    private final String text;

    PackageGroup(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
