package reglet.reading;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** Binds our own pages and foreign sheets into one document; runs only in the process made for it. */
final class Binder implements AutoCloseable {
    private final PDDocument bound = new PDDocument(IOUtils.createTempFileOnlyStreamCache());
    /** Pages are taken over by reference, so their documents stay open until the end. */
    private final List<PDDocument> sources = new ArrayList<>();

    private Binder() {
    }

    static byte[] bind(Request request, byte[] ownPages) throws IOException {
        try (Binder binder = new Binder()) {
            PDDocument own = Loader.loadPDF(ownPages);
            binder.sources.add(own);
            binder.parts(request, own);
            binder.bookmarks(request.parts());
            binder.links(request);
            binder.bound.getDocumentInformation().setTitle(request.title());
            // an identity made from the content, where the library would take the time
            CRC32 content = new CRC32();
            content.update(ownPages);
            binder.bound.setDocumentId(content.getValue());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            binder.bound.save(bytes);
            return bytes.toByteArray();
        }
    }

    private void parts(Request request, PDDocument own) throws IOException {
        for (Request.Part part : request.parts()) {
            if (part.sheet().isEmpty()) {
                for (int i = 0; i < part.pages(); i++) {
                    bound.importPage(own.getPage(part.firstPage() - 1 + i));
                }
            } else {
                sheet(part);
            }
        }
    }

    private void sheet(Request.Part part) throws IOException {
        PDDocument sheet = Sheets.open(Path.of(part.sheet()));
        sources.add(sheet);
        if (sheet.getNumberOfPages() != part.pages()) {
            throw new IOException(part.sheet() + " has " + sheet.getNumberOfPages() + " pages now and had " + part.pages() + " before");
        }
        sheet.setAllSecurityToBeRemoved(true);
        Flattening.flatten(sheet);
        for (int i = 0; i < part.pages(); i++) {
            PDPage page = bound.importPage(sheet.getPage(i));
            if (!part.mark().isEmpty()) {
                PageMark.put(bound, page, part.mark().replace("%d", Integer.toString(i + 1)));
            }
        }
    }

    private void bookmarks(List<Request.Part> parts) {
        PDDocumentOutline outline = new PDDocumentOutline();
        bound.getDocumentCatalog().setDocumentOutline(outline);
        PDOutlineItem above = null;
        int page = 0;
        for (Request.Part part : parts) {
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(part.title());
            item.setDestination(destination(page));
            if (part.level() > 1 && above != null) {
                above.addLast(item);
            } else {
                outline.addLast(item);
                above = item;
            }
            page += part.pages();
        }
        outline.openNode();
    }

    private PDPageFitDestination destination(int page) {
        PDPageFitDestination destination = new PDPageFitDestination();
        destination.setPage(bound.getPage(page));
        return destination;
    }

    private void links(Request request) throws IOException {
        for (Request.Link link : request.links()) {
            PDPage page = bound.getPage(boundPage(request.parts(), link.page()));
            PDRectangle shown = page.getCropBox();
            PDAnnotationLink annotation = new PDAnnotationLink();
            annotation.setRectangle(new PDRectangle(shown.getLowerLeftX() + (float) link.x(),
                shown.getUpperRightY() - (float) (link.y() + link.height()), (float) link.width(), (float) link.height()));
            PDBorderStyleDictionary none = new PDBorderStyleDictionary();
            none.setWidth(0);
            annotation.setBorderStyle(none);
            PDActionGoTo action = new PDActionGoTo();
            action.setDestination(destination(link.target() - 1));
            annotation.setAction(action);
            List<PDAnnotation> annotations = new ArrayList<>(page.getAnnotations());
            annotations.add(annotation);
            page.setAnnotations(annotations);
        }
    }

    /** Index in the package of a page of our own file. */
    private static int boundPage(List<Request.Part> parts, int ownPage) throws IOException {
        int page = 0;
        for (Request.Part part : parts) {
            if (part.sheet().isEmpty() && ownPage >= part.firstPage() && ownPage < part.firstPage() + part.pages()) {
                return page + ownPage - part.firstPage();
            }
            page += part.pages();
        }
        throw new IOException("own page " + ownPage + " is in no part of the package");
    }

    @Override
    public void close() throws IOException {
        bound.close();
        for (PDDocument source : sources) {
            source.close();
        }
    }
}
