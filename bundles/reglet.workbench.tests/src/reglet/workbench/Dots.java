package reglet.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;

/** The dots of a screen whose scale is 200 %: two by two for each point of the window. */
final class Dots {
    private Dots() {
    }

    /** The toolkit copies a screen by points, so that half of the dots would be missing: another program takes the picture. */
    static ImageData ofScreen() throws IOException {
        Path file = Files.createTempFile("screen", ".png");
        try {
            Process taking = new ProcessBuilder("import", "-silent", "-window", "root", file.toString()).inheritIO().start();
            if (taking.waitFor() != 0) {
                throw new AssertionError("no picture of the screen: \"import\" of ImageMagick ended with " + taking.exitValue());
            }
            return new ImageLoader().load(file.toString())[0];
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException(interrupted);
        } finally {
            Files.delete(file);
        }
    }

    /**
     * Of all points at the edge of something drawn, the share whose four dots differ: 0 where a picture was made for 100 % and each of its
     * dots stands there four times.
     *
     * @param at in points
     */
    static double fine(ImageData screen, Rectangle at) {
        int edges = 0;
        int fine = 0;
        for (int y = at.y; y < at.y + at.height; y++) {
            for (int x = at.x; x < at.x + at.width; x++) {
                int[] four = {screen.getPixel(2 * x, 2 * y), screen.getPixel(2 * x + 1, 2 * y), screen.getPixel(2 * x, 2 * y + 1),
                    screen.getPixel(2 * x + 1, 2 * y + 1)};
                boolean same = four[0] == four[1] && four[0] == four[2] && four[0] == four[3];
                boolean edge = 2 * x + 2 < screen.width && four[1] != screen.getPixel(2 * x + 2, 2 * y)
                    || 2 * y + 2 < screen.height && four[2] != screen.getPixel(2 * x, 2 * y + 2);
                fine += same ? 0 : 1;
                edges += !same || edge ? 1 : 0;
            }
        }
        return edges == 0 ? 0 : (double) fine / edges;
    }
}
