package reglet.reading.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.io.RandomAccessStreamCache.StreamCacheCreateFunction;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;

/** Opens foreign sheets; runs only in the process made for it. */
public final class Sheets {
    /** Decrypted and added streams up to so many bytes a document stay in memory, the rest goes to the process's own folder. */
    public static final StreamCacheCreateFunction STREAMS = MemoryUsageSetting.setupMixed(8 << 20).streamCache;

    private static final long LARGEST = 200L << 20;
    private static final int MOST_PAGES = 2_000;
    /** ISO 32000-1 wants the mark within the last line; readers look for it in so many bytes. */
    private static final int END = 1_024;

    private Sheets() {
    }

    /**
     * A sheet, mapped into memory and not read into it. The caller closes it.
     *
     * @throws Unusable with the reason when it can't be bound in
     */
    public static PDDocument open(Path sheet) throws IOException {
        return open(sheet, new Lent());
    }

    /** As {@link #open(Path)}; the places of its streams are noted. */
    public static PDDocument open(Path sheet, Lent lent) throws IOException {
        PDDocument document = openToRead(sheet, lent);
        try {
            look(document);
            return document;
        } catch (IOException | RuntimeException | Error unusable) {
            document.close();
            throw unusable;
        }
    }

    /** As {@link #open}, for a sheet whose words alone are wanted: it need not be one that can be bound in. */
    static PDDocument openToRead(Path sheet) throws IOException {
        return openToRead(sheet, new Lent());
    }

    private static PDDocument openToRead(Path sheet, Lent lent) throws IOException {
        if (!Files.isRegularFile(sheet)) {
            throw new Unusable("there is no such file");
        }
        if (Files.size(sheet) > LARGEST) {
            throw new Unusable("it is larger than " + (LARGEST >> 20) + " MB");
        }
        PDDocument document = load(sheet, lent);
        if (document.getNumberOfPages() == 0) {
            document.close();
            throw new Unusable("it has no pages");
        }
        return document;
    }

    private static PDDocument load(Path sheet, Lent lent) throws IOException {
        try {
            // the library mends what is cut off as well as it can, and doesn't say that pages may be lost
            if (!end(sheet).contains("%%EOF")) {
                throw new Unusable(start(sheet).contains("%PDF-") ? "its end is missing: it was cut off; get a whole copy"
                    : "it is no PDF");
            }
            return Loader.loadPDF(lent.map(sheet), STREAMS);
        } catch (InvalidPasswordException locked) {
            throw new Unusable("it is encrypted and opens only with a password");
        } catch (NoClassDefFoundError certificate) {
            throw new Unusable("it is encrypted for certain readers and opens only with their key");
        }
    }

    private static void look(PDDocument document) throws IOException {
        if (document.isEncrypted() && !document.getCurrentAccessPermission().canAssembleDocument()) {
            throw new Unusable("its maker forbids binding it into another document");
        }
        // without the repair that the form gets later: here only its kind counts
        PDAcroForm form = document.getDocumentCatalog().getAcroForm(null);
        if (form != null && form.xfaIsDynamic()) {
            throw new Unusable("its pages are made by a forms program when it is opened (dynamic XFA); print it to a plain PDF");
        }
        if (document.getNumberOfPages() > MOST_PAGES) {
            throw new Unusable("it has more than " + MOST_PAGES + " pages");
        }
    }

    /** Why a sheet can't be bound in, in words that follow "it could not be bound in:". */
    public static String why(Throwable broken) {
        return broken instanceof Unusable ? broken.getMessage() : "it is damaged and can't be read as a PDF";
    }

    private static String start(Path sheet) throws IOException {
        return part(sheet, 0);
    }

    private static String end(Path sheet) throws IOException {
        return part(sheet, Math.max(0, Files.size(sheet) - END));
    }

    private static String part(Path sheet, long from) throws IOException {
        try (InputStream in = Files.newInputStream(sheet)) {
            in.skipNBytes(from);
            return new String(in.readNBytes(END), StandardCharsets.ISO_8859_1);
        }
    }

    /** A sheet that can't be bound in, for a reason that people can do something about. */
    public static final class Unusable extends IOException {
        private static final long serialVersionUID = 1L;

        public Unusable(String reason) {
            super(reason);
        }
    }
}
