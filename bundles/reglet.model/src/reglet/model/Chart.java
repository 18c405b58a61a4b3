package reglet.model;

import java.util.List;

/**
 * A curve or several to be drawn beside a worksheet.
 *
 * @param across what runs along the horizontal axis, with the unit people read it in
 * @param up     what runs along the vertical axis
 */
public record Chart(String title, Axis across, Axis up, List<Curve> curves) {

    public Chart {
        curves = List.copyOf(curves);
    }

    public record Axis(String label, Unit unit) {
    }

    public record Curve(String label, List<Point> points) {
        public Curve {
            points = List.copyOf(points);
        }
    }

    /** Both numbers in the SI unit of their axis' dimension; {@code note} names what governs there, or is "". */
    public record Point(double x, double y, String note) {
    }
}
