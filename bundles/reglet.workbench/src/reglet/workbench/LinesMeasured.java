package reglet.workbench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;

/**
 * Measures the lines of a long text a few at a time. The toolkit would measure those out of sight in turns of 50 ms, in which no key is
 * answered; timers come before these turns, so that nothing is left for them.
 */
final class LinesMeasured {
    private static final int LINES = 10;
    /** Nanoseconds of a turn. */
    private static final long TURN = 8_000_000;
    private final StyledText text;
    /** Lines from the first in sight that are measured; the first and the one after the last. */
    private int above;
    private int below;
    private boolean painted;
    private boolean runs;

    LinesMeasured(StyledText text) {
        this.text = text;
        text.addListener(SWT.Resize, event -> begin());
    }

    /** Other lines stand there, or the width is another. */
    void begin() {
        above = text.getTopIndex();
        below = above;
        painted = false;
        if (!runs) {
            next();
        }
    }

    private void next() {
        runs = true;
        text.getDisplay().timerExec(0, () -> {
            if (!text.isDisposed()) {
                turn();
            }
        });
    }

    private void turn() {
        long end = System.nanoTime() + TURN;
        int lines = text.getLineCount();
        while ((below < lines || above > 0) && System.nanoTime() < end) {
            if (below < lines) {
                below = Math.min(lines, below + LINES);
                text.getLinePixel(below);
            } else {
                above = Math.max(0, above - LINES);
                text.getLinePixel(above);
            }
        }
        runs = false;
        if (below < lines || above > 0) {
            if (!painted) {
                // timers come before painting too: what is in sight doesn't wait
                text.update();
                painted = true;
            }
            next();
        }
    }
}
