package reglet.workbench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;

import reglet.desk.Pictures;
import reglet.desk.Pictures.Picture;
import reglet.model.Chart;

/** Charts on a control, drawn beside the window's thread for its width and for the scale of its screen. */
final class Charts {
    private static final double HEIGHT = 0.62;
    /** In points, at the usual size of text; a narrower chart would be all words. */
    private static final double LEAST_WIDTH = 280;
    private final Control control;
    private final Latest latest;
    private final Runnable drawn;
    private final Map<Chart, Image> images = new LinkedHashMap<>();
    private List<Chart> asked = List.of();
    private int askedWidth;

    /** @param drawn called on the window's thread when charts asked for are ready */
    Charts(Control control, Runnable drawn) {
        this.control = control;
        this.latest = new Latest(control);
        this.drawn = drawn;
        control.addDisposeListener(event -> clear());
    }

    private void clear() {
        images.values().forEach(Image::dispose);
        images.clear();
    }

    /** Height of a chart of a width, in points. */
    int height(int width) {
        return (int) (width * HEIGHT * larger(width));
    }

    /** How many times their usual size its words have, as those around it. */
    private double larger(int width) {
        return Math.max(1, Math.min(Ui.larger(control), width / LEAST_WIDTH));
    }

    /** Asks for charts of a width in points, unless these are ready or on their way. */
    void ask(List<Chart> charts, int width) {
        if (charts.equals(asked) && width == askedWidth) {
            return;
        }
        asked = List.copyOf(charts);
        askedWidth = width;
        int zoom = control.getMonitor().getZoom();
        double larger = larger(width);
        int height = height(width);
        latest.ask("Drawing charts", monitor -> {
            Map<Chart, Picture> pictures = new LinkedHashMap<>();
            charts.forEach(chart -> pictures.put(chart, Pictures.chart(chart, width, height, zoom, larger)));
            return pictures;
        }, pictures -> {
            clear();
            pictures.forEach((chart, picture) -> images.put(chart, new Image(control.getDisplay(), (int wanted) -> data(wanted == zoom
                ? picture : Pictures.chart(chart, width, height, wanted, larger)))));
            drawn.run();
        });
    }

    private static ImageData data(Picture picture) {
        ImageData data = new ImageData(picture.width(), picture.height(), 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        for (int row = 0; row < picture.height(); row++) {
            data.setPixels(0, row, picture.width(), picture.dots(), row * picture.width());
        }
        return data;
    }

    /** Paints a chart, or says that it is on its way. */
    void paint(Chart chart, GC gc, Rectangle at) {
        Image image = images.get(chart);
        if (image != null) {
            gc.drawImage(image, at.x, at.y);
        } else {
            gc.drawText("Drawing \"" + chart.title() + "\"…", at.x, at.y, true);
        }
    }
}
