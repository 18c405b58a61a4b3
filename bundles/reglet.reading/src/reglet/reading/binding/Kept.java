package reglet.reading.binding;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

import reglet.reading.page.Lent;
import reglet.reading.page.Sheets;
import reglet.reading.process.Frame.Found;

/**
 * Sheets of a package in the process made for it: their pages are taken over by reference, so that a sheet stays open until the
 * package is written. A sheet that was looked at before its place in the package was known is not opened again.
 */
public final class Kept implements AutoCloseable {
    private final Lent lent = new Lent();
    private final List<PDDocument> documents = new ArrayList<>();
    private final Map<String, Sheet> looked = new HashMap<>();

    /** A document, and its pages made plain. */
    record Sheet(PDDocument document, List<PDPage> pages) {
    }

    Lent lent() {
        return lent;
    }

    /** Takes the sheet apart as for a package, so that whatever will fail then is known before pages are laid out. */
    public static Found measure(Path sheet) {
        try (PDDocument document = Sheets.open(sheet)) {
            return new Found(PlainPages.of(document).size(), "");
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            return new Found(0, Sheets.why(broken));
        }
    }

    /** Looks at a sheet as {@link #measure} does, and keeps it. */
    public Found look(String sheet) {
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
