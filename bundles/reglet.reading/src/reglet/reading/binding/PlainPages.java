package reglet.reading.binding;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationPopup;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Makes a document plain pages that stand alone. What form fields and annotations show is drawn onto the page; a page keeps what
 * it looks like (content, resources, boxes, rotation) and nothing that could act or carry something along: links, scripts,
 * actions, attachments, external files, structure, private data.
 *
 * <p>Contents are taken over packed as they are, so a page that unpacks to gigabytes costs nothing here.
 */
final class PlainPages {
    /** What makes a page look as it does (ISO 32000-1, table 30). */
    private static final List<COSName> KEPT = List.of(COSName.TYPE, COSName.BLEED_BOX, COSName.TRIM_BOX, COSName.ART_BOX, COSName.GROUP,
        COSName.getPDFName("UserUnit"));
    /**
     * What hangs on pictures and forms within a page without being seen, and what names another file. Taken from streams only: in
     * other dictionaries the same words may be names that a maker gave to fonts and glyphs.
     */
    private static final List<COSName> DROPPED = List.of(COSName.AA, COSName.AF, COSName.METADATA, COSName.getPDFName("PieceInfo"),
        COSName.getPDFName("OPI"), COSName.getPDFName("LastModified"), COSName.STRUCT_PARENT, COSName.STRUCT_PARENTS,
        COSName.getPDFName("Ref"), COSName.F, COSName.F_FILTER, COSName.F_DECODE_PARMS);

    private PlainPages() {
    }

    /**
     * The pages of a document, which must stay open as long as they are used.
     *
     * @throws IOException when a page is broken
     */
    static List<PDPage> of(PDDocument document) throws IOException {
        // looking the form up makes the appearances that it lacks
        document.getDocumentCatalog().getAcroForm();
        Set<COSBase> clean = Collections.newSetFromMap(new IdentityHashMap<>());
        List<PDPage> plain = new ArrayList<>();
        for (int i = 0; i < document.getNumberOfPages(); i++) {
            PDPage page = copy(document.getPage(i));
            draw(document, page, document.getPage(i).getCOSObject().getCOSArray(COSName.ANNOTS));
            clean(page.getCOSObject(), clean);
            plain.add(page);
        }
        return plain;
    }

    private static PDPage copy(PDPage page) throws IOException {
        COSDictionary from = page.getCOSObject();
        COSDictionary to = new COSDictionary();
        KEPT.stream().filter(from::containsKey).forEach(key -> to.setItem(key, from.getItem(key)));
        COSBase contents = from.getDictionaryObject(COSName.CONTENTS);
        if (contents instanceof COSArray several) {
            // pages may share one list, and each gets additions of its own
            COSArray list = new COSArray();
            several.forEach(list::add);
            to.setItem(COSName.CONTENTS, list);
        } else if (contents instanceof COSStream) {
            to.setItem(COSName.CONTENTS, from.getItem(COSName.CONTENTS));
        }
        PDPage copy = new PDPage(to);
        // these may stand with a parent in the page tree
        copy.setMediaBox(box(page.getMediaBox()));
        copy.setCropBox(box(page.getCropBox()));
        copy.setRotation(page.getRotation());
        copy.setResources(page.getResources() == null ? new PDResources() : page.getResources());
        if (copy.getCropBox().getWidth() <= 0 || copy.getCropBox().getHeight() <= 0) {
            throw new IOException("a page has no size");
        }
        return copy;
    }

    private static PDRectangle box(PDRectangle box) {
        return new PDRectangle(box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight());
    }

    private static void draw(PDDocument document, PDPage page, COSArray annotations) throws IOException {
        List<PDAnnotation> shown = new ArrayList<>();
        for (int i = 0; annotations != null && i < annotations.size(); i++) {
            if (annotations.getObject(i) instanceof COSDictionary dictionary) {
                PDAnnotation annotation = PDAnnotation.createAnnotation(dictionary);
                if (isShown(annotation)) {
                    shown.add(annotation);
                }
            }
        }
        if (shown.isEmpty()) {
            return;
        }
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
            for (PDAnnotation annotation : shown) {
                out.saveGraphicsState();
                out.transform(fit(annotation));
                PDAppearanceStream appearance = annotation.getNormalAppearanceStream();
                appearance.getCOSObject().setItem(COSName.SUBTYPE, COSName.FORM);
                out.drawForm(appearance);
                out.restoreGraphicsState();
            }
        }
    }

    private static boolean isShown(PDAnnotation annotation) {
        PDAppearanceStream appearance = annotation.getNormalAppearanceStream();
        return appearance != null && annotation.getRectangle() != null && appearance.getBBox() != null && !annotation.isHidden()
            && !annotation.isNoView() && !(annotation instanceof PDAnnotationLink) && !(annotation instanceof PDAnnotationPopup)
            && turned(appearance).getWidth() > 0 && turned(appearance).getHeight() > 0;
    }

    /** ISO 32000-1, 12.5.5: the appearance's box, turned by its matrix, is fitted to the annotation's rectangle. */
    private static Matrix fit(PDAnnotation annotation) {
        Rectangle2D turned = turned(annotation.getNormalAppearanceStream());
        PDRectangle target = annotation.getRectangle();
        AffineTransform fit = AffineTransform.getTranslateInstance(target.getLowerLeftX(), target.getLowerLeftY());
        fit.scale(target.getWidth() / turned.getWidth(), target.getHeight() / turned.getHeight());
        fit.translate(-turned.getX(), -turned.getY());
        return new Matrix(fit);
    }

    private static Rectangle2D turned(PDAppearanceStream appearance) {
        PDRectangle box = appearance.getBBox();
        return appearance.getMatrix().createAffineTransform().createTransformedShape(
            new Rectangle2D.Double(box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight())).getBounds2D();
    }

    /** Walks everything below a page once; without recursion, since a hostile file may nest as deep as it likes. */
    private static void clean(COSBase root, Set<COSBase> done) {
        Deque<COSBase> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            COSBase next = open.pop();
            COSBase object = next instanceof COSObject reference ? reference.getObject() : next;
            if (object instanceof COSArray array && done.add(array)) {
                array.forEach(item -> push(open, item));
            } else if (object instanceof COSDictionary dictionary && done.add(dictionary)) {
                if (dictionary instanceof COSStream) {
                    DROPPED.forEach(dictionary::removeItem);
                }
                dictionary.getValues().forEach(value -> push(open, value));
            }
        }
    }

    private static void push(Deque<COSBase> open, COSBase item) {
        if (item instanceof COSObject || item instanceof COSArray || item instanceof COSDictionary) {
            open.push(item);
        }
    }
}
