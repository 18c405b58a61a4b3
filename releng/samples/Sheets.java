import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

import com.lowagie.text.Chunk;
import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;

/**
 * Makes the data sheets of the sample jobs, and the product data that a person would have read from them. All makers and
 * products are invented, and every sheet says so. Arguments: a folder of descriptions (one YAML file a product) and a job folder.
 *
 * <p>A description: {@code component, name, maker, model, style (plain, banded or two pages), about, notes, rows}. A row has
 * {@code label, value, method} as printed; with {@code property} it becomes a value in the product data, read from the printed
 * words or, where a person has to translate them, from {@code means}.
 */
public final class Sheets {
    private static final float MARGIN = 54;
    private static final Rectangle PAGE = PageSize.LETTER;
    private final Map<String, Object> described;
    private final List<Placed> placed = new ArrayList<>();
    private int page = 1;

    /** A printed value and where it stands: page from 1, points from the upper left. */
    private record Placed(Map<String, Object> row, int page, float x, float y, float width, float height) {
    }

    private Sheets(Map<String, Object> described) {
        this.described = described;
    }

    public static void main(String[] arguments) throws Exception {
        Path from = Path.of(arguments[0]);
        Path job = Path.of(arguments[1]);
        Files.createDirectories(job.resolve("sheets"));
        Files.createDirectories(job.resolve("products"));
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".yaml")).sorted().toList()) {
                String id = file.getFileName().toString().replace(".yaml", "");
                Sheets sheet = new Sheets(read(file));
                Files.write(job.resolve("sheets").resolve(id + ".pdf"), sheet.pdf());
                Files.writeString(job.resolve("products").resolve(id + ".yaml"), sheet.product(id), StandardCharsets.UTF_8);
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            LoadSettings strings = LoadSettings.builder()
                .setSchema(new org.snakeyaml.engine.v2.schema.FailsafeSchema()).build();
            return (Map<String, Object>) new Load(strings).loadFromInputStream(in);
        }
    }

    private byte[] pdf() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document(PAGE, MARGIN, MARGIN, MARGIN, MARGIN);
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        document.open();
        writer.getInfo().remove(PdfName.CREATIONDATE);
        writer.getInfo().remove(PdfName.MODDATE);
        switch (text("style")) {
            case "banded" -> banded(document, writer);
            case "two pages" -> twoPages(document, writer);
            default -> plain(document, writer);
        }
        document.close();
        return bytes.toByteArray();
    }

    /** Serif, ruled table, all on one page. */
    private void plain(Document document, PdfWriter writer) {
        int family = Font.TIMES_ROMAN;
        document.add(new Paragraph(text("maker"), new Font(family, 11, Font.ITALIC)));
        document.add(new Paragraph(text("name"), new Font(family, 20, Font.BOLD)));
        document.add(new Paragraph("Technical data" + (text("model").isEmpty() ? "" : ": model " + text("model")), new Font(family, 11)));
        document.add(new Paragraph(" "));
        document.add(new Paragraph(text("about"), new Font(family, 11)));
        table(document, family, false);
        notes(document, family);
    }

    /** Sans serif, a dark band above, grey rows. */
    private void banded(Document document, PdfWriter writer) {
        PdfContentByte under = writer.getDirectContentUnder();
        under.setColorFill(new Color(0x3a, 0x4a, 0x3f));
        under.rectangle(0, PAGE.getHeight() - 112, PAGE.getWidth(), 112);
        under.fill();
        document.add(new Paragraph(text("maker").toUpperCase(Locale.ROOT), new Font(Font.HELVETICA, 9, Font.NORMAL, Color.WHITE)));
        document.add(new Paragraph(text("name"), new Font(Font.HELVETICA, 18, Font.BOLD, Color.WHITE)));
        Paragraph about = new Paragraph(text("about"), new Font(Font.HELVETICA, 10));
        about.setSpacingBefore(34);
        document.add(about);
        table(document, Font.HELVETICA, true);
        notes(document, Font.HELVETICA);
    }

    /** What it is for on the first page, numbers on the second. */
    private void twoPages(Document document, PdfWriter writer) {
        document.add(new Paragraph(text("name"), new Font(Font.HELVETICA, 26, Font.BOLD)));
        document.add(new Paragraph("by " + text("maker"), new Font(Font.HELVETICA, 11)));
        document.add(new Paragraph(" "));
        document.add(new Paragraph("Product description", new Font(Font.HELVETICA, 12, Font.BOLD)));
        document.add(new Paragraph(text("about"), new Font(Font.HELVETICA, 10)));
        notes(document, Font.HELVETICA);
        document.newPage();
        page = 2;
        document.add(new Paragraph(text("name") + (text("model").isEmpty() ? "" : " " + text("model")) + ": physical properties",
            new Font(Font.HELVETICA, 14, Font.BOLD)));
        table(document, Font.HELVETICA, false);
    }

    private void table(Document document, int family, boolean grey) {
        PdfPTable table = new PdfPTable(new float[] {44, 32, 24});
        table.setWidthPercentage(100);
        table.setSpacingBefore(14);
        table.setSpacingAfter(14);
        for (String head : List.of("Property", "Value", "Test method")) {
            PdfPCell cell = new PdfPCell(new Phrase(head, new Font(family, 10, Font.BOLD)));
            cell.setPadding(5);
            cell.setBorder(grey ? Rectangle.NO_BORDER : Rectangle.BOTTOM | Rectangle.TOP);
            table.addCell(cell);
        }
        int index = 0;
        for (Map<String, Object> row : rows()) {
            for (String column : List.of("label", "value", "method")) {
                PdfPCell cell = new PdfPCell(new Phrase(new Chunk(string(row, column), new Font(family, 10))));
                cell.setPadding(5);
                cell.setBorder(grey ? Rectangle.NO_BORDER : Rectangle.BOTTOM);
                cell.setBorderWidth(0.4f);
                cell.setVerticalAlignment(Element.ALIGN_MIDDLE);
                if (grey && index % 2 == 0) {
                    cell.setBackgroundColor(new Color(0xec, 0xec, 0xe8));
                }
                if (column.equals("value")) {
                    cell.setCellEvent(place(row));
                }
                table.addCell(cell);
            }
            index++;
        }
        document.add(table);
    }

    private PdfPCellEvent place(Map<String, Object> row) {
        return (cell, box, canvases) -> placed.add(new Placed(row, page, box.getLeft(), PAGE.getHeight() - box.getTop(), box.getWidth(),
            box.getHeight()));
    }

    private void notes(Document document, int family) {
        for (Object note : list("notes")) {
            Paragraph line = new Paragraph("\u2022 " + note, new Font(family, 10));
            line.setSpacingBefore(3);
            document.add(line);
        }
        Paragraph invented = new Paragraph("Invented maker and product, for a sample job only. Not a real product; do not order or specify it.",
            new Font(family, 9, Font.ITALIC));
        invented.setSpacingBefore(16);
        document.add(invented);
    }

    /** The product data that a person would have typed or confirmed from this sheet. */
    private String product(String id) {
        StringBuilder yaml = new StringBuilder("# Invented maker and product.\n");
        yaml.append("component: ").append(text("component")).append('\n');
        yaml.append("name: ").append(quoted(text("name"))).append('\n');
        yaml.append("maker: ").append(quoted(text("maker"))).append('\n');
        if (!text("model").isEmpty()) {
            yaml.append("model: ").append(quoted(text("model"))).append('\n');
        }
        yaml.append("sheet: sheets/").append(id).append(".pdf\nvalues:\n");
        for (Placed value : placed) {
            String property = string(value.row(), "property");
            if (property.isEmpty()) {
                continue;
            }
            String means = string(value.row(), "means");
            yaml.append("  ").append(property).append(":\n");
            yaml.append("    value: ").append(quoted(means.isEmpty() ? string(value.row(), "value") : means)).append('\n');
            optional(yaml, "compare", string(value.row(), "compare"));
            String method = string(value.row(), "cites").isEmpty() ? string(value.row(), "method") : string(value.row(), "cites");
            optional(yaml, "method", method);
            optional(yaml, "edition", string(value.row(), "edition"));
            yaml.append("    text: ").append(quoted(string(value.row(), "value"))).append('\n');
            yaml.append("    page: ").append(value.page()).append('\n');
            yaml.append(String.format(Locale.ROOT, "    box: [%.1f, %.1f, %.1f, %.1f]%n", value.x(), value.y(), value.width(),
                value.height()));
            yaml.append("    confirmed: ").append(string(value.row(), "confirmed").isEmpty() ? "yes" : string(value.row(), "confirmed"))
                .append('\n');
        }
        return yaml.toString();
    }

    private static void optional(StringBuilder yaml, String key, String value) {
        if (!value.isEmpty()) {
            yaml.append("    ").append(key).append(": ").append(quoted(value)).append('\n');
        }
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private String text(String key) {
        return string(described, key);
    }

    private static String string(Map<String, Object> map, String key) {
        Object value = map.get(key);
        return value == null ? "" : value.toString();
    }

    private List<?> list(String key) {
        return described.get(key) instanceof List<?> list ? list : List.of();
    }

    @SuppressWarnings("unchecked")
    private List<Map<String, Object>> rows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        list("rows").forEach(row -> rows.add(new LinkedHashMap<>((Map<String, Object>) row)));
        return rows;
    }
}
