package reglet.cli;

import java.io.PrintWriter;

import reglet.desk.Progress;

/** Shows steps on standard error when a person sits before it; a pipe stays clean. */
final class TerminalProgress implements Progress {
    private final PrintWriter err;
    private final boolean watched = System.console() != null;

    TerminalProgress(PrintWriter err) {
        this.err = err;
    }

    @Override
    public void step(int done, int of, String what) {
        if (watched && of > 1) {
            err.print("\r\u001b[K" + (done == of ? "" : "[" + (done + 1) + "/" + of + "] " + what));
            err.flush();
        }
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }
}
