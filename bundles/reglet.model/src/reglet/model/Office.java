package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an office puts around the sections that it writes.
 *
 * @param folder     where it was read from, for messages; "" for no office
 * @param name       the office's name; "" for none
 * @param address    lines of its address
 * @param letterhead a picture for the first page
 * @param fonts      fonts instead of the usual ones; every one may be embedded by its own word
 * @param templates  text of header, footer and cover, by file name
 */
public record Office(String folder, String name, List<String> address, Optional<Picture> letterhead, Paper paper, Map<Face, Font> fonts,
        Map<String, String> templates) {
    public static final String HEADER = "header.ftl";
    public static final String FOOTER = "footer.ftl";
    public static final String COVER = "cover.md.ftl";
    /** All templates that there are. */
    public static final List<String> TEMPLATES = List.of(HEADER, FOOTER, COVER);

    public Office {
        address = List.copyOf(address);
        fonts = Ordered.copy(fonts);
        templates = Ordered.copy(templates);
    }

    /** Sizes of paper, by ANSI/ASME Y14.1 and ISO 216. */
    public enum Paper { LETTER, A4 }

    public enum Face { REGULAR, BOLD, ITALIC }

    /** A picture in the PNG format; {@code file} is where it stands in the office's folder. */
    public record Picture(String file, byte[] bytes) {
    }

    /** A font with TrueType outlines; {@code family} is the name that other programs know it by. */
    public record Font(String file, String family, byte[] bytes) {
    }

    /** No office: letter paper, the usual fonts, nothing added. */
    public static Office none() {
        return new Office("", "", List.of(), Optional.empty(), Paper.LETTER, Map.of(), Map.of());
    }

    /** Where a file of this office stands, for messages. */
    public Place place(String file) {
        return place(file, 0, 0);
    }

    public Place place(String file, int line, int column) {
        return new Place(folder.isEmpty() ? file : folder + "/" + file, line, column);
    }
}
