package reglet.reading.process;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A piece of what the process answers: one byte for its kind, four for its length (highest first), then so many bytes. An answer
 * is complete when {@link Kind#END} has come; anything else is an answer broken off.
 */
public record Frame(Kind kind, byte[] bytes) {
    public static final int LONGEST = 1 << 16;

    public enum Kind {
        /** The path of the file that is opened next, so that whoever waits can name it when the process stops. */
        OPENS,
        /** JSON: {@link Found}. */
        MEASURE,
        /** JSON: a part of a {@code SheetPage}; parts of one page follow each other. */
        PAGE,
        /** Why a sheet can't be read, in words; comes instead of pages. */
        UNREADABLE,
        /** JSON: list of {@code Finder.Sighting}, all places found on one sheet. */
        FOUND,
        /** Some bytes of the package, or of a picture. */
        PACKAGE,
        /** JSON: {@code Lent.Stretch}, bytes of the package that are copied from a sheet. */
        COPY,
        /** The package's {@code Identity} stands here, made from all bytes before it. */
        IDENTITY,
        END
    }

    /** What the process tells of one sheet. */
    public record Found(int pages, String problem) {
    }

    public static Frame of(Kind kind, String text) {
        return new Frame(kind, text.getBytes(StandardCharsets.UTF_8));
    }

    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** Writes the frame at once. */
    public void write(DataOutputStream out) throws IOException {
        put(out);
        out.flush();
    }

    /** Writes the frame as soon as others fill the buffer with it. */
    public void put(DataOutputStream out) throws IOException {
        out.writeByte(kind.ordinal());
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    /** The next frame; empty when the stream ends or holds no frame. */
    static Optional<Frame> read(DataInputStream in) throws IOException {
        int kind = in.read();
        if (kind < 0 || kind >= Kind.values().length) {
            return Optional.empty();
        }
        int length = in.readInt();
        if (length < 0 || length > LONGEST) {
            return Optional.empty();
        }
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return Optional.of(new Frame(Kind.values()[kind], bytes));
    }

    /** A stream whose bytes become frames when it is flushed, so that a package never lies in the process's memory as a whole. */
    public static OutputStream packageTo(DataOutputStream out) {
        // the PDF library writes a few bytes at a time
        return new BufferedOutputStream(new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                write(new byte[] {(byte) one}, 0, 1);
            }

            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                for (int at = from; at < from + length; at += LONGEST) {
                    int part = Math.min(LONGEST, from + length - at);
                    out.writeByte(Kind.PACKAGE.ordinal());
                    out.writeInt(part);
                    out.write(bytes, at, part);
                }
            }
        }, LONGEST);
    }
}
