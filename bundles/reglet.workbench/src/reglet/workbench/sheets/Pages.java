package reglet.workbench.sheets;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

import reglet.desk.Confirming;
import reglet.model.UnusableInput;
import reglet.workbench.Latest;
import reglet.workbench.OneByOne;
import reglet.workbench.Session;

/** Pictures of the pages of data sheets. Foreign files are opened in a process of their own; the last pictures are kept. */
final class Pages {
    private static final int KEPT = 8;
    private static final int DPI = 144;
    private static final int FINE_DPI = 200;
    private static final int COARSE_DPI = 36;
    /** The reading process draws pages of so many dots more coarsely than asked. */
    private static final double COARSER_FROM = 5.5e6;
    private static final double POINTS_PER_INCH = 72;
    private final Control control;
    private final Latest latest;
    private final Map<String, Page> kept = new LinkedHashMap<>(KEPT, 0.75f, true);
    private String asked = "";
    /** Who waits for what was asked: the last who did. */
    private Consumer<Loaded> waiting;

    /**
     * A page of a sheet.
     *
     * @param number from 1
     * @param width  in points of the page
     * @param height in points of the page
     */
    record Page(Path sheet, int number, Image image, double width, double height) {
    }

    /** A page, or why there is none. */
    record Loaded(Optional<Page> page, String why) {
    }

    Pages(Control control, OneByOne work) {
        this.control = control;
        this.latest = new Latest(control, work);
        control.addDisposeListener(event -> clear());
    }

    private synchronized void clear() {
        kept.values().forEach(page -> page.image().dispose());
        kept.clear();
    }

    private static String key(Path sheet, int number) {
        return number + " " + sheet;
    }

    /** The page if its picture is here. */
    synchronized Optional<Page> ready(Path sheet, int number) {
        return Optional.ofNullable(kept.get(key(sheet, number)));
    }

    /** The sheet is another file now. */
    synchronized void forget(Path sheet) {
        kept.values().stream().filter(page -> page.sheet().equals(sheet)).toList().forEach(page -> {
            kept.remove(key(page.sheet(), page.number()));
            page.image().dispose();
        });
        asked = "";
    }

    /** Asks for a page; the answer comes on the window's thread, and only to who asked last. */
    void ask(Path sheet, int number, Consumer<Loaded> answer) {
        Optional<Page> here = ready(sheet, number);
        if (here.isPresent()) {
            latest.cancel();
            asked = "";
            answer.accept(new Loaded(here, ""));
            return;
        }
        waiting = answer;
        if (key(sheet, number).equals(asked)) {
            return;
        }
        asked = key(sheet, number);
        Display display = control.getDisplay();
        int zoom = control.getMonitor().getZoom();
        latest.ask("Drawing page " + number + " of " + sheet.getFileName(), monitor -> {
            try {
                return new Loaded(Optional.of(keep(load(display, zoom, sheet, number))), "");
            } catch (UnusableInput unusable) {
                return new Loaded(Optional.empty(), Session.reasons(unusable));
            } catch (IOException failed) {
                return new Loaded(Optional.empty(), "The page was not drawn: " + failed.getMessage());
            }
        }, loaded -> {
            asked = "";
            waiting.accept(loaded);
        });
    }

    private synchronized Page keep(Page page) {
        Page before = kept.put(key(page.sheet(), page.number()), page);
        if (before != null) {
            before.image().dispose();
        }
        while (kept.size() > KEPT) {
            String oldest = kept.keySet().iterator().next();
            kept.remove(oldest).image().dispose();
        }
        return page;
    }

    private static Page load(Display display, int zoom, Path sheet, int number) throws UnusableInput, IOException {
        int dpi = zoom >= 150 ? FINE_DPI : DPI;
        ImageData data = data(Confirming.picture(sheet, number, dpi));
        double width = data.width * POINTS_PER_INCH / dpi;
        if ((double) data.width * data.height > COARSER_FROM) {
            // it may have come more coarsely than asked; a coarse picture tells how large the page is
            width = data(Confirming.picture(sheet, number, COARSE_DPI)).width * POINTS_PER_INCH / COARSE_DPI;
        }
        Image image = new Image(display, (int wanted) -> wanted == zoom ? data
            : data.scaledTo(Math.max(1, data.width * wanted / zoom), Math.max(1, data.height * wanted / zoom)));
        return new Page(sheet, number, image, width, width * data.height / data.width);
    }

    private static ImageData data(byte[] png) {
        return new ImageLoader().load(new ByteArrayInputStream(png))[0];
    }
}
