package reglet.store;

import java.util.Optional;

/**
 * What a font file says of itself (ISO/IEC 14496-22, Open Font Format): its family, and whether papers may carry it. The bits of
 * fsType in the table OS/2 are known from memory of that standard.
 */
final class FontFile {
    private static final int RESTRICTED = 0x0002;
    private static final int NO_SUBSET = 0x0100;
    private static final int PICTURES_ONLY = 0x0200;
    private static final int FAMILY = 1;
    private static final int WINDOWS = 3;
    private static final int MOST_TABLES = 100;

    private final Binary file;

    private FontFile(Binary file) {
        this.file = file;
    }

    /**
     * The font's family; empty, with a problem, when the font can't be used.
     *
     * @param name where the font is named
     */
    static Optional<String> read(byte[] bytes, Cursor name) {
        FontFile font = new FontFile(new Binary(bytes));
        String quoted = "\"" + name.text() + "\"";
        long rights = font.table("OS/2");
        if (font.table("glyf") < 0 || rights < 0 || font.table("name") < 0) {
            name.wrong(quoted + " is no font with TrueType outlines", "expected a .ttf file, or an .otf file of that kind");
            return Optional.empty();
        }
        int type = font.file.two(rights + 8);
        if ((type & 0xf) == RESTRICTED) {
            name.wrong(quoted + " forbids to be embedded (fsType " + type + ")", "expected a font that its maker lets papers carry");
            return Optional.empty();
        }
        if ((type & (NO_SUBSET | PICTURES_ONLY)) != 0) {
            name.wrong(quoted + " forbids to embed a part of its outlines (fsType " + type + ")",
                "expected a font that its maker lets papers carry in part");
            return Optional.empty();
        }
        String family = font.family();
        if (family.isBlank()) {
            name.wrong(quoted + " has no family name", "expected a font that other programs can name");
            return Optional.empty();
        }
        return Optional.of(family);
    }

    /** Where a table starts; -1 when there is none. */
    private long table(String tag) {
        int tables = Math.min(file.two(4), MOST_TABLES);
        for (int i = 0; i < tables; i++) {
            long entry = 12 + 16L * i;
            if (file.latin(entry, 4).equals(tag) && file.four(entry + 8) < file.size()) {
                return file.four(entry + 8);
            }
        }
        return -1;
    }

    private String family() {
        long names = table("name");
        int count = file.two(names + 2);
        long texts = names + file.two(names + 4);
        for (int i = 0; i < count; i++) {
            long entry = names + 6 + 12L * i;
            if (file.two(entry) == WINDOWS && file.two(entry + 6) == FAMILY) {
                return file.utf16(texts + file.two(entry + 10), file.two(entry + 8));
            }
        }
        return "";
    }
}
