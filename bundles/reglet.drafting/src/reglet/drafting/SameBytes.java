package reglet.drafting;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.poi.ooxml.POIXMLProperties;

/**
 * Takes out of files that this program made what differs from run to run: dates, and in a PDF the random prefixes of embedded fonts
 * and the file's identifier, which is made from the content instead. PDFs are marked to be kept for long on the same pass.
 */
final class SameBytes {
    private static final Pattern SUBSET = Pattern.compile("[A-Z]{6}\\+(.+)");

    private SameBytes() {
    }

    /** The day that stands in files of every format: outputs carry no clock. */
    static Calendar day() {
        Calendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        day.clear();
        day.set(2000, Calendar.JANUARY, 1);
        return day;
    }

    static byte[] pdf(byte[] made) {
        try (PDDocument document = Loader.loadPDF(made)) {
            PDDocumentInformation information = document.getDocumentInformation();
            information.setCreationDate(day());
            information.setModificationDate(day());
            information.setCreator("Reglet");
            information.setProducer("Reglet");
            List<COSObjectKey> keys = new ArrayList<>(document.getDocument().getXrefTable().keySet());
            keys.sort(null);
            for (COSObjectKey key : keys) {
                if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSDictionary dictionary) {
                    rename(dictionary, COSName.BASE_FONT);
                    rename(dictionary, COSName.FONT_NAME);
                }
            }
            PdfA.mark(document);
            COSDictionary trailer = document.getDocument().getTrailer();
            trailer.setItem(COSName.ID, identifier(new byte[16]));
            trailer.setItem(COSName.ID, identifier(digest(saved(document))));
            return saved(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Two of our own files as one, with the bookmarks of both. */
    static byte[] joined(byte[] first, byte[] second) {
        try (PDDocument document = Loader.loadPDF(first); PDDocument more = Loader.loadPDF(second)) {
            new PDFMergerUtility().appendDocument(document, more);
            return pdf(saved(document));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A zip archive without the times of its entries. */
    static byte[] archive(byte[] made) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(made)); ZipOutputStream to = new ZipOutputStream(out)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                ZipEntry copy = new ZipEntry(entry.getName());
                copy.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
                to.putNextEntry(copy);
                from.transferTo(to);
                to.closeEntry();
            }
        }
        return out.toByteArray();
    }

    static void dated(POIXMLProperties.CoreProperties core) {
        core.setCreated(Optional.of(day().getTime()));
        core.setModified(Optional.of(day().getTime()));
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private static COSArray identifier(byte[] digest) {
        COSArray identifier = new COSArray();
        COSBase half = new COSString(Arrays.copyOf(digest, 16));
        identifier.add(half);
        identifier.add(half);
        return identifier;
    }

    /** The prefix tells subsets apart; a name made from the font's own does that as well, as one document embeds a font once. */
    private static void rename(COSDictionary dictionary, COSName key) {
        String name = dictionary.getNameAsString(key);
        var matcher = name == null ? null : SUBSET.matcher(name);
        if (matcher != null && matcher.matches()) {
            StringBuilder prefix = new StringBuilder();
            byte[] digest = digest(matcher.group(1).getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < 6; i++) {
                prefix.append((char) ('A' + (digest[i] & 0xff) % 26));
            }
            dictionary.setName(key, prefix + "+" + matcher.group(1));
        }
    }

    private static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
