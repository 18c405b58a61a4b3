package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import reglet.drafting.PdfFonts.Face;

/** Measures and breaks text by the faces that the PDF embeds; drawings in other formats ask for faces of the same widths. */
final class DrawingText {
    /** Distance of lines in heights of capitals. */
    static final double LEADING = 1.8;
    private static final char STAYS = '\u00A0';

    private final PdfFonts fonts = new PdfFonts();

    /** Width in millimetres of text with capitals of a height in millimetres. */
    double width(String text, double height, boolean strong) {
        return fonts.width(text, strong ? Face.SANS_BOLD : Face.SANS, (float) (height / DrawingSheet.CAPITALS));
    }

    /** Text broken into lines of a width; numbers stay with their units, words longer than a line are broken. */
    List<String> lines(String text, double height, boolean strong, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().replaceAll("(?<=\\d)\\s(?=[A-Za-z°])", String.valueOf(STAYS)).split("[\\s&&[^\\u00A0]]+")) {
            String rest = word.replace(STAYS, ' ');
            if (!line.isEmpty() && width(line + " " + rest, height, strong) <= width) {
                line += " " + rest;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            while (rest.length() > 1 && width(rest, height, strong) > width) {
                int fits = 1;
                while (fits < rest.length() - 1 && width(rest.substring(0, fits + 1), height, strong) <= width) {
                    fits++;
                }
                lines.add(rest.substring(0, fits));
                rest = rest.substring(fits);
            }
            line = rest;
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }
}
