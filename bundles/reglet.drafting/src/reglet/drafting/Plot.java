package reglet.drafting;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

import org.jfree.chart.ChartFactory;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

import de.erichseifert.vectorgraphics2d.Processors;
import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.util.PageSize;

import reglet.drafting.PdfFonts.Face;
import reglet.model.Chart;

/** Charts as vectors. Curves differ by their dashes, so that they are told apart in black and white. */
public final class Plot {
    private static final int WIDTH = 468;
    private static final int HEIGHT = 260;
    /** Points of a screen, of which an inch has 96, for a point of print, of which it has 72. */
    private static final double SCREEN_POINTS = 96.0 / 72;
    private static final BasicStroke[] DASHES = {new BasicStroke(1.4f), dashed(7, 3), dashed(1.5f, 2), dashed(9, 2, 2, 2)};

    static {
        // the workaround is for screens; it turns the text of the upright axis into outlines
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private Plot() {
    }

    private static BasicStroke dashed(float... lengths) {
        return new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, lengths, 0);
    }

    /** Width and height in points that a chart is drawn for. */
    static int width() {
        return WIDTH;
    }

    static int height() {
        return HEIGHT;
    }

    /** The chart as a picture of its own. */
    public static String svg(Chart chart) {
        VectorGraphics2D graphics = new VectorGraphics2D();
        paint(chart, graphics);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            Processors.get("svg").getDocument(graphics.getCommands(), new PageSize(WIDTH, HEIGHT)).writeTo(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    /**
     * The chart in dots, for a screen.
     *
     * @param scale dots for a point of the screen; a point of text is 4/3 of these
     * @return red, green and blue of each dot, as 0xRRGGBB, row after row
     */
    public static int[] dots(Chart chart, int width, int height, double scale) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        double points = scale * SCREEN_POINTS;
        graphics.scale(points, points);
        paint(chart, graphics, width / points, height / points);
        graphics.dispose();
        return image.getRGB(0, 0, width, height, null, 0, width);
    }

    /** Draws a chart into the rectangle from 0, 0 to {@link #width}, {@link #height}, y downwards. */
    static void paint(Chart chart, Graphics2D graphics) {
        paint(chart, graphics, WIDTH, HEIGHT);
    }

    private static void paint(Chart chart, Graphics2D graphics, double width, double height) {
        XYSeriesCollection curves = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        // else the dashes start anew at every point
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new Line2D.Double(0, 0, 32, 0));
        JFreeChart drawn = ChartFactory.createXYLineChart(chart.title(), title(chart.across()), title(chart.up()), curves);
        XYPlot plot = drawn.getXYPlot();
        plot.setRenderer(renderer);
        for (Chart.Curve curve : chart.curves()) {
            int number = curves.getSeriesCount();
            curves.addSeries(series(chart, curve));
            renderer.setSeriesStroke(number, DASHES[number % DASHES.length]);
            renderer.setSeriesPaint(number, Color.BLACK);
            notes(plot, chart, curve);
        }
        style(drawn, plot);
        drawn.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }

    private static XYSeries series(Chart chart, Chart.Curve curve) {
        XYSeries series = new XYSeries(curve.label());
        curve.points().forEach(point -> series.add(chart.across().unit().fromSi(point.x()), chart.up().unit().fromSi(point.y())));
        return series;
    }

    /** A note where what governs changes. */
    private static void notes(XYPlot plot, Chart chart, Chart.Curve curve) {
        String before = "";
        for (Chart.Point point : curve.points()) {
            if (!point.note().equals(before)) {
                XYTextAnnotation note = new XYTextAnnotation(" " + point.note(), chart.across().unit().fromSi(point.x()),
                    chart.up().unit().fromSi(point.y()));
                note.setFont(font(Face.SANS, 7.5f));
                note.setTextAnchor(TextAnchor.BOTTOM_LEFT);
                plot.addAnnotation(note);
                before = point.note();
            }
        }
    }

    private static String title(Chart.Axis axis) {
        return axis.unit().symbol().isEmpty() ? axis.label() : axis.label() + ", " + axis.unit().symbol();
    }

    private static void style(JFreeChart drawn, XYPlot plot) {
        drawn.getTitle().setFont(font(Face.SANS_BOLD, 9.5f));
        drawn.getTitle().setPaint(Color.BLACK);
        drawn.setBackgroundPaint(Color.WHITE);
        drawn.getLegend().setItemFont(font(Face.SANS, 8.5f));
        drawn.getLegend().setItemPaint(Color.BLACK);
        drawn.getLegend().setFrame(BlockBorder.NONE);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setOutlinePaint(Color.BLACK);
        plot.setDomainGridlinePaint(Color.LIGHT_GRAY);
        plot.setRangeGridlinePaint(Color.LIGHT_GRAY);
        axis(plot.getDomainAxis());
        axis(plot.getRangeAxis());
        ((NumberAxis) plot.getRangeAxis()).setAutoRangeIncludesZero(true);
        plot.getRangeAxis().setUpperMargin(0.12);
        plot.getDomainAxis().setLowerMargin(0);
        plot.getDomainAxis().setUpperMargin(0);
    }

    private static void axis(ValueAxis axis) {
        axis.setLabelFont(font(Face.SANS, 8.5f));
        axis.setTickLabelFont(font(Face.SANS, 8));
        axis.setLabelPaint(Color.BLACK);
        axis.setTickLabelPaint(Color.BLACK);
        axis.setAxisLinePaint(Color.BLACK);
        axis.setTickMarkPaint(Color.BLACK);
    }

    /** The same font as in the text around, not one of the machine's. */
    private static Font font(Face face, float size) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(PdfFonts.file(face))).deriveFont(size);
        } catch (FontFormatException broken) {
            throw new IllegalStateException("the font file is broken", broken);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
