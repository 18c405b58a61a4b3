package reglet.model;

/** A rectangle on a PDF page in points, origin at the upper left of the page as shown. */
public record Box(double x, double y, double width, double height) {
}
