package reglet.reading;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationPopup;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.util.Matrix;

/**
 * Makes a sheet plain pages: what form fields and annotations show is drawn onto the page, and everything that could act (links,
 * scripts, actions, attachments) is dropped.
 */
final class Flattening {

    private Flattening() {
    }

    static void flatten(PDDocument sheet) throws IOException {
        PDAcroForm form = sheet.getDocumentCatalog().getAcroForm();
        if (form != null) {
            if (form.xfaIsDynamic()) {
                // the static form under it is what other readers show
                form.setXFA(null);
            }
            form.flatten();
            sheet.getDocumentCatalog().setAcroForm(null);
        }
        for (PDPage page : sheet.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                draw(sheet, page, annotation);
            }
            page.setAnnotations(List.of());
            page.getCOSObject().removeItem(COSName.AA);
            page.getCOSObject().removeItem(COSName.B);
            page.getCOSObject().removeItem(COSName.getPDFName("Trans"));
            page.getCOSObject().removeItem(COSName.STRUCT_PARENTS);
        }
    }

    private static void draw(PDDocument sheet, PDPage page, PDAnnotation annotation) throws IOException {
        PDAppearanceStream shown = annotation.getNormalAppearanceStream();
        PDRectangle target = annotation.getRectangle();
        if (shown == null || target == null || annotation.isHidden() || annotation.isNoView() || shown.getBBox() == null
            || annotation instanceof PDAnnotationLink || annotation instanceof PDAnnotationPopup) {
            return;
        }
        // ISO 32000-1, 12.5.5: the appearance's box, turned by its matrix, is fitted to the annotation's rectangle
        Rectangle2D turned = shown.getMatrix().createAffineTransform().createTransformedShape(rectangle(shown.getBBox())).getBounds2D();
        if (turned.getWidth() == 0 || turned.getHeight() == 0) {
            return;
        }
        AffineTransform fit = AffineTransform.getTranslateInstance(target.getLowerLeftX(), target.getLowerLeftY());
        fit.scale(target.getWidth() / turned.getWidth(), target.getHeight() / turned.getHeight());
        fit.translate(-turned.getX(), -turned.getY());
        try (PDPageContentStream out = new PDPageContentStream(sheet, page, AppendMode.APPEND, true, true)) {
            out.transform(new Matrix(fit));
            out.drawForm(new PDFormXObject(shown.getCOSObject()));
        }
    }

    private static Rectangle2D rectangle(PDRectangle box) {
        return new Rectangle2D.Double(box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight());
    }
}
