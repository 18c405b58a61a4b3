package reglet.workbench;

import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Widget;

/** Small things that every view needs. Fonts and colours come from the system; sizes are counted in characters. */
public final class Ui {
    /** Key of the name by which tests and screen readers find a control. */
    public static final String NAME = "reglet.name";

    /** Measuring a font takes as long as asking for a hundred widths of it: the last one is kept. */
    private static PixelConverter measure;
    private static Font measured;

    private static final String STRONG = "reglet.strong";
    /** The platform's name of what keeps a widget out of its style sheets. */
    private static final String UNSTYLED = "org.eclipse.e4.ui.css.disabled";
    private static final double USUAL_HEIGHT = 10;
    private static final double USUAL_DPI = 96;

    private Ui() {
    }

    /** Gives a control its name for screen readers. */
    public static <C extends Control> C named(C control, String name) {
        control.setData(NAME, name);
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == org.eclipse.swt.accessibility.ACC.CHILDID_SELF) {
                    event.result = (String) control.getData(NAME);
                }
            }
        });
        return control;
    }

    /** A button with a name for screen readers that does something. */
    public static Button button(Composite parent, String words, String name, Runnable action) {
        Button button = named(new Button(parent, SWT.PUSH), name);
        button.setText(words);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    /** The heading font: larger and bold. There are two sizes and one emphasis. */
    public static Font heading(Control control) {
        return font(control, FontDescriptor.createFrom(control.getFont()).increaseHeight(3).setStyle(SWT.BOLD));
    }

    /** The emphasis at the size that the control's text has now; made once for each size. */
    public static Font strong(Control control) {
        if (!(control.getData(STRONG) instanceof Strong made) || !made.of().equals(control.getFont())) {
            Font strong = font(control, FontDescriptor.createFrom(control.getFont()).setStyle(SWT.BOLD));
            control.setData(STRONG, new Strong(control.getFont(), strong));
            return strong;
        }
        return made.font();
    }

    private record Strong(Font of, Font font) {
    }

    private static Font font(Control control, FontDescriptor descriptor) {
        return new LocalResourceManager(JFaceResources.getResources(), control).create(descriptor);
    }

    /** A quiet background behind what is in focus: the theme's selection colour, mostly let through to its paper. */
    public static Color highlight(Control control) {
        Display display = control.getDisplay();
        RGB paper = display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
        RGB mark = display.getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB();
        return new Color(mix(paper.red, mark.red), mix(paper.green, mark.green), mix(paper.blue, mark.blue));
    }

    private static int mix(int paper, int mark) {
        return (paper * 4 + mark) / 5;
    }

    /** Width of so many characters of the control's font, in points of the screen's scale; on the window's thread. */
    public static int characters(Control control, int count) {
        Font font = control.getFont();
        if (font != measured) {
            measure = new PixelConverter(font);
            measured = font;
        }
        return measure.convertWidthInCharsToPixels(count);
    }

    /** A table that fills and measures its lines when they come in sight: for very many lines or columns. */
    public static TableViewer filledInSight(Composite parent, int style) {
        TableViewer viewer = new TableViewer(parent, style | SWT.VIRTUAL);
        // the platform would keep each line that ever came in sight and ask it when the theme changes, though the toolkit has let it go
        viewer.getTable().addListener(SWT.SetData, event -> event.item.setData(UNSTYLED, Boolean.TRUE));
        return viewer;
    }

    /** Whether a control, or one in it, has the keyboard. */
    public static boolean hasKeyboard(Control control) {
        Control at = control.getDisplay().getFocusControl();
        while (at != null && at != control) {
            at = at.getParent();
        }
        return at != null;
    }

    /** How many times the usual size the text of a control has: 1 for 10 pt at 96 dots an inch. */
    static double larger(Control control) {
        return control.getFont().getFontData()[0].getHeight() / USUAL_HEIGHT * control.getDisplay().getDPI().y / USUAL_DPI;
    }

    /** Runs on the window's thread unless the widget is gone by then. */
    public static void later(Widget widget, Runnable work) {
        if (widget.isDisposed()) {
            return;
        }
        widget.getDisplay().asyncExec(() -> {
            if (!widget.isDisposed()) {
                work.run();
            }
        });
    }
}
