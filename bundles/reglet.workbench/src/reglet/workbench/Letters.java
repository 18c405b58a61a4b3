package reglet.workbench;

import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Control;

/** The words of a drawing: in the font of the control that it is painted into, and in its emphasis. */
final class Letters {
    private final Control canvas;
    private final GC gc;
    private final Font strong;
    private final int row;

    Letters(Control canvas, GC gc) {
        this.canvas = canvas;
        this.gc = gc;
        this.strong = Ui.strong(canvas);
        gc.setFont(canvas.getFont());
        this.row = gc.getFontMetrics().getHeight();
    }

    /** The height of a line, in points. */
    int row() {
        return row;
    }

    /** The width of so many letters, in points. */
    int characters(int count) {
        return Ui.characters(canvas, count);
    }

    /** A title, in the emphasis. */
    void title(String words, int x, int y) {
        gc.setFont(strong);
        gc.drawText(words, x, y, true);
        gc.setFont(canvas.getFont());
    }

    /** Words broken into lines of a width; whoever asks for it disposes of it. */
    TextLayout layout(String words, int width, boolean bold, int alignment) {
        TextLayout layout = new TextLayout(canvas.getDisplay());
        layout.setFont(bold ? strong : canvas.getFont());
        layout.setText(words);
        layout.setWidth(Math.max(1, width));
        layout.setAlignment(alignment);
        return layout;
    }

    /** As much of a line as has room; pointing at the note says all of it. */
    String cut(String words, int width) {
        // in the emphasis, so that selecting a note doesn't break its line
        gc.setFont(strong);
        String cut = words;
        while (cut.length() > 1 && gc.textExtent(cut).x > width) {
            cut = cut.substring(0, cut.length() - 2).stripTrailing() + "…";
        }
        gc.setFont(canvas.getFont());
        return cut;
    }
}
