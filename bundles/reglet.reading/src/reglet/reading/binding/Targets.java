package reglet.reading.binding;

import java.awt.geom.Point2D;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.filespecification.PDSimpleFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.action.PDAction;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionRemoteGoTo;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;

import reglet.model.Box;

/** Where bookmarks and links of a package lead. */
final class Targets {
    /** What of a page is seen above and beside a place that a link leads to. */
    private static final float AROUND = 72;

    private Targets() {
    }

    static PDPageDestination page(PDPage page) {
        PDPageFitDestination destination = new PDPageFitDestination();
        destination.setPage(page);
        return destination;
    }

    /** To a page, or a place on it; null for none. */
    static PDAction here(PDPage page, Box at) {
        PDActionGoTo action = new PDActionGoTo();
        action.setDestination(at == null ? page(page) : place(page, at));
        return action;
    }

    private static PDPageDestination place(PDPage page, Box at) {
        PDRectangle box = page.getCropBox();
        int turned = Math.floorMod(page.getRotation(), 360);
        float high = turned % 180 == 0 ? box.getHeight() : box.getWidth();
        Point2D.Float corner = PageMark.upright(box, turned).transformPoint(Math.max(0, (float) at.x() - AROUND),
            Math.min(high, high - (float) at.y() + AROUND));
        PDPageXYZDestination destination = new PDPageXYZDestination();
        destination.setPage(page);
        destination.setLeft(Math.round(corner.x));
        destination.setTop(Math.round(corner.y));
        destination.setZoom(-1);
        return destination;
    }

    /** To a page, counted from 1, of another file in the same folder. */
    static PDAction beside(String file, int page) {
        PDActionRemoteGoTo action = new PDActionRemoteGoTo();
        PDSimpleFileSpecification name = new PDSimpleFileSpecification();
        name.setFile(file);
        action.setFile(name);
        COSArray destination = new COSArray();
        destination.add(COSInteger.get(page - 1));
        destination.add(COSName.getPDFName("Fit"));
        action.setD(destination);
        return action;
    }
}
