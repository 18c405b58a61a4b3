package reglet.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

import reglet.reading.Frame.Found;

/**
 * Sheets of a package in the process made for it: their pages are taken over by reference, so that a sheet stays open until the
 * package is written. A sheet that was looked at before its place in the package was known is not opened again.
 */
final class Kept implements AutoCloseable {
    private final Lent lent = new Lent();
    private final List<PDDocument> documents = new ArrayList<>();
    private final Map<String, Sheet> looked = new HashMap<>();

    /** A document, and its pages made plain. */
    record Sheet(PDDocument document, List<PDPage> pages) {
    }

    Lent lent() {
        return lent;
    }

    /** Looks at a sheet as {@link Sheets#measure} does, and keeps it. */
    Found look(String sheet) {
        try {
            Sheet opened = open(sheet);
            looked.put(sheet, opened);
            return new Found(opened.pages.size(), "");
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            return new Found(0, Sheets.why(broken));
        }
    }

    /** A sheet whose pages may be written upon, so that it is given once and opened anew when it is bound in again. */
    Sheet take(String sheet) throws IOException {
        Sheet before = looked.remove(sheet);
        return before == null ? open(sheet) : before;
    }

    private Sheet open(String sheet) throws IOException {
        PDDocument document = Sheets.open(Path.of(sheet), lent);
        documents.add(document);
        return new Sheet(document, PlainPages.of(document));
    }

    @Override
    public void close() throws IOException {
        for (PDDocument document : documents) {
            document.close();
        }
    }
}
