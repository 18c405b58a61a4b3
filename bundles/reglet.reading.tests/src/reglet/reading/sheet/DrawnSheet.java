package reglet.reading.sheet;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.util.Matrix;

import reglet.model.Box;

/**
 * Draws an invented data sheet from a description, and tells what a reader should find on it and where. A description is lines:
 *
 * <pre>
 * page letter|a4|landscape|turned|sideways   a new page; turned: by the page's own rotation; sideways: text that climbs the page
 * font NAME SIZE                             Helvetica, Times, Courier, Liberation (the last has all signs)
 * at X Y                                     where the next thing starts, from the upper left
 * text SIZE[b] WORDS                         a line
 * leaders WIDTH LABEL = VALUE                a label, dots, a value that ends at WIDTH
 * table ruled|lined|open|shaded ROW W,W,W    rows follow, each "| a | b | c"; "/" in a cell with blanks around it breaks the line
 * picture X Y W H                            a picture
 * rule Y X1 X2                               a level line
 * dot X Y SIZE                               a filled dot, by its middle and how wide it is
 * </pre>
 * {@code ^(x)} is raised and small. A cell or value that starts with {@code {property; value; method=…; edition=…; model=…;
 * compare=…}} is one to be found.
 */
final class DrawnSheet {
    private static final Pattern TRUTH = Pattern.compile("((?:\\{[^}]*})+)([^}]*)");
    private static final Pattern RAISED = Pattern.compile("\\^\\(([^)]*)\\)");

    private final PDDocument document = new PDDocument();
    private final List<Truth> truths = new ArrayList<>();
    private PDPage page;
    private PDPageContentStream out;
    private String kind = "letter";
    private PDFont font = new PDType1Font(FontName.HELVETICA);
    private PDFont bold = new PDType1Font(FontName.HELVETICA_BOLD);
    private float size = 9;
    private float x = 54;
    private float y = 54;

    /** What stands on a sheet. {@code more} holds method, edition, model and compare where they are stated. */
    record Truth(String property, String value, Map<String, String> more, int page, Box box) {
        String more(String name) {
            return more.getOrDefault(name, "");
        }

        static Truth parse(String words, int page, Box box) {
            String[] parts = words.split("\\s*;\\s*");
            Map<String, String> more = new TreeMap<>();
            for (int i = 2; i < parts.length; i++) {
                String[] pair = parts[i].split("=", 2);
                more.put(pair[0].strip(), pair[1].strip());
            }
            return new Truth(parts[0].strip(), parts[1].strip(), more, page, box);
        }
    }

    record Drawn(byte[] pdf, List<Truth> truths) {
    }

    private DrawnSheet() {
    }

    static Drawn draw(List<String> lines) throws IOException {
        DrawnSheet sheet = new DrawnSheet();
        try (PDDocument document = sheet.document) {
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                if (line.startsWith("table ")) {
                    List<String> rows = new ArrayList<>();
                    while (i + 1 < lines.size() && lines.get(i + 1).startsWith("|")) {
                        rows.add(lines.get(++i));
                    }
                    sheet.table(line.split(" "), rows);
                } else if (!line.isBlank() && !line.startsWith("#") && !line.startsWith("component ") && !line.startsWith("also ")) {
                    sheet.line(line);
                }
            }
            sheet.out.close();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return new Drawn(bytes.toByteArray(), sheet.truths);
        }
    }

    private void line(String line) throws IOException {
        String[] words = line.split(" ", 2);
        String rest = words.length > 1 ? words[1] : "";
        switch (words[0]) {
            case "page" -> page(rest);
            case "font" -> font(rest.split(" "));
            case "at" -> {
                x = Float.parseFloat(rest.split(" ")[0]);
                y = Float.parseFloat(rest.split(" ")[1]);
            }
            case "text" -> {
                String[] sized = rest.split(" ", 2);
                boolean strong = sized[0].endsWith("b");
                float points = Float.parseFloat(sized[0].replace("b", ""));
                cell(sized[1], x, y + points, points, strong, 0, 'l');
                y += points * 1.35f;
            }
            case "leaders" -> leaders(rest.split(" ", 2));
            case "picture" -> picture(rest.split(" "));
            case "rule" -> {
                String[] ends = rest.split(" ");
                stroke(Float.parseFloat(ends[1]), Float.parseFloat(ends[0]), Float.parseFloat(ends[2]), Float.parseFloat(ends[0]));
            }
            case "dot" -> dot(rest.split(" "));
            default -> throw new IOException("no drawing word: " + line);
        }
    }

    private void dot(String[] place) throws IOException {
        Matrix middle = matrix(Float.parseFloat(place[0]), Float.parseFloat(place[1]));
        float across = middle.getTranslateX();
        float up = middle.getTranslateY();
        float half = Float.parseFloat(place[2]) / 2;
        // the share of half a side at which four curves are nearly a circle
        float bend = half * 0.5523f;
        out.moveTo(across - half, up);
        out.curveTo(across - half, up + bend, across - bend, up + half, across, up + half);
        out.curveTo(across + bend, up + half, across + half, up + bend, across + half, up);
        out.curveTo(across + half, up - bend, across + bend, up - half, across, up - half);
        out.curveTo(across - bend, up - half, across - half, up - bend, across - half, up);
        out.fill();
    }

    private void page(String asked) throws IOException {
        if (out != null) {
            out.close();
        }
        kind = asked;
        PDRectangle box = asked.equals("a4") ? PDRectangle.A4 : asked.equals("landscape")
            ? new PDRectangle(792, 612) : PDRectangle.LETTER;
        page = new PDPage(box);
        if (asked.equals("turned")) {
            page.setRotation(90);
        }
        document.addPage(page);
        out = new PDPageContentStream(document, page);
        x = 54;
        y = 54;
    }

    private void font(String[] asked) throws IOException {
        size = Float.parseFloat(asked[1]);
        switch (asked[0]) {
            case "Times" -> fonts(FontName.TIMES_ROMAN, FontName.TIMES_BOLD);
            case "Courier" -> fonts(FontName.COURIER, FontName.COURIER_BOLD);
            case "Helvetica" -> fonts(FontName.HELVETICA, FontName.HELVETICA_BOLD);
            default -> {
                try (InputStream in = PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
                    font = PDType0Font.load(document, in);
                    bold = font;
                }
            }
        }
    }

    private void fonts(FontName plain, FontName strong) {
        font = new PDType1Font(plain);
        bold = new PDType1Font(strong);
    }

    /** Draws words with their baseline at a height; gives their width. */
    private float cell(String written, float left, float base, float points, boolean strong, float width, char align) throws IOException {
        int mark = written.indexOf('{');
        if (mark > 0) {
            float label = cell(written.substring(0, mark), left, base, points, strong, 0, 'l');
            return label + cell(written.substring(mark), left + label, base, points, strong, 0, 'l');
        }
        Matcher truth = TRUTH.matcher(written);
        String words = truth.matches() ? truth.group(2) : written;
        float wide = width(words, points, strong);
        float start = align == 'r' ? left + width - wide : align == 'c' ? left + (width - wide) / 2 : left;
        float at = start;
        for (Piece piece : pieces(words)) {
            float small = piece.raised ? points * 0.62f : points;
            show(piece.text, at, piece.raised ? base - points * 0.36f : base, small, strong);
            at += (strong ? bold : font).getStringWidth(piece.text) / 1000 * small;
        }
        if (truth.matches()) {
            truths(truth.group(1), shown(start, base - points, wide, points * 1.2f));
        }
        return wide;
    }

    private void truths(String marks, Box box) {
        for (String mark : marks.substring(1, marks.length() - 1).split("}\\{")) {
            truths.add(Truth.parse(mark, document.getNumberOfPages(), box));
        }
    }

    private record Piece(String text, boolean raised) {
    }

    private static List<Piece> pieces(String words) {
        List<Piece> pieces = new ArrayList<>();
        Matcher raised = RAISED.matcher(words);
        int from = 0;
        while (raised.find()) {
            pieces.add(new Piece(words.substring(from, raised.start()), false));
            pieces.add(new Piece(raised.group(1), true));
            from = raised.end();
        }
        pieces.add(new Piece(words.substring(from), false));
        pieces.removeIf(piece -> piece.text.isEmpty());
        return pieces;
    }

    private float width(String words, float points, boolean strong) throws IOException {
        float width = 0;
        for (Piece piece : pieces(words)) {
            width += (strong ? bold : font).getStringWidth(piece.text) / 1000 * (piece.raised ? points * 0.62f : points);
        }
        return width;
    }

    private void show(String text, float left, float base, float points, boolean strong) throws IOException {
        out.beginText();
        out.setFont(strong ? bold : font, points);
        out.setTextMatrix(matrix(left, base));
        out.showText(text);
        out.endText();
    }

    private Matrix matrix(float left, float base) {
        float high = page.getMediaBox().getHeight();
        return kind.equals("turned") || kind.equals("sideways") ? new Matrix(0, 1, -1, 0, base, left) : new Matrix(1, 0, 0, 1, left,
            high - base);
    }

    /** A rectangle on the page as it is shown. */
    private Box shown(float left, float top, float width, float height) {
        return kind.equals("sideways") ? new Box(top, page.getMediaBox().getHeight() - left - width, height, width)
            : new Box(left, top, width, height);
    }

    private void stroke(float x1, float y1, float x2, float y2) throws IOException {
        Matrix from = matrix(x1, y1);
        Matrix to = matrix(x2, y2);
        out.setLineWidth(0.5f);
        out.moveTo(from.getTranslateX(), from.getTranslateY());
        out.lineTo(to.getTranslateX(), to.getTranslateY());
        out.stroke();
    }

    private void fill(float left, float top, float width, float height, float grey) throws IOException {
        Matrix from = matrix(left, top + height);
        Matrix to = matrix(left + width, top);
        out.setNonStrokingColor(grey);
        out.addRect(Math.min(from.getTranslateX(), to.getTranslateX()), Math.min(from.getTranslateY(), to.getTranslateY()),
            Math.abs(to.getTranslateX() - from.getTranslateX()), Math.abs(to.getTranslateY() - from.getTranslateY()));
        out.fill();
        out.setNonStrokingColor(0f);
    }

    private void leaders(String[] asked) throws IOException {
        float width = Float.parseFloat(asked[0]);
        String[] parts = asked[1].split(" = ", 2);
        float label = cell(parts[0], x, y + size, size, false, 0, 'l');
        float value = width(TRUTH.matcher(parts[1]).replaceAll("$2"), size, false);
        cell(parts[1], x, y + size, size, false, width, 'r');
        float dot = font.getStringWidth(".") / 1000 * size;
        int dots = Math.max(3, (int) ((width - label - value - 6) / dot));
        show(".".repeat(dots), x + label + 2, y + size, size, false);
        y += size * 1.6f;
    }

    private void table(String[] asked, List<String> rows) throws IOException {
        String style = asked[1];
        float least = Float.parseFloat(asked[2]);
        String[] widths = asked[3].split(",");
        float top = y;
        for (int row = 0; row < rows.size(); row++) {
            String[] cells = rows.get(row).substring(1).split("\\|", -1);
            int most = 1;
            for (String cell : cells) {
                most = Math.max(most, cell.split(" / ").length);
            }
            float high = Math.max(least, most * size * 1.2f + 6);
            if (style.equals("shaded") && row % 2 == 0) {
                fill(x, y, total(widths), high, 0.9f);
            }
            float left = x;
            for (int column = 0; column < cells.length && column < widths.length; column++) {
                float width = Float.parseFloat(widths[column].replaceAll("[lcr]", ""));
                char align = widths[column].replaceAll("[^lcr]", "").concat("l").charAt(0);
                lines(cells[column].strip(), left + 4, width - 8, align, row == 0, cells.length == 1, high);
                left += width;
            }
            y += high;
            if (style.equals("ruled") || style.equals("lined")) {
                stroke(x, y, x + total(widths), y);
                if (row == 0) {
                    stroke(x, y - high, x + total(widths), y - high);
                }
            }
        }
        if (style.equals("ruled")) {
            float left = x;
            stroke(left, top, left, y);
            for (String width : widths) {
                left += Float.parseFloat(width.replaceAll("[lcr]", ""));
                stroke(left, top, left, y);
            }
        }
        y += size;
    }

    /** The lines of a cell; what is to be found is the whole cell. */
    private void lines(String cell, float left, float width, char align, boolean head, boolean alone, float high) throws IOException {
        if (cell.isEmpty()) {
            return;
        }
        Matcher truth = TRUTH.matcher(cell);
        String[] lines = (truth.matches() ? truth.group(2) : cell).split(" / ");
        float base = y + (high - lines.length * size * 1.2f) / 2 + size;
        float widest = width;
        for (String line : lines) {
            widest = Math.max(widest, cell(line, left, base, size, head || alone, width, align));
            base += size * 1.2f;
        }
        if (truth.matches()) {
            truths(truth.group(1), shown(left, y, widest, high));
        }
    }

    private static float total(String[] widths) {
        float total = 0;
        for (String width : widths) {
            total += Float.parseFloat(width.replaceAll("[lcr]", ""));
        }
        return total;
    }

    private void picture(String[] at) throws IOException {
        BufferedImage image = new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < 64; i++) {
            image.setRGB(i, i, 0xFFFFFF);
        }
        out.drawImage(LosslessFactory.createFromImage(document, image), Float.parseFloat(at[0]), Float.parseFloat(at[1]),
            Float.parseFloat(at[2]), Float.parseFloat(at[3]));
    }
}
