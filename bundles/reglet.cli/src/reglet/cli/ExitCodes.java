package reglet.cli;

/** What a verb's exit code means. */
final class ExitCodes {
    /** Nothing stands against the job. */
    static final int CLEAN = 0;
    /** Conflicts, gaps or shortfalls were found. */
    static final int FINDINGS = 1;
    /** The input can't be used. */
    static final int UNUSABLE = 2;
    /** Our own fault. */
    static final int FAULT = 3;

    private ExitCodes() {
    }
}
