package reglet.workbench;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

import reglet.workbench.sheets.PageCanvas;

/** Looks at every control that is in sight. On the window's thread. */
final class Inspection {
    private Inspection() {
    }

    /** The controls in sight that take the keyboard or draw, and that a screen reader has no name for. */
    static List<String> nameless(Composite below) {
        return inSight(below).stream().filter(control -> control instanceof Text || control instanceof Combo || control instanceof Table
            || control instanceof Tree || control instanceof Button || control instanceof StyledText || control instanceof Link
            || control instanceof org.eclipse.swt.widgets.List || control instanceof DrawingCanvas || control instanceof PageCanvas)
            .filter(control -> spoken(control).isBlank()).map(Inspection::path).toList();
    }

    /** What a screen reader is told to call a control: what stands on it, else what its accessible object answers. */
    static String spoken(Control control) {
        AccessibleEvent event = new AccessibleEvent(control.getAccessible());
        event.childID = ACC.CHILDID_SELF;
        listeners(control.getAccessible()).forEach(listener -> listener.getName(event));
        if (event.result != null) {
            return event.result;
        }
        return control instanceof Button button ? button.getText() : control instanceof Link link ? link.getText() : "";
    }

    /** Those that the toolkit itself asks; it has no public way to ask as it does. */
    @SuppressWarnings("unchecked")
    private static Collection<AccessibleListener> listeners(Accessible accessible) {
        try {
            Field field = Accessible.class.getDeclaredField("accessibleListeners");
            field.setAccessible(true);
            Collection<AccessibleListener> all = (Collection<AccessibleListener>) field.get(accessible);
            return all == null ? List.of() : List.copyOf(all);
        } catch (ReflectiveOperationException other) {
            throw new AssertionError("the toolkit keeps its accessible listeners elsewhere now", other);
        }
    }

    /** Labels, buttons and links in sight that have less room than their words need, with both sizes; what scrolls has room. */
    static List<String> cutOff(Composite below) {
        List<String> cut = new ArrayList<>();
        for (Control control : inSight(below)) {
            if (!(control instanceof Label || control instanceof Button || control instanceof Link) || words(control).isBlank()) {
                continue;
            }
            Point size = control.getSize();
            boolean wraps = (control.getStyle() & SWT.WRAP) != 0;
            Point needed = control.computeSize(wraps ? size.x : SWT.DEFAULT, SWT.DEFAULT);
            Point room = room(control);
            // the whole words of a line that is shortened stand in its tip
            boolean tipped = !wraps && control.getToolTipText() != null && control.getToolTipText().contains(words(control));
            if (needed.y > Math.min(size.y, room.y) || !tipped && needed.x > Math.min(size.x, room.x)) {
                cut.add("\"" + words(control) + "\" needs " + needed + ", has " + size + " in a room of " + room + ", at "
                    + chain(control));
            }
        }
        return cut;
    }

    /** Tables and trees in sight whose rows are lower than a line of their text. */
    static List<String> lowRows(Composite below) {
        return inSight(below).stream().filter(control -> control instanceof Table || control instanceof Tree).filter(control -> {
            GC gc = new GC(control);
            gc.setFont(control.getFont());
            int line = gc.getFontMetrics().getHeight();
            gc.dispose();
            return line > (control instanceof Table table ? table.getItemHeight() : ((Tree) control).getItemHeight());
        }).map(control -> String.valueOf(control.getData(Ui.NAME))).toList();
    }

    private static String words(Control control) {
        return control instanceof Label label ? label.getText() : control instanceof Button button ? button.getText()
            : ((Link) control).getText();
    }

    /** What is left for a control from its corner on in what holds it, as far as that doesn't scroll. */
    private static Point room(Control control) {
        int x = Integer.MAX_VALUE;
        int y = Integer.MAX_VALUE;
        Point corner = new Point(0, 0);
        for (Control inner = control; !(inner instanceof Shell) && !(inner.getParent() instanceof ScrolledComposite); inner = inner
            .getParent()) {
            corner.x += inner.getLocation().x;
            corner.y += inner.getLocation().y;
            Rectangle area = inner.getParent().getClientArea();
            x = Math.min(x, area.x + area.width - corner.x);
            y = Math.min(y, area.y + area.height - corner.y);
        }
        return new Point(x, y);
    }

    private static List<Control> inSight(Composite below) {
        List<Control> all = new ArrayList<>();
        for (Control child : below.getChildren()) {
            if (child.isVisible()) {
                all.add(child);
                if (child instanceof Composite composite && !(child instanceof Combo)) {
                    all.addAll(inSight(composite));
                }
            }
        }
        return all;
    }

    private static String chain(Control control) {
        return control.getBounds() + (control.getParent() == null ? "" : " in " + control.getParent().getClass().getSimpleName() + " "
            + chain(control.getParent()));
    }

    private static String path(Control control) {
        return (control.getParent() == null ? "" : path(control.getParent()) + "/") + control.getClass().getSimpleName();
    }
}
