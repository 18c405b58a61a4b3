package reglet.desk;

/** The person cancelled the work; nothing is half written. */
public final class Cancelled extends Exception {
    private static final long serialVersionUID = 1L;

    public Cancelled() {
        super("cancelled");
    }
}
