package reglet.desk;

import reglet.drafting.Plot;
import reglet.model.Chart;

/** Pictures for a screen. */
public final class Pictures {

    private Pictures() {
    }

    /**
     * A picture.
     *
     * @param width  in dots
     * @param height in dots
     * @param dots   red, green and blue of each, as 0xRRGGBB, row after row
     */
    public record Picture(int width, int height, int[] dots) {
    }

    /**
     * A chart for a screen, drawn anew for each size and scale, so that it is as sharp as the text around it. Takes a moment.
     *
     * @param width  in points of the screen
     * @param height in points of the screen
     * @param zoom   dots for 100 points
     * @param larger how many times their usual size words and lines have
     */
    public static Picture chart(Chart chart, int width, int height, int zoom, double larger) {
        int wide = Math.max(1, width * zoom / 100);
        int high = Math.max(1, height * zoom / 100);
        return new Picture(wide, high, Plot.dots(chart, wide, high, zoom / 100.0 * larger));
    }
}
