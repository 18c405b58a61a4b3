package reglet.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadMemoryMappedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/** Opens foreign sheets; runs only in the process made for it. */
final class Sheets {
    private static final long LARGEST = 200L << 20;
    private static final int MOST_PAGES = 2_000;

    private Sheets() {
    }

    /** A sheet, mapped into memory and not read into it. The caller closes it. */
    static PDDocument open(Path sheet) throws IOException {
        return Loader.loadPDF(new RandomAccessReadMemoryMappedFile(sheet), IOUtils.createTempFileOnlyStreamCache());
    }

    static Measure measure(Path sheet) {
        try {
            if (!Files.isRegularFile(sheet)) {
                return new Measure(0, "there is no such file");
            }
            if (Files.size(sheet) > LARGEST) {
                return new Measure(0, "it is larger than " + (LARGEST >> 20) + " MB");
            }
            try (PDDocument document = open(sheet)) {
                return measure(document);
            }
        } catch (InvalidPasswordException locked) {
            return new Measure(0, "it is encrypted and opens only with a password");
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            return new Measure(0, "it is no PDF that can be read");
        }
    }

    private static Measure measure(PDDocument document) {
        if (document.isEncrypted() && !document.getCurrentAccessPermission().canAssembleDocument()) {
            return new Measure(0, "its maker forbids binding it into another document");
        }
        int pages = document.getNumberOfPages();
        if (pages == 0) {
            return new Measure(0, "it has no pages");
        }
        if (pages > MOST_PAGES) {
            return new Measure(0, "it has more than " + MOST_PAGES + " pages");
        }
        for (int i = 0; i < pages; i++) {
            // a broken page tree shows only when each page is looked up
            if (document.getPage(i).getCropBox().getWidth() <= 0) {
                return new Measure(0, "page " + (i + 1) + " has no size");
            }
        }
        return new Measure(pages, "");
    }
}
