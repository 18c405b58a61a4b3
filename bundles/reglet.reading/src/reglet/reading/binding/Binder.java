package reglet.reading.binding;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

import reglet.reading.page.Sheets;
import reglet.reading.process.Request;

/** Binds our own pages and foreign sheets into one document; runs only in the process made for it. */
public final class Binder implements AutoCloseable {
    private static final float MARGIN = 72;
    private static final float SIZE = 11;
    private static final float LEADING = 16;

    private final PDDocument bound = new PDDocument(Sheets.STREAMS);
    /** Pages that stand for sheets which could not be bound in. */
    private final Set<PDPage> standIns = new HashSet<>();
    private final Layers layers = new Layers();
    private final Lettering lettering;
    private final Highlights highlights;
    private final Request request;
    private final Kept kept;
    /** Its pages are taken over by reference, so that it stays open until the end. */
    private final PDDocument own;

    /** Hears which file is opened next. */
    public interface Opening {
        void opens(String sheet) throws IOException;
    }

    private Binder(Request request, byte[] ownPages, Kept kept) throws IOException {
        this.request = request;
        this.kept = kept;
        this.own = Loader.loadPDF(ownPages);
        this.lettering = new Lettering(bound);
        this.highlights = new Highlights(bound, lettering);
    }

    /** Writes the package; the same request and files give the same bytes, whether sheets were looked at before or not. */
    public static void bind(Request request, byte[] ownPages, Kept kept, Opening opening, DataOutputStream out) throws IOException {
        try (Binder binder = new Binder(request, ownPages, kept)) {
            binder.parts(opening);
            binder.bookmarks();
            binder.links();
            binder.flags();
            binder.layers.putInto(binder.bound);
            binder.describe();
            opening.opens("");
            binder.lettering.end();
            PackageWriter.write(binder.bound, kept.lent(), out);
        }
    }

    private void describe() {
        bound.getDocumentInformation().setTitle(request.title());
        bound.getDocumentInformation().setProducer("Reglet");
        bound.getDocumentCatalog().setLanguage("en-US");
        bound.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
    }

    private void parts(Opening opening) throws IOException {
        List<PDPage> plain = PlainPages.of(own);
        for (Request.Part part : request.parts()) {
            if (part.own()) {
                if (part.firstPage() + part.pages() - 1 > plain.size()) {
                    throw new IOException("part \"" + part.title() + "\" wants more pages than our own file has");
                }
                plain.subList(part.firstPage() - 1, part.firstPage() - 1 + part.pages()).forEach(bound::addPage);
            } else {
                opening.opens(part.sheet());
                sheet(part).forEach(bound::addPage);
            }
        }
    }

    /** The pages of a sheet with their marks, or as many pages that say why they stand in their place. */
    private List<PDPage> sheet(Request.Part part) throws IOException {
        List<PDPage> pages;
        String before = request.without().get(part.sheet());
        try {
            if (before != null) {
                throw new Sheets.Unusable(before);
            }
            Kept.Sheet sheet = kept.take(part.sheet());
            pages = sheet.pages();
            if (pages.size() != part.of()) {
                throw new Sheets.Unusable("it has changed: it has " + count(pages.size()) + " now and had " + count(part.of()));
            }
            pages = pages.subList(part.firstPage() - 1, part.firstPage() - 1 + part.pages());
            for (int i = 0; i < pages.size(); i++) {
                int page = part.firstPage() + i;
                highlights.put(pages.get(i), part.spots().stream().filter(spot -> spot.page() == page).toList());
            }
            layers.add(sheet.document());
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            pages = instead(part, Sheets.why(broken));
            pages.forEach(standIns::add);
        }
        for (int i = 0; i < pages.size(); i++) {
            if (!part.mark().isEmpty()) {
                PageMark.put(bound, pages.get(i), lettering, part.mark().replace("{page}", Integer.toString(part.firstPage() + i))
                    .replace("{package page}", Integer.toString(bound.getNumberOfPages() + i + 1)));
            }
        }
        return pages;
    }

    private static String count(int pages) {
        return pages == 1 ? "1 page" : pages + " pages";
    }

    private List<PDPage> instead(Request.Part part, String why) throws IOException {
        List<PDPage> pages = new ArrayList<>();
        for (int i = 0; i < part.pages(); i++) {
            PDPage page = new PDPage(PDRectangle.LETTER);
            String text = lettering.printable("This page stands for page " + (part.firstPage() + i) + " of " + part.of() + " of the sheet "
                + Path.of(part.sheet()).getFileName() + " (" + part.title() + "), which could not be bound in: " + why + ".");
            try (PDPageContentStream out = new PDPageContentStream(bound, page)) {
                float y = page.getMediaBox().getHeight() - 2 * MARGIN;
                for (String line : lettering.lines(text, SIZE, page.getMediaBox().getWidth() - 2 * MARGIN)) {
                    lettering.show(out, line, SIZE, MARGIN, y);
                    y -= LEADING;
                }
            }
            pages.add(page);
        }
        return pages;
    }

    private void bookmarks() {
        PDDocumentOutline outline = new PDDocumentOutline();
        bound.getDocumentCatalog().setDocumentOutline(outline);
        PDOutlineItem above = null;
        int page = 0;
        for (Request.Part part : request.parts()) {
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(part.title());
            item.setDestination(Targets.page(bound.getPage(page)));
            if (part.level() > 1 && above != null) {
                above.addLast(item);
                above.openNode();
            } else if (part.level() > 0) {
                outline.addLast(item);
                above = item;
            }
            page += part.pages();
        }
        outline.openNode();
    }

    private void links() throws IOException {
        for (Request.Link link : request.links()) {
            PDPage page = bound.getPage(boundPage(link.page()));
            PDRectangle shown = page.getCropBox();
            PDAnnotationLink annotation = new PDAnnotationLink();
            annotation.setRectangle(new PDRectangle(shown.getLowerLeftX() + (float) link.box().x(),
                shown.getUpperRightY() - (float) (link.box().y() + link.box().height()), (float) link.box().width(),
                (float) link.box().height()));
            PDBorderStyleDictionary none = new PDBorderStyleDictionary();
            none.setWidth(0);
            annotation.setBorderStyle(none);
            annotation.setAction(link.file().isEmpty() ? Targets.here(bound.getPage(link.target() - 1), link.at())
                : Targets.beside(link.file(), link.target()));
            List<PDAnnotation> annotations = new ArrayList<>(page.getAnnotations());
            annotations.add(annotation);
            page.setAnnotations(annotations);
        }
    }

    private void flags() throws IOException {
        for (Request.Flag flag : request.flags()) {
            PDPage page = bound.getPage(flag.page() - 1);
            if (standIns.stream().noneMatch(other -> other.getCOSObject() == page.getCOSObject())) {
                FlagMark.put(bound, page, lettering, flag.box(), flag.text());
            }
        }
    }

    /** Index in the package of a page of our own file. */
    private int boundPage(int ownPage) throws IOException {
        int page = 0;
        for (Request.Part part : request.parts()) {
            if (part.own() && ownPage >= part.firstPage() && ownPage < part.firstPage() + part.pages()) {
                return page + ownPage - part.firstPage();
            }
            page += part.pages();
        }
        throw new IOException("own page " + ownPage + " is in no part of the package");
    }

    @Override
    public void close() throws IOException {
        bound.close();
        own.close();
    }
}
