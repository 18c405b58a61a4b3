package reglet.workbench.section;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import reglet.desk.SectionPage.Line;
import reglet.workbench.Ui;

/**
 * Beside the text: a word and a bar for each paragraph that a person changed, added, moved or struck, a triangle where the library's text
 * has moved since, and where the keyboard stands. Nothing stands beside the library's own.
 */
final class Margin {
    private static final String LONGEST = "△ added ↕";
    private static final String HERE = "▸";
    private final Canvas canvas;
    private final StyledText text;
    private final Supplier<List<PageText.Row>> rows;
    private final Supplier<String> here;
    private int top = -1;
    private int length = -1;

    /** @param here id of the paragraph in which the keyboard stands */
    Margin(Composite parent, StyledText text, Supplier<List<PageText.Row>> rows, Supplier<String> here) {
        this.text = text;
        this.rows = rows;
        this.here = here;
        canvas = Ui.named(new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS), "Section, what was written");
        canvas.setBackground(text.getBackground());
        GridData data = new GridData(SWT.FILL, SWT.FILL, false, true);
        canvas.setLayoutData(data);
        fit();
        canvas.addPaintListener(event -> paint(event.gc));
        // the text tells in no other way that it scrolls
        text.addPaintListener(event -> follow());
    }

    /** Stands before the text in the order of controls. */
    void before(StyledText of) {
        canvas.moveAbove(of);
    }

    private void fit() {
        GC gc = new GC(canvas);
        gc.setFont(text.getFont());
        ((GridData) canvas.getLayoutData()).widthHint = gc.textExtent(LONGEST + HERE).x + 10;
        gc.dispose();
    }

    private void follow() {
        if (text.getTopPixel() != top || text.getCharCount() != length) {
            redraw();
        }
    }

    void redraw() {
        top = text.getTopPixel();
        length = text.getCharCount();
        canvas.redraw();
    }

    private void paint(GC gc) {
        canvas.setBackground(text.getBackground());
        gc.setBackground(text.getBackground());
        gc.setForeground(text.getForeground());
        gc.setFont(text.getFont());
        int width = canvas.getClientArea().width;
        int height = canvas.getClientArea().height;
        gc.fillRectangle(0, 0, width, height);
        for (PageText.Row row : rows.get()) {
            if (row.index() >= text.getLineCount()) {
                return;
            }
            int from = text.getLinePixel(row.index());
            int to = row.index() + 1 < text.getLineCount() ? text.getLinePixel(row.index() + 1) : from + text.getLineHeight();
            if (from > height) {
                return;
            }
            if (to < 0) {
                continue;
            }
            paint(gc, row, from, to, width);
        }
    }

    private void paint(GC gc, PageText.Row row, int from, int to, int width) {
        int bar = width - 4;
        Point mark = gc.textExtent(HERE);
        if (row.line().id().equals(here.get())) {
            gc.drawText(HERE, bar - mark.x - 3, from, true);
        }
        String word = word(row.line());
        if (!word.isEmpty()) {
            gc.drawText(word, bar - mark.x - 6 - gc.textExtent(word).x, from, true);
            gc.setLineWidth(2);
            gc.drawLine(bar, from + 1, bar, to - 3);
            gc.setLineWidth(1);
        }
    }

    /** "own", "added", "struck", "moved"; with △ where the library moved, and ↕ for one that also moved. */
    static String word(Line line) {
        String word = switch (line.standing()) {
            case LIBRARY -> line.moved() ? "moved" : "";
            case OWN -> "own";
            case ADDED -> "added";
            case STRUCK -> "struck";
        };
        boolean also = line.moved() && !word.equals("moved");
        return (line.move().isPresent() ? "△ " : "") + word + (also ? " ↕" : "");
    }
}
