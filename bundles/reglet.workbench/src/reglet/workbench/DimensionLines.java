package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;

import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;
import reglet.model.Drawing.Text;

/** Words and dimensions of a drawing, kept apart from each other. */
final class DimensionLines {
    private final GC gc;
    private final Strokes strokes;
    private final DrawingCanvas.Shown shown;
    private final Rectangle sheet;
    private final Fit fit;
    private final int row;
    private final List<Rectangle> written = new ArrayList<>();

    /**
     * @param sheet what words are kept inside of
     * @param row   the height of a line of words
     */
    DimensionLines(GC gc, Strokes strokes, DrawingCanvas.Shown shown, Rectangle sheet, Fit fit, int row) {
        this.gc = gc;
        this.strokes = strokes;
        this.shown = shown;
        this.sheet = sheet;
        this.fit = fit;
        this.row = row;
    }

    void text(Text text) {
        Point at = fit.at(text.at());
        int width = gc.textExtent(text.text()).x;
        double left = switch (text.anchor()) {
            case LEFT -> at.x();
            case MIDDLE -> at.x() - width / 2.0;
            case RIGHT -> at.x() - width;
        };
        words(text.text(), left, at.y() - row);
    }

    /** Words on a patch of paper, so that lines below don't run through them; kept inside the sheet. */
    private void words(String words, double left, double top) {
        int width = gc.textExtent(words).x;
        int x = (int) Math.max(sheet.x + 2, Math.min(left, sheet.x + sheet.width - width - 2));
        gc.drawText(words, x, (int) Math.round(top), false);
    }

    void dimension(Dimensioned dimension) {
        Point a = fit.at(dimension.from());
        Point b = fit.at(dimension.to());
        // up is down on the screen, so that left of a line is right of it there
        double offset = -dimension.offset() * fit.scale();
        Point from = Geometry.moved(a, a, b, 0, offset);
        Point to = Geometry.moved(b, a, b, 0, offset);
        float thin = shown.isShown(dimension) ? 2 : 0.7f;
        strokes.draw(List.of(a, Geometry.moved(from, a, b, 0, Math.signum(offset) * 3)), false, thin, Stroke.SOLID);
        strokes.draw(List.of(b, Geometry.moved(to, a, b, 0, Math.signum(offset) * 3)), false, thin, Stroke.SOLID);
        strokes.draw(List.of(from, to), false, thin, Stroke.SOLID);
        for (Point end : List.of(from, to)) {
            strokes.draw(List.of(new Point(end.x() - 3, end.y() + 3), new Point(end.x() + 3, end.y() - 3)), false, 1.4f, Stroke.SOLID);
        }
        Point middle = Geometry.between(from, to, 0.5);
        int width = gc.textExtent(dimension.text()).x;
        boolean fits = width + 12 < Geometry.distance(from, to);
        // what doesn't fit between the ticks stands beyond the line
        Point at = fits ? middle : Geometry.moved(middle, a, b, 0, Math.signum(offset) * (row / 2.0 + 5));
        if (Math.abs(to.x() - from.x()) >= Math.abs(to.y() - from.y())) {
            Rectangle box = new Rectangle((int) at.x() - width / 2 - 2, (int) at.y() - row / 2, width + 4, row);
            // without notes there is little room: what would run into other words is left to the large drawing
            if (shown.noted() || written.stream().noneMatch(box::intersects)) {
                words(dimension.text(), at.x() - width / 2.0, at.y() - row / 2.0);
                written.add(box);
            }
        } else {
            upright(dimension, at, width, Math.signum(offset));
        }
    }

    /**
     * Words that run up, around a point, as beside an upright dimension. Where other words of this kind stand already, they move along
     * the dimension to the nearest place that is free, or beside it, and a line leads back to their dimension. Where none is free they
     * are left to a larger drawing, unless they belong to what is in focus.
     */
    private void upright(Dimensioned dimension, Point wished, int width, double side) {
        Optional<Point> free = free(wished, width, side);
        if (free.isEmpty() && !shown.isShown(dimension)) {
            return;
        }
        Point at = free.orElse(wished);
        written.add(box(at, width));
        double from = Math.abs(at.y() - wished.y()) - width / 2.0;
        if (from > 0 || Math.abs(at.x() - wished.x()) > 1) {
            Point near = new Point(at.x(), at.y() + Math.signum(wished.y() - at.y()) * width / 2.0);
            strokes.draw(List.of(near, wished), false, 0.6f, Stroke.SOLID);
        }
        Transform before = new Transform(gc.getDevice());
        Transform turned = new Transform(gc.getDevice());
        gc.getTransform(before);
        gc.getTransform(turned);
        turned.translate((float) at.x(), (float) at.y());
        turned.rotate(-90);
        gc.setTransform(turned);
        gc.drawText(dimension.text(), -width / 2, -row / 2, false);
        gc.setTransform(before);
        before.dispose();
        turned.dispose();
    }

    private Rectangle box(Point at, int width) {
        return new Rectangle((int) at.x() - row / 2, (int) at.y() - width / 2 - 3, row, width + 6);
    }

    private Optional<Point> free(Point wished, int width, double side) {
        for (int column = 0; column < 3; column++) {
            double x = wished.x() + side * column * row;
            for (int step = 0; step * 4 < sheet.height / 2; step++) {
                for (int way : step == 0 ? new int[] {1} : new int[] {1, -1}) {
                    Point at = new Point(x, wished.y() + way * step * 4);
                    Rectangle box = box(at, width);
                    if (box.x > sheet.x && box.x + box.width < sheet.x + sheet.width && box.y > sheet.y + 2 * row
                        && box.y + box.height < sheet.y + sheet.height && written.stream().noneMatch(box::intersects)) {
                        return Optional.of(at);
                    }
                }
            }
        }
        return Optional.empty();
    }
}
