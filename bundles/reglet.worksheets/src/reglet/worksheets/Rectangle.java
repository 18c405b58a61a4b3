package reglet.worksheets;

/**
 * So many equal rectangles of an elevation: a stretch of wall, windows of one size.
 *
 * @param width  m
 * @param height m
 * @param count  1 or more
 */
public record Rectangle(double width, double height, int count) {

    /** Area of all of them, m². */
    public double area() {
        return width * height * count;
    }
}
