package reglet.reading.binding;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

import com.google.gson.Gson;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.COSStandardOutputStream;
import org.apache.pdfbox.pdfwriter.COSWriter;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

import reglet.reading.page.Lent;
import reglet.reading.process.Frame;

/**
 * Writes a package as frames. Of what stands in a sheet as it shall stand in the package only the place is told, and the package's
 * identity, which is made from all of its bytes, is left to whoever puts them together.
 */
final class PackageWriter extends COSWriter {
    private static final Gson GSON = new Gson();
    /** Less than this costs more to look up than to hand over. */
    private static final int LEAST = 4_096;
    private static final byte[] PASSED_OVER = new byte[Frame.LONGEST];

    private final Lent lent;
    private final Leaving leaving;
    private final COSString identity = new COSString(new byte[Identity.BYTES]);

    private PackageWriter(Lent lent, Leaving leaving) {
        super(leaving, CompressParameters.DEFAULT_COMPRESSION);
        this.lent = lent;
        this.leaving = leaving;
    }

    /** Writes a document whose fonts are cut down to what is used already. */
    static void write(PDDocument bound, Lent lent, DataOutputStream out) throws IOException {
        Leaving leaving = new Leaving(out);
        PackageWriter writer = new PackageWriter(lent, leaving);
        COSArray identities = new COSArray();
        identities.add(writer.identity);
        identities.add(writer.identity);
        identities.setDirect(true);
        bound.getDocument().getTrailer().setItem(COSName.ID, identities);
        bound.getDocument().setIsXRefStream(true);
        writer.write(bound);
        leaving.flush();
    }

    @Override
    public void visitFromStream(COSStream stream) throws IOException {
        Optional<Lent.Stretch> stretch = lent.of(stream).filter(found -> found.length() >= LEAST);
        if (stretch.isEmpty()) {
            super.visitFromStream(stream);
            return;
        }
        visitFromDictionary(stream);
        COSStandardOutputStream out = getStandardOutput();
        out.write(STREAM);
        out.writeCRLF();
        instead(Frame.of(Frame.Kind.COPY, GSON.toJson(stretch.get())), stretch.get().length());
        out.writeCRLF();
        out.write(ENDSTREAM);
        out.writeEOL();
    }

    @Override
    public void visitFromString(COSString string) throws IOException {
        if (string != identity) {
            super.visitFromString(string);
            return;
        }
        COSStandardOutputStream out = getStandardOutput();
        out.write('<');
        instead(new Frame(Frame.Kind.IDENTITY, new byte[0]), Identity.LENGTH);
        out.write('>');
    }

    /** Sends a frame for so many bytes, which the library has to count all the same. */
    private void instead(Frame frame, long length) throws IOException {
        leaving.instead(frame, length);
        for (long left = length; left > 0; left -= PASSED_OVER.length) {
            getStandardOutput().write(PASSED_OVER, 0, (int) Math.min(left, PASSED_OVER.length));
        }
    }

    /** Bytes on their way out as frames. */
    private static final class Leaving extends OutputStream {
        private final DataOutputStream out;
        private final OutputStream bytes;
        private long passedOver;

        private Leaving(DataOutputStream out) {
            this.out = out;
            this.bytes = Frame.packageTo(out);
        }

        private void instead(Frame frame, long length) throws IOException {
            bytes.flush();
            frame.put(out);
            passedOver = length;
        }

        @Override
        public void write(int one) throws IOException {
            bytes.write(one);
        }

        @Override
        public void write(byte[] some, int from, int length) throws IOException {
            if (passedOver > 0) {
                passedOver -= length;
            } else {
                bytes.write(some, from, length);
            }
        }

        @Override
        public void flush() throws IOException {
            bytes.flush();
            out.flush();
        }
    }
}
