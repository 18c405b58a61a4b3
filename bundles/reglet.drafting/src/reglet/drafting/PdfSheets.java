package reglet.drafting;

import java.awt.Color;
import java.awt.Graphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.IntFunction;

import com.lowagie.text.Chunk;
import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.Image;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;

import reglet.drafting.PdfFonts.Face;
import reglet.model.Drawing;

/**
 * Sheets of paper that are filled from top to bottom: paragraphs with hanging marks, tables, rules; headings stay with what
 * follows them and no line of a paragraph stands alone. Every sheet has a running head and foot.
 */
final class PdfSheets {
    static final Rectangle UPRIGHT = new Rectangle(612, 792);
    static final Rectangle UPRIGHT_A4 = new Rectangle(595, 842);
    static final Rectangle WIDE = new Rectangle(792, 612);
    static final Rectangle WIDE_A4 = new Rectangle(842, 595);
    static final Color INK = Color.BLACK;
    static final Color SOFT = new Color(0x55, 0x55, 0x55);

    private static final float SIDE = 72;
    private static final float NARROW_SIDE = 48;
    private static final float HEAD = 84;
    private static final float FOOT = 66;
    private static final float SMALL = 8.5f;
    /** Paragraphs up to this many lines aren't divided. */
    private static final int WHOLE = 3;
    private static final float HAIR = 0.01f;
    private static final float BAR = 1.5f;
    private static final float BAR_AT = 12;

    /**
     * What stands at the edges of every sheet.
     *
     * @param foot   right side of the foot, by sheet counted from 1
     * @param filled puts the numbers of a sheet into a text
     */
    record Edges(String headLeft, String headRight, String footLeft, IntFunction<String> foot, BiFunction<String, Integer, String> filled) {

        Edges(String headLeft, String headRight, String footLeft, IntFunction<String> foot) {
            this(headLeft, headRight, footLeft, foot, (text, sheet) -> text.replace(Letterhead.PAGE, String.valueOf(sheet)));
        }
    }

    /**
     * A paragraph.
     *
     * @param mark     what hangs at its left; null for nothing
     * @param markAt   distance of the mark from the left edge, in points
     * @param left     distance of the text from the left edge
     * @param leading  distance of lines
     * @param before   space before it, left out at the top of a sheet
     * @param keep     whether it stays on a sheet with the next
     * @param name     name that links lead to; "" for none
     * @param bookmark title of its bookmark; "" for none
     * @param depth    depth of the bookmark, 0 for the outermost
     * @param bar      whether a bar stands beside it in the margin
     */
    record Block(Phrase text, Chunk mark, float markAt, float left, float leading, float before, boolean keep, String name, String bookmark,
            int depth, boolean bar) {

        static Block of(Phrase text, float left, float leading, float before) {
            return new Block(text, null, 0, left, leading, before, false, "", "", 0, false);
        }

        Block hanging(Chunk hung, float at) {
            return new Block(text, hung, at, left, leading, before, keep, name, bookmark, depth, bar);
        }

        Block keeping(boolean kept) {
            return new Block(text, mark, markAt, left, leading, before, kept, name, bookmark, depth, bar);
        }

        Block named(String destination) {
            return new Block(text, mark, markAt, left, leading, before, keep, destination, bookmark, depth, bar);
        }

        Block bookmarked(String title, int at) {
            return new Block(text, mark, markAt, left, leading, before, keep, name, title, at, bar);
        }

        Block barred(boolean barred) {
            return new Block(text, mark, markAt, left, leading, before, keep, name, bookmark, depth, barred);
        }
    }

    final PdfFonts fonts;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final Document document;
    private final PdfWriter writer;
    private final PdfContentByte canvas;
    private final Edges edges;
    private final float side;
    private final PdfOutline[] outlines = new PdfOutline[4];
    private float y;
    private int sheet;

    PdfSheets(String title, Rectangle size, Edges edges) {
        this(title, size, edges, edges.headLeft(), new PdfFonts());
    }

    /**
     * @param subject what the file says that it is about
     */
    PdfSheets(String title, Rectangle size, Edges edges, String subject, PdfFonts fonts) {
        this.edges = edges;
        this.fonts = fonts;
        this.side = size.getWidth() > size.getHeight() ? NARROW_SIDE : SIDE;
        document = new Document(size);
        writer = PdfWriter.getInstance(document, out);
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle | PdfWriter.PageModeUseOutlines);
        document.addTitle(title);
        document.addSubject(subject);
        document.open();
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString("en-US"));
        canvas = writer.getDirectContent();
        outlines[0] = canvas.getRootOutline();
        start();
    }

    /** The sheet that is being filled, counted from 1. */
    int sheet() {
        return sheet;
    }

    float width() {
        return document.getPageSize().getWidth() - 2 * side;
    }

    float height() {
        return document.getPageSize().getHeight();
    }

    /** Starts another sheet unless so much is free on this one. */
    void room(float points) {
        if (!atTop() && y - points < FOOT) {
            next();
        }
    }

    /** Ends the sheet and starts another. */
    void next() {
        document.newPage();
        start();
    }

    void space(float points) {
        y -= points;
    }

    /** A line over the whole width. */
    void rule(float thickness) {
        line(y, thickness);
    }

    void flow(List<Block> blocks) {
        for (int i = 0; i < blocks.size(); i++) {
            if (!atTop() && y - least(blocks, i) < FOOT) {
                next();
            }
            place(blocks.get(i));
        }
    }

    /** A table; rows stay whole where they fit on a sheet, and head rows come again on each. */
    void table(PdfPTable table) {
        ColumnText column = new ColumnText(canvas);
        column.addElement(table);
        while (true) {
            column.setSimpleColumn(side, FOOT, side + width(), y);
            if (!ColumnText.hasMoreText(column.go())) {
                y = column.getYLine();
                return;
            }
            next();
        }
    }

    /** A picture of vectors, drawn in points with y downwards; it stays whole. */
    void picture(float width, float height, Consumer<Graphics2D> painter) {
        room(height);
        PdfTemplate template = canvas.createTemplate(width, height);
        Graphics2D graphics = template.createGraphicsShapes(width, height);
        painter.accept(graphics);
        graphics.dispose();
        canvas.addTemplate(template, side + (width() - width) / 2, y - height);
        y -= height;
    }

    /** An opaque PNG picture at the left edge, as large as it fits into the width and a height, but never larger than 150 dpi. */
    void image(byte[] png, float height) {
        try {
            Image image = Image.getInstance(png);
            image.scalePercent(72 * 100 / 150f);
            if (image.getScaledWidth() > width() || image.getScaledHeight() > height) {
                image.scaleToFit(width(), height);
            }
            room(image.getScaledHeight());
            y -= image.getScaledHeight();
            image.setAbsolutePosition(side, y);
            canvas.addImage(image);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A drawing to scale, as large as it fits into the width and a height; it stays whole. */
    void drawing(Drawing drawing, float height) {
        room(height);
        DrawingPdf.draw(canvas, fonts, drawing, side, y - height, width(), height);
        y -= height;
    }

    /** The finished file: the same bytes for the same content. */
    byte[] bytes() {
        document.close();
        return SameBytes.pdf(out.toByteArray());
    }

    private boolean atTop() {
        return y >= height() - HEAD - HAIR;
    }

    /** Height that has to be free for a block to start on this sheet. */
    private float least(List<Block> blocks, int at) {
        Block block = blocks.get(at);
        int lines = lines(block);
        if (block.keep() && at + 1 < blocks.size()) {
            return block.before() + lines * block.leading() + least(blocks, at + 1);
        }
        return block.before() + (lines <= WHOLE ? lines : 2) * block.leading();
    }

    private void place(Block block) {
        if (!atTop()) {
            y -= block.before();
        }
        begin(block);
        int left = lines(block);
        ColumnText column = column(block);
        while (true) {
            int fit = Math.max(1, (int) ((y - FOOT + HAIR) / block.leading()));
            // The last line of a paragraph doesn't stand alone on the next sheet.
            int now = fit >= left ? left : left - fit == 1 && fit > 2 ? fit - 1 : fit;
            column.setSimpleColumn(side + block.left(), y - now * block.leading() - HAIR, side + width(), y);
            boolean more = ColumnText.hasMoreText(column.go());
            if (block.bar()) {
                bar(y - 2, now * block.leading());
            }
            y -= now * block.leading();
            left = Math.max(1, left - now);
            if (!more) {
                return;
            }
            next();
        }
    }

    private void begin(Block block) {
        if (block.mark() != null) {
            ColumnText.showTextAligned(canvas, Element.ALIGN_LEFT, new Phrase(block.mark()), side + block.markAt(), y - block.leading(), 0);
        }
        if (!block.name().isEmpty()) {
            canvas.localDestination(block.name(), new PdfDestination(PdfDestination.XYZ, 0, y, 0));
        }
        if (!block.bookmark().isEmpty()) {
            outlines[block.depth() + 1] =
                new PdfOutline(outlines[block.depth()], new PdfDestination(PdfDestination.XYZ, 0, y, 0), block.bookmark());
        }
    }

    private int lines(Block block) {
        ColumnText trial = column(block);
        trial.setSimpleColumn(side + block.left(), -1_000_000, side + width(), 0);
        trial.go(true);
        return trial.getLinesWritten();
    }

    private ColumnText column(Block block) {
        ColumnText column = new ColumnText(canvas);
        column.addText(block.text());
        column.setLeading(block.leading());
        return column;
    }

    private void start() {
        sheet++;
        writer.setPageEmpty(false);
        float top = height() - 48;
        edge(paged(edges.headLeft()), paged(edges.headRight()), top);
        line(top - 6, 0.5f);
        line(48 + 10, 0.5f);
        edge(paged(edges.footLeft()), paged(edges.foot().apply(sheet)), 48);
        y = height() - HEAD;
    }

    private String paged(String text) {
        return edges.filled().apply(text, sheet);
    }

    private void edge(String left, String right, float at) {
        ColumnText.showTextAligned(canvas, Element.ALIGN_RIGHT, new Phrase(fonts.run(right, Face.SANS, SMALL, SOFT)), side + width(), at,
            0);
        float room = width() - fonts.width(right, Face.SANS, SMALL) - 12;
        ColumnText.showTextAligned(canvas, Element.ALIGN_LEFT, new Phrase(fonts.run(fitting(left, room), Face.SANS, SMALL, SOFT)), side,
            at, 0);
    }

    private String fitting(String text, float room) {
        String fitting = text;
        while (fitting.length() > 1 && fonts.width(fitting, Face.SANS, SMALL) > room) {
            fitting = fitting.substring(0, fitting.length() - 2).stripTrailing() + "…";
        }
        return fitting;
    }

    /** An upright bar in the left margin, from a height downwards. */
    private void bar(float from, float length) {
        canvas.saveState();
        canvas.setLineWidth(BAR);
        canvas.setColorStroke(INK);
        canvas.moveTo(side - BAR_AT, from);
        canvas.lineTo(side - BAR_AT, from - length);
        canvas.stroke();
        canvas.restoreState();
    }

    private void line(float at, float thickness) {
        canvas.saveState();
        canvas.setLineWidth(thickness);
        canvas.setColorStroke(SOFT);
        canvas.moveTo(side, at);
        canvas.lineTo(side + width(), at);
        canvas.stroke();
        canvas.restoreState();
    }
}
