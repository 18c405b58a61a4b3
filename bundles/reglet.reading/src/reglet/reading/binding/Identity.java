package reglet.reading.binding;

import java.nio.ByteBuffer;
import java.util.HexFormat;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * The identity of a package (ISO 32000-1, 14.4), made from all its bytes: a change anywhere in a sheet that is bound in changes it.
 * Two check sums and the length, since the standard asks for no secrecy, and a cryptographic digest takes some times as long as
 * everything else that is done to a large package.
 */
final class Identity {
    static final int BYTES = 16;
    /** Characters of {@link #text}. */
    static final int LENGTH = 2 * BYTES;

    private final CRC32 one = new CRC32();
    private final CRC32C other = new CRC32C();
    private long length;

    void add(byte[] bytes, int from, int count) {
        one.update(bytes, from, count);
        other.update(bytes, from, count);
        length += count;
    }

    /** The identity of what was added so far, in hexadecimal digits. */
    String text() {
        return HexFormat.of().formatHex(ByteBuffer.allocate(BYTES).putInt((int) one.getValue()).putInt((int) other.getValue())
            .putLong(length).array());
    }
}
