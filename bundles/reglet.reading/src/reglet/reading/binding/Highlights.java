package reglet.reading.binding;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;

import reglet.model.Box;
import reglet.reading.process.Request.Spot;

/**
 * Marks places on bound sheets as a person would with a highlighter: the paper is coloured and the letters stay as they are. An
 * outline shows where on paper without colours, and a number in the margin says which line of a table it belongs to.
 */
final class Highlights {
    private static final float PAD = 1.5f;
    private static final float SIZE = 7.5f;
    private static final float HIGH = 11;
    private static final float SIDE = 8;
    private static final float GAP = 2;
    private static final float OUTLINE = 0.7f;
    /** Of the lower of two places: what neighbours share at most, their margins included. */
    private static final float SHARED = 0.5f;

    private final PDDocument document;
    private final Lettering lettering;
    private final PDExtendedGraphicsState over = new PDExtendedGraphicsState();
    private final PDExtendedGraphicsState plain = new PDExtendedGraphicsState();
    /** The labels that stand on a page already: left, foot, right. */
    private final Map<PDPage, List<float[]>> labels = new HashMap<>();

    Highlights(PDDocument document, Lettering lettering) {
        this.document = document;
        this.lettering = lettering;
        over.setBlendMode(BlendMode.MULTIPLY);
        plain.setBlendMode(BlendMode.NORMAL);
    }

    /** Marks all places of one page at once. */
    void put(PDPage page, List<Spot> spots) throws IOException {
        PDRectangle crop = page.getCropBox();
        int turned = Math.floorMod(page.getRotation(), 360);
        boolean lies = turned % 180 != 0;
        float wide = lies ? crop.getHeight() : crop.getWidth();
        float high = lies ? crop.getWidth() : crop.getHeight();
        List<Area> areas = apart(spots.stream().map(spot -> Area.of(spot.box(), wide, high)).toList());
        for (int i = 0; i < spots.size(); i++) {
            // product data may be of an older sheet, with smaller pages
            if (areas.get(i).right > areas.get(i).left && areas.get(i).top > areas.get(i).foot) {
                draw(page, areas.get(i), spots.get(i).number());
            }
        }
    }

    private void draw(PDPage page, Area area, String number) throws IOException {
        float unit = Math.max(page.getUserUnit(), 1);
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, false, true)) {
            out.transform(PageMark.upright(page.getCropBox(), Math.floorMod(page.getRotation(), 360)));
            out.setGraphicsStateParameters(over);
            out.setNonStrokingColor(1f, 0.93f, 0.45f);
            area.outline(out);
            out.fill();
            out.setGraphicsStateParameters(plain);
            out.setStrokingColor(0.6f, 0.35f, 0f);
            out.setLineWidth(OUTLINE / unit);
            area.outline(out);
            out.stroke();
            if (!number.isEmpty()) {
                out.transform(Matrix.getScaleInstance(1 / unit, 1 / unit));
                label(out, page, number, (area.foot + area.top) / 2 * unit);
            }
        }
    }

    /** Places of neighbouring rows of a table touch and don't darken each other: each gives up half of the little they share. */
    private static List<Area> apart(List<Area> areas) {
        List<Area> apart = new ArrayList<>(areas);
        for (int i = 0; i < apart.size(); i++) {
            for (int j = 0; j < apart.size(); j++) {
                Area upper = apart.get(i);
                Area lower = apart.get(j);
                float shared = lower.top - upper.foot;
                if (upper.foot > lower.foot && upper.top > lower.top && shared > 0 && shared < SHARED * Math.min(upper.top - upper.foot,
                    lower.top - lower.foot) && upper.left < lower.right && lower.left < upper.right) {
                    apart.set(i, new Area(upper.left, upper.foot + shared / 2, upper.right, upper.top));
                    apart.set(j, new Area(lower.left, lower.foot, lower.right, lower.top - shared / 2));
                }
            }
        }
        return apart;
    }

    /** A place with its margin on the page as shown, origin at its lower left. */
    private record Area(float left, float foot, float right, float top) {
        static Area of(Box box, float wide, float high) {
            return new Area(Math.max(0, (float) box.x() - PAD), Math.max(0, high - (float) (box.y() + box.height()) - PAD),
                Math.min(wide, (float) (box.x() + box.width()) + PAD), Math.min(high, high - (float) box.y() + PAD));
        }

        void outline(PDPageContentStream out) throws IOException {
            out.addRect(left, foot, right - left, top - foot);
        }
    }

    private void label(PDPageContentStream out, PDPage page, String number, float middle) throws IOException {
        String text = lettering.printable(number);
        float wide = Math.max(HIGH, lettering.width(text, SIZE) + 5);
        float foot = middle - HIGH / 2;
        float left = SIDE;
        List<float[]> taken = labels.computeIfAbsent(page, fresh -> new ArrayList<>());
        for (float[] other : taken) {
            if (Math.abs(other[1] - foot) < HIGH + GAP && left < other[2] + GAP) {
                left = other[2] + GAP;
            }
        }
        taken.add(new float[] {left, foot, left + wide});
        out.setNonStrokingColor(1f);
        out.setStrokingColor(0f);
        out.setLineWidth(OUTLINE);
        out.addRect(left, foot, wide, HIGH);
        out.fillAndStroke();
        out.setNonStrokingColor(0f);
        lettering.show(out, text, SIZE, left + (wide - lettering.width(text, SIZE)) / 2, foot + 2.9f);
    }
}
