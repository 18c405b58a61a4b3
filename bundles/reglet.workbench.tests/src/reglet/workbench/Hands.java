package reglet.workbench;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;

/** A person at the window: looks at what stands there, takes rows and fields, presses keys. Keys go through the display's own queue. */
final class Hands {
    private static final long PATIENCE = 30_000;

    private Hands() {
    }

    static Session session() {
        return PlatformUI.getWorkbench().getService(Session.class);
    }

    /** Opens a copy of a job and waits until it stands there. */
    static void open(Path folder) {
        ui(() -> {
            // without a window manager nothing else gives a window the keyboard
            shell().forceActive();
            session().open(folder);
            return null;
        });
        await("the job " + folder + " is open", () -> session().snapshot().map(now -> now.job().folder().equals(folder)).orElse(false)
            && session().focus().wall().equals("W1"));
    }

    static <T> T ui(Supplier<T> question) {
        AtomicReference<T> answer = new AtomicReference<>();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Workbench.display().syncExec(() -> {
            try {
                answer.set(question.get());
            } catch (RuntimeException | Error thrown) {
                failure.set(thrown);
            }
        });
        if (failure.get() != null) {
            throw new AssertionError(failure.get());
        }
        return answer.get();
    }

    /** Waits for a condition, asked on the window's thread. */
    static void await(String what, Supplier<Boolean> condition) {
        await(what, condition, () -> "");
    }

    /** @param otherwise what there is instead, asked when it was waited for in vain */
    static void await(String what, Supplier<Boolean> condition, Supplier<?> otherwise) {
        long end = System.currentTimeMillis() + PATIENCE;
        while (!ui(condition)) {
            if (System.currentTimeMillis() > end) {
                picture("failed-" + what.replaceAll("[^a-z]+", "-"));
                fail("waited in vain until " + what + "; " + ui(otherwise::get));
            }
            pause();
        }
    }

    static void pause() {
        try {
            Thread.sleep(40);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    static Shell shell() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
    }

    static String title() {
        return ui(() -> shell().getText());
    }

    /** The control of a name; call it on the window's thread. */
    static Control control(String name) {
        Control found = find(name);
        if (found == null) {
            throw new AssertionError("nothing here is called \"" + name + "\"");
        }
        return found;
    }

    /** In whichever shell it stands: the newest dialog first, the window last. */
    private static Control find(String name) {
        Shell[] shells = Workbench.display().getShells();
        for (int i = shells.length - 1; i >= 0; i--) {
            Control found = find(shells[i], name);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static Control find(Control control, String name) {
        if (name.equals(control.getData(Ui.NAME)) && control.isVisible()) {
            return control;
        }
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                Control found = find(child, name);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    static boolean isShown(String name) {
        return ui(() -> find(name) != null);
    }

    static String label(String name) {
        return ui(() -> ((Label) control(name)).getText());
    }

    static String prose(String name) {
        return ui(() -> ((StyledText) control(name)).getText());
    }

    /** What a screen reader says of a drawing. */
    static String description(String name) {
        return ui(() -> ((DrawingCanvas) control(name)).description());
    }

    /** The texts of the rows of a table, cells separated by " | ". */
    static List<String> rows(String name) {
        return ui(() -> java.util.Arrays.stream(((Table) control(name)).getItems()).map(Hands::text).toList());
    }

    private static String text(TableItem item) {
        StringBuilder line = new StringBuilder(item.getText(0));
        for (int column = 1; column < item.getParent().getColumnCount(); column++) {
            line.append(" | ").append(item.getText(column));
        }
        return line.toString();
    }

    static String selectedRow(String name) {
        return ui(() -> {
            TableItem[] selected = ((Table) control(name)).getSelection();
            return selected.length == 0 ? "" : text(selected[0]);
        });
    }

    /** The first texts of all lines of a tree, those below others included. */
    static List<String> lines(String name) {
        return ui(() -> {
            java.util.ArrayList<String> all = new java.util.ArrayList<>();
            for (TreeItem item : ((Tree) control(name)).getItems()) {
                collect(item, all);
            }
            return List.copyOf(all);
        });
    }

    private static void collect(TreeItem item, List<String> all) {
        all.add(item.getText());
        for (TreeItem child : item.getItems()) {
            collect(child, all);
        }
    }

    /** Takes the row of a table whose text begins so, as a click on it does: selected, in focus, and told by the toolkit's own event. */
    static void clickRow(String table, String start) {
        ui(() -> {
            Table rows = (Table) control(table);
            for (TableItem item : rows.getItems()) {
                if (text(item).strip().replaceFirst("^● ", "").startsWith(start)) {
                    rows.showItem(item);
                    rows.setSelection(item);
                    taken(rows, item);
                    return null;
                }
            }
            throw new AssertionError("no row of " + table + " begins \"" + start + "\"");
        });
        pause();
    }

    /** Takes the line of a tree below another whose text contains this, as a click on it does. */
    static void clickLine(String tree, String part) {
        ui(() -> {
            Tree lines = (Tree) control(tree);
            for (TreeItem item : lines.getItems()) {
                TreeItem found = below(item, part);
                if (found != null) {
                    lines.showItem(found);
                    lines.setSelection(found);
                    taken(lines, found);
                    return null;
                }
            }
            throw new AssertionError("no line of " + tree + " contains \"" + part + "\"");
        });
        pause();
    }

    private static TreeItem below(TreeItem item, String part) {
        for (TreeItem child : item.getItems()) {
            TreeItem found = child.getText().contains(part) && child.getItemCount() == 0 ? child : below(child, part);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static void taken(Control control, org.eclipse.swt.widgets.Widget item) {
        control.forceFocus();
        Event event = new Event();
        event.item = item;
        control.notifyListeners(SWT.Selection, event);
    }

    /** Puts a field in focus, as a click into it does. */
    static void clickControl(String name) {
        ui(() -> {
            Control control = control(name);
            if (control.getParent().getParent() instanceof org.eclipse.swt.custom.ScrolledComposite scroll) {
                scroll.showControl(control);
            }
            return control.forceFocus();
        });
        pause();
    }

    /** Clicks at a place of a control, in points from its corner. */
    static void clickAt(String name, int x, int y) {
        ui(() -> {
            Event event = new Event();
            event.button = 1;
            event.x = x;
            event.y = y;
            control(name).notifyListeners(SWT.MouseDown, event);
            return null;
        });
        pause();
    }

    /** Presses a key, with keys held down meanwhile. */
    static void press(int key, int... held) {
        // without a window manager nobody else puts the window in front, and keys would go nowhere
        ui(() -> {
            if (Workbench.display().getActiveShell() == null) {
                shell().forceActive();
            }
            return null;
        });
        for (int modifier : held) {
            post(SWT.KeyDown, event -> event.keyCode = modifier);
        }
        post(SWT.KeyDown, event -> key(event, key));
        post(SWT.KeyUp, event -> key(event, key));
        for (int modifier : held) {
            post(SWT.KeyUp, event -> event.keyCode = modifier);
        }
        pause();
    }

    private static void key(Event event, int key) {
        if ((key & SWT.KEYCODE_BIT) != 0 || key < ' ' || key == SWT.DEL) {
            event.keyCode = key;
        } else {
            event.character = (char) key;
        }
    }

    /** Types in place of what stands in the field in focus. */
    static void type(String words) {
        press('a', SWT.CTRL);
        words.chars().forEach(letter -> press(letter));
    }

    private static void post(int type, java.util.function.Consumer<Event> fill) {
        Display display = Workbench.display();
        Event event = new Event();
        event.type = type;
        fill.accept(event);
        display.syncExec(() -> display.post(event));
        pause();
    }

    /** Presses a button or follows a link, as a click on it does. */
    static void take(String name) {
        Workbench.display().asyncExec(() -> {
            Control control = control(name);
            control.forceFocus();
            control.notifyListeners(SWT.Selection, new Event());
        });
        pause();
    }

    /** Leaves a picture of the window in the build's output. */
    static void picture(String name) {
        Path pictures = Path.of("target", "pictures");
        try {
            Files.createDirectories(pictures);
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] {screen()};
            loader.save(pictures.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
        } catch (IOException unwritable) {
            throw new AssertionError(unwritable);
        }
    }

    /** The window as it stands on the screen, in the screen's own dots. */
    static ImageData screen() throws IOException {
        return ui(() -> shell().getMonitor().getZoom()) == 100 ? copied() : Dots.ofScreen();
    }

    private static ImageData copied() {
        return ui(() -> {
            Display display = Workbench.display();
            Rectangle bounds = shell().getBounds();
            Image image = new Image(display, bounds.width, bounds.height);
            GC gc = new GC(display);
            gc.copyArea(image, bounds.x, bounds.y);
            gc.dispose();
            ImageData pixels = image.getImageData();
            image.dispose();
            return pixels;
        });
    }
}
