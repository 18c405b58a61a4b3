package reglet.workbench.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;

import reglet.model.Box;
import reglet.workbench.Ui;
import reglet.workbench.sheets.Pages.Page;

/**
 * The picture of a page with rectangles round values; the one in focus is in sight. Page Up and Page Down turn pages, + and - change
 * the scale, the arrows move the page. A place is marked by dragging or, after Insert, with the arrows, with Shift for its size, and Enter.
 */
public final class PageCanvas extends Canvas {
    /** Least and most points of the screen for a point of the page when it is fitted into the width. */
    private static final double LEAST = 0.9;
    private static final double MOST = 2;
    private static final double STEP = 1.25;
    private static final int MARGIN = 8;
    private static final int ROUND = 3;
    private static final int SCROLL = 40;
    private static final int NUDGE = 4;
    private final Selector selector = new Selector();
    private final IntConsumer turn;
    private Shown shown = new Shown(null, List.of(), Optional.empty(), "", "No page is shown.");
    private double zoom = 1;
    private BiConsumer<Integer, Box> place;

    /**
     * What is shown.
     *
     * @param page    null while there is none
     * @param others  places that are quietly marked
     * @param focus   the place in focus
     * @param words   what a screen reader says of it
     * @param instead what stands there while there is no page
     */
    record Shown(Page page, List<Box> others, Optional<Box> focus, String words, String instead) {
        Shown {
            others = List.copyOf(others);
        }
    }

    /** A rectangle that the person is marking, in points of the page. */
    private static final class Selector {
        private double x;
        private double y;
        private double width;
        private double height;
        private boolean on;
        private boolean dragging;

        Box box() {
            return new Box(Math.min(x, x + width), Math.min(y, y + height), Math.abs(width), Math.abs(height));
        }
    }

    /** @param turn told to turn pages, by how many */
    PageCanvas(Composite parent, String name, IntConsumer turn) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.H_SCROLL | SWT.V_SCROLL | SWT.BORDER);
        this.turn = turn;
        Ui.named(this, name);
        addPaintListener(event -> paint(event.gc));
        addListener(SWT.Resize, event -> reveal());
        for (ScrollBar bar : List.of(getHorizontalBar(), getVerticalBar())) {
            bar.addListener(SWT.Selection, event -> redraw());
        }
        addListener(SWT.MouseWheel, this::wheel);
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseMove, this::move);
        addListener(SWT.MouseUp, event -> up());
        addKeyListener(KeyListener.keyPressedAdapter(this::key));
        addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = description();
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }

    /** Lets the person mark places; told the page and the place. */
    void places(BiConsumer<Integer, Box> told) {
        place = told;
    }

    void show(Shown next) {
        if (next.equals(shown)) {
            return;
        }
        boolean moved = next.page() != shown.page() || !next.focus().equals(shown.focus());
        if (next.page() != shown.page()) {
            selector.on = false;
        }
        shown = next;
        if (moved) {
            reveal();
        }
        redraw();
    }

    /** What a screen reader says of it. */
    public String description() {
        return shown.page() == null ? shown.instead() : shown.words();
    }

    /** The place in focus as it stands on the canvas, in points of the screen; empty when there is none. */
    public Optional<Rectangle> focusOnScreen() {
        return shown.page() == null ? Optional.empty() : shown.focus().map(this::onScreen);
    }

    private double scale() {
        double fit = (getClientArea().width - 2 * MARGIN) / shown.page().width();
        return Math.max(LEAST, Math.min(MOST, fit)) * zoom;
    }

    private Point whole() {
        double scale = scale();
        return new Point((int) (shown.page().width() * scale) + 2 * MARGIN, (int) (shown.page().height() * scale) + 2 * MARGIN);
    }

    /** The left upper corner of the page on the canvas. */
    private Point corner() {
        Point whole = whole();
        Rectangle area = getClientArea();
        return new Point(MARGIN + (whole.x < area.width ? (area.width - whole.x) / 2 : -getHorizontalBar().getSelection()),
            MARGIN - getVerticalBar().getSelection());
    }

    private Rectangle onScreen(Box box) {
        double scale = scale();
        Point corner = corner();
        return new Rectangle(corner.x + (int) (box.x() * scale) - ROUND, corner.y + (int) (box.y() * scale) - ROUND,
            (int) (box.width() * scale) + 2 * ROUND, (int) (box.height() * scale) + 2 * ROUND);
    }

    private void bars() {
        Point whole = whole();
        Rectangle area = getClientArea();
        bar(getHorizontalBar(), whole.x, area.width);
        bar(getVerticalBar(), whole.y, area.height);
    }

    private static void bar(ScrollBar bar, int whole, int seen) {
        int max = Math.max(whole, 1);
        int thumb = Math.max(1, Math.min(seen, max));
        bar.setValues(Math.max(0, Math.min(bar.getSelection(), max - thumb)), 0, max, thumb, SCROLL, Math.max(1, seen - SCROLL));
        bar.setVisible(whole > seen);
    }

    /** Brings the place in focus, else the top of the page, into sight. */
    private void reveal() {
        if (shown.page() == null || getClientArea().width < 2) {
            return;
        }
        bars();
        Rectangle area = getClientArea();
        Rectangle at = shown.focus().map(this::onScreen).orElse(new Rectangle(corner().x, corner().y, 1, 1));
        if (at.y < 0 || at.y + at.height > area.height) {
            scroll(getVerticalBar(), getVerticalBar().getSelection() + at.y + at.height / 2 - area.height / 2);
        }
        // from the left edge on wherever the place is in sight then: lines are read from there
        int right = at.x + at.width + getHorizontalBar().getSelection();
        scroll(getHorizontalBar(), right <= area.width ? 0 : getHorizontalBar().getSelection() + at.x + at.width / 2 - area.width / 2);
        redraw();
    }

    private void scroll(ScrollBar bar, int to) {
        bar.setSelection(Math.max(0, Math.min(to, bar.getMaximum() - bar.getThumb())));
        redraw();
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND));
        gc.fillRectangle(area);
        if (shown.page() == null) {
            gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WIDGET_FOREGROUND));
            gc.drawText(shown.instead(), MARGIN, MARGIN, true);
        } else if (!shown.page().image().isDisposed()) {
            page(gc);
        }
        if (isFocusControl()) {
            gc.drawFocus(area.x, area.y, area.width, area.height);
        }
    }

    private void page(GC gc) {
        Point corner = corner();
        double scale = scale();
        Rectangle image = shown.page().image().getBounds();
        gc.setInterpolation(SWT.LOW);
        gc.drawImage(shown.page().image(), 0, 0, image.width, image.height, corner.x, corner.y,
            (int) (shown.page().width() * scale), (int) (shown.page().height() * scale));
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY));
        gc.setLineStyle(SWT.LINE_DOT);
        shown.others().forEach(box -> gc.drawRectangle(onScreen(box)));
        gc.setLineStyle(SWT.LINE_SOLID);
        shown.focus().ifPresent(box -> strong(gc, box));
        if (selector.on) {
            strong(gc, selector.box());
        }
    }

    /** The page is paper whatever the theme, so that ink of its own stands on it. */
    private void strong(GC gc, Box box) {
        Rectangle at = onScreen(box);
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_DARK_BLUE));
        gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_DARK_BLUE));
        gc.setAlpha(28);
        gc.fillRectangle(at);
        gc.setAlpha(255);
        gc.setLineWidth(2);
        gc.drawRectangle(at);
        gc.setLineWidth(1);
    }

    private void wheel(Event event) {
        if (shown.page() == null) {
            return;
        }
        if ((event.stateMask & SWT.MOD1) != 0) {
            zoom(event.count > 0 ? STEP : 1 / STEP);
        } else {
            scroll(getVerticalBar(), getVerticalBar().getSelection() - event.count * SCROLL / 2);
        }
        event.doit = false;
    }

    private void zoom(double by) {
        zoom = Math.max(0.5, Math.min(4, zoom * by));
        reveal();
    }

    private void down(Event event) {
        forceFocus();
        if (event.button == 1 && place != null && shown.page() != null) {
            selector.x = (event.x - corner().x) / scale();
            selector.y = (event.y - corner().y) / scale();
            selector.width = 0;
            selector.height = 0;
            selector.dragging = true;
        }
    }

    private void move(Event event) {
        if (selector.dragging) {
            selector.width = (event.x - corner().x) / scale() - selector.x;
            selector.height = (event.y - corner().y) / scale() - selector.y;
            selector.on = Math.abs(selector.width) > 2 && Math.abs(selector.height) > 2;
            redraw();
        }
    }

    private void up() {
        if (selector.dragging) {
            selector.dragging = false;
            placed();
        }
    }

    private void placed() {
        if (selector.on) {
            place.accept(shown.page().number(), selector.box());
        }
    }

    /** The place marked is no longer asked for. */
    void unmark() {
        selector.on = false;
        redraw();
    }

    /** Begins to mark a place, to be moved with the keys. */
    void mark() {
        forceFocus();
        if (shown.page() != null && place != null) {
            begin();
        }
    }

    private void key(KeyEvent event) {
        if (shown.page() == null) {
            return;
        }
        boolean sized = (event.stateMask & SWT.SHIFT) != 0;
        int right = event.keyCode == SWT.ARROW_RIGHT ? 1 : event.keyCode == SWT.ARROW_LEFT ? -1 : 0;
        int down = event.keyCode == SWT.ARROW_DOWN ? 1 : event.keyCode == SWT.ARROW_UP ? -1 : 0;
        if (event.keyCode == SWT.PAGE_DOWN || event.keyCode == SWT.PAGE_UP) {
            turn.accept(event.keyCode == SWT.PAGE_DOWN ? 1 : -1);
        } else if (event.character == '+' || event.character == '=' || event.character == '-') {
            zoom(event.character == '-' ? 1 / STEP : STEP);
        } else if (event.keyCode == SWT.INSERT && place != null) {
            begin();
        } else if (selector.on && event.character == SWT.CR) {
            placed();
        } else if (selector.on && event.character == SWT.ESC) {
            unmark();
        } else if (selector.on && (right != 0 || down != 0)) {
            selector.x += sized ? 0 : right * NUDGE;
            selector.y += sized ? 0 : down * NUDGE;
            selector.width = Math.max(NUDGE, selector.width + (sized ? right * NUDGE : 0));
            selector.height = Math.max(NUDGE, selector.height + (sized ? down * NUDGE : 0));
            redraw();
        } else if (right != 0 || down != 0) {
            scroll(getHorizontalBar(), getHorizontalBar().getSelection() + right * SCROLL);
            scroll(getVerticalBar(), getVerticalBar().getSelection() + down * SCROLL);
        }
    }

    /** A rectangle in the middle of what is in sight, to be moved. */
    private void begin() {
        Rectangle area = getClientArea();
        selector.width = 90;
        selector.height = 14;
        selector.x = (area.width / 2 - corner().x) / scale() - selector.width / 2;
        selector.y = (area.height / 2 - corner().y) / scale() - selector.height / 2;
        selector.on = true;
        redraw();
    }
}
