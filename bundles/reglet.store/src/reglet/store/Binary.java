package reglet.store;

import java.nio.charset.StandardCharsets;

/** Numbers in a file's bytes, the higher byte first. Whatever lies behind the end is nothing. */
record Binary(byte[] bytes) {

    int size() {
        return bytes.length;
    }

    boolean starts(byte[] with) {
        for (int i = 0; i < with.length; i++) {
            if (i >= bytes.length || bytes[i] != with[i]) {
                return false;
            }
        }
        return true;
    }

    int one(long at) {
        return at < 0 || at >= bytes.length ? 0 : bytes[(int) at] & 0xff;
    }

    int two(long at) {
        return one(at) << 8 | one(at + 1);
    }

    long four(long at) {
        return (long) two(at) << 16 | two(at + 2);
    }

    String latin(long at, int length) {
        return at < 0 || at + length > bytes.length ? "" : new String(bytes, (int) at, length, StandardCharsets.ISO_8859_1);
    }

    String utf16(long at, int length) {
        return at < 0 || at + length > bytes.length ? "" : new String(bytes, (int) at, length, StandardCharsets.UTF_16BE);
    }
}
