package reglet.drafting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;

import reglet.drafting.DrawingSheet.Curve;
import reglet.drafting.DrawingSheet.Dots;
import reglet.drafting.DrawingSheet.Mark;
import reglet.drafting.DrawingSheet.Solid;
import reglet.drafting.DrawingSheet.Strokes;
import reglet.drafting.DrawingSheet.Writing;
import reglet.model.Drawing;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;

/**
 * A drawing on its sheet as SVG 1.1, sized in millimetres so that it prints at its scale, without outside parts, styles or scripts.
 * All that belongs to a component stands in one group with its name in <code>data-component</code>.
 */
public final class DrawingSvg {
    /** Faces of the widths that the layout was measured with come first. */
    private static final String FACES = "'Liberation Sans', sans-serif";

    private final DrawingSheet sheet;
    private final StringBuilder out = new StringBuilder();

    private DrawingSvg(DrawingSheet sheet) {
        this.sheet = sheet;
    }

    /** @throws IllegalArgumentException if the drawing's notes don't fit on the paper */
    public static String of(Drawing drawing, Frame frame) {
        return new DrawingSvg(DrawingFrame.sheet(drawing, frame)).page(drawing, frame);
    }

    private String page(Drawing drawing, Frame frame) {
        String width = number(sheet.width());
        String height = number(sheet.height());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"")
            .append(width).append("mm\" height=\"").append(height).append("mm\" viewBox=\"0 0 ").append(width).append(' ').append(height)
            .append("\" fill=\"none\" stroke-linecap=\"butt\" stroke-linejoin=\"round\">\n<title>").append(text(drawing.title()))
            .append("</title>\n<desc>").append(text(frame.job() + (frame.note().isEmpty() ? "" : ". " + frame.note())))
            .append("</desc>\n<rect width=\"").append(width).append("\" height=\"").append(height).append("\" fill=\"#ffffff\"/>\n");
        Map<String, StringBuilder> groups = new LinkedHashMap<>();
        for (Mark mark : sheet.marks()) {
            groups.computeIfAbsent(mark.component(), name -> new StringBuilder()).append(mark(mark)).append('\n');
        }
        groups.forEach((component, marks) -> out.append(component.isEmpty() ? "<g>\n" : "<g data-component=\"" + text(component) + "\">\n")
            .append(marks).append("</g>\n"));
        return out.append("</svg>\n").toString();
    }

    private String mark(Mark mark) {
        String opening = " class=\"" + mark.kind().name().toLowerCase(Locale.ROOT).replace('_', '-') + "\"";
        if (mark instanceof Strokes strokes) {
            StringBuilder path = new StringBuilder();
            strokes.lines().forEach(line -> path.append(line(line, strokes.closed())));
            return "<path" + opening + " d=\"" + path + "\"" + pen(DrawingSheet.width(strokes.pen()), strokes.stroke()) + "/>";
        } else if (mark instanceof Curve curve) {
            return curve(curve, opening);
        } else if (mark instanceof Solid solid) {
            return "<path" + opening + " d=\"" + line(solid.outline(), true) + "\" fill=\"" + colour(solid.stroke()) + "\"/>";
        } else if (mark instanceof Dots dots) {
            StringBuilder path = new StringBuilder();
            dots.at().forEach(dot -> path.append('M').append(point(dot)).append("h0"));
            return "<path" + opening + " d=\"" + path + "\" stroke=\"#000000\" stroke-width=\"" + number(dots.diameter())
                + "\" stroke-linecap=\"round\"/>";
        }
        return writing((Writing) mark, opening);
    }

    private String curve(Curve curve, String opening) {
        String radius = number(curve.radius());
        String pen = pen(DrawingSheet.width(curve.pen()), curve.stroke());
        if (curve.sweep() >= 360) {
            return "<circle" + opening + " cx=\"" + number(curve.centre().x()) + "\" cy=\"" + number(sheet.height() - curve.centre().y())
                + "\" r=\"" + radius + "\"" + pen + "/>";
        }
        return "<path" + opening + " d=\"M" + point(end(curve, curve.from())) + "A" + radius + " " + radius + " 0 "
            + (curve.sweep() > 180 ? 1 : 0) + " 0 " + point(end(curve, curve.from() + curve.sweep())) + "\"" + pen + "/>";
    }

    private static Point end(Curve curve, double degrees) {
        double angle = StrictMath.toRadians(degrees);
        return new Point(curve.centre().x() + curve.radius() * StrictMath.cos(angle),
            curve.centre().y() + curve.radius() * StrictMath.sin(angle));
    }

    private String writing(Writing writing, String opening) {
        String x = number(writing.at().x());
        String y = number(sheet.height() - writing.at().y());
        String anchor = switch (writing.anchor()) {
            case LEFT -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case RIGHT -> " text-anchor=\"end\"";
        };
        String turn = writing.angle() == 0 ? "" : " transform=\"rotate(" + number(-writing.angle()) + " " + x + " " + y + ")\"";
        return "<text" + opening + " x=\"" + x + "\" y=\"" + y + "\"" + anchor + turn + " font-family=\"" + FACES + "\" font-size=\""
            + number(writing.fontSize()) + "\"" + (writing.strong() ? " font-weight=\"bold\"" : "") + " fill=\"#000000\">"
            + text(writing.text()) + "</text>";
    }

    private static String pen(double width, Stroke stroke) {
        List<Double> dashes = DrawingSheet.dashes(stroke);
        StringJoiner pattern = new StringJoiner(" ");
        dashes.forEach(dash -> pattern.add(number(dash)));
        boolean dotted = dashes.contains(0.0);
        return " stroke=\"" + colour(stroke) + "\" stroke-width=\"" + number(dotted ? Math.max(width, DrawingSheet.DOT) : width) + "\""
            + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + pattern + "\"") + (dotted ? " stroke-linecap=\"round\"" : "");
    }

    private static String colour(Stroke stroke) {
        return String.format(Locale.ROOT, "#%06x", DrawingSheet.colour(stroke));
    }

    private String line(List<Point> points, boolean closed) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < points.size(); i++) {
            line.append(i == 0 ? 'M' : 'L').append(point(points.get(i)));
        }
        return line.append(closed ? "Z" : "").toString();
    }

    private String point(Point point) {
        return number(point.x()) + " " + number(sheet.height() - point.y());
    }

    /** To a thousandth of a millimetre. */
    static String number(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String text(String raw) {
        return raw.replaceAll("[\\p{Cntrl}&&[^\\n\\t]]", "").replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
            .replace("\"", "&quot;");
    }
}
