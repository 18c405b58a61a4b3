package reglet.reading.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessReadMemoryMappedFile;
import org.apache.pdfbox.io.RandomAccessReadView;

/**
 * Knows where in their files the streams of opened sheets stand, so that a package can be written without reading them: whoever
 * takes the package copies them from the sheets. Runs only in the process made for it.
 */
public final class Lent {
    private Stretch read;

    /**
     * Some bytes of a file.
     *
     * @param sheet path of the file
     * @param state of the file when it was opened, as {@link #state} tells it
     * @param from  offset of the first
     */
    public record Stretch(String sheet, String state, long from, long length) {
    }

    /** Differs when a file was written again, or another has come in its place. */
    public static String state(Path sheet) throws IOException {
        BasicFileAttributes file = Files.readAttributes(sheet, BasicFileAttributes.class);
        return file.size() + " " + file.lastModifiedTime() + " " + file.fileKey();
    }

    /** A file, mapped into memory, whose streams are found again by {@link #of}. */
    RandomAccessRead map(Path sheet) throws IOException {
        return new Mapped(sheet);
    }

    /** Where the packed bytes of a stream stand; empty when they stand in no file as they are, such as what was decrypted. */
    public Optional<Stretch> of(COSStream stream) throws IOException {
        if (!stream.hasData()) {
            return Optional.empty();
        }
        read = null;
        try (InputStream in = stream.createRawInputStream()) {
            int length = in.available();
            in.readNBytes(1);
            return Optional.ofNullable(read).filter(stretch -> stretch.length == length);
        }
    }

    private final class Mapped extends RandomAccessReadMemoryMappedFile {
        private final Path sheet;
        private final String state;

        private Mapped(Path sheet) throws IOException {
            super(sheet);
            this.sheet = sheet;
            this.state = state(sheet);
        }

        @Override
        public RandomAccessReadView createView(long from, long length) {
            return new Part(super.createView(from, length), new Stretch(sheet.toString(), state, from, length));
        }
    }

    private final class Part extends RandomAccessReadView {
        private final Stretch stretch;

        private Part(RandomAccessRead part, Stretch stretch) {
            super(part, 0, stretch.length, true);
            this.stretch = stretch;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            read = stretch;
            return super.read(bytes, from, length);
        }
    }
}
