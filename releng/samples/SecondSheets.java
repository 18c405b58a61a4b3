import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import com.lowagie.text.Chunk;
import com.lowagie.text.Document;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorN;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorSpace;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceGrayColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceRGBColor;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/**
 * Makes the second set of sheets that reading is judged on: invented products, laid out as makers do. Run with the folder of the sheets
 * and the folder of the fonts (Liberation, DejaVu) as arguments, and OpenPDF and PDFBox on the class path. NAME.html is exported by
 * LibreOffice (soffice on the path); NAME.pages is drawn by OpenPDF or PDFBox as its first lines ask.
 *
 * <p>What is to be found is written {@code [[property; value; key=value|text on the page]]}, several by {@code &&}. It is painted in a
 * colour of its own, black to the eye, by which its place is found on the finished page and written into NAME.truth.
 */
public final class SecondSheets {
    private static final Pattern MARK = Pattern.compile("\\[\\[([^|\\]]+)\\|(.*?)]]", Pattern.DOTALL);
    private static Path fonts;

    private SecondSheets() {
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        fonts = Path.of(args[1]);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.toString().matches(".*\\.(html|pages)")).sorted().toList()) {
                if (args.length < 3 || file.getFileName().toString().startsWith(args[2])) {
                    make(file);
                }
            }
        }
    }

    private static void make(Path file) throws Exception {
        String text = Files.readString(file);
        String name = file.getFileName().toString().replaceAll("\\.\\w+$", "");
        Matcher component = Pattern.compile("component ([a-z_ ]+?) *(-->|\n)").matcher(text);
        component.find();
        List<String> truths = new ArrayList<>();
        Path pdf = file.resolveSibling(name + ".pdf");
        if (file.toString().endsWith(".html")) {
            office(marked(text, truths, (number, words) -> String.format("<font color=\"#0000%02x\">%s</font>", number, words)), name, pdf);
        } else {
            List<String> lines = List.of(marked(text, truths, (number, words) -> "\1" + (char) (0x100 + number) + words
                + "\2").split("\n"));
            if (lines.get(1).startsWith("openpdf")) {
                new Set(lines).write(pdf);
            } else {
                new Placed(lines).write(pdf);
            }
        }
        Map<Integer, double[]> places = places(pdf);
        StringBuilder out = new StringBuilder("component " + component.group(1) + "\n");
        for (int i = 0; i < truths.size(); i++) {
            double[] at = places.get(i + 1);
            if (at == null) {
                throw new IOException(name + ": " + truths.get(i) + " isn't painted");
            }
            for (String truth : truths.get(i).split("\\s*&&\\s*")) {
                out.append(String.format(Locale.ROOT, "%s; page=%d; box=%.1f %.1f %.1f %.1f%n", truth, (int) at[0], at[1], at[2],
                    at[3] - at[1],
                    at[4] - at[2]));
            }
        }
        Files.writeString(file.resolveSibling(name + ".truth"), out);
        System.out.println(name + " " + truths.size() + " " + Files.size(pdf));
    }

    private interface Painter {
        String paint(int number, String words);
    }

    private static String marked(String text, List<String> truths, Painter painter) {
        return MARK.matcher(text).replaceAll(mark -> {
            truths.add(mark.group(1).strip());
            return Matcher.quoteReplacement(painter.paint(truths.size(), mark.group(2)));
        });
    }

    private static void office(String html, String name, Path pdf) throws Exception {
        Path work = Files.createTempDirectory("sheet");
        Path source = work.resolve(name + ".html");
        Files.writeString(source, html.replaceFirst("(?s)<html>(<head>)?", "<html><head><meta charset=\"utf-8\">"
            + (html.contains("<head>") ? "" : "</head>")));
        Process office = new ProcessBuilder("soffice", "-env:UserInstallation=file://" + work.resolveSibling("sheets-office"), "--headless",
            "--infilter=HTML (StarWriter)", "--convert-to", "pdf:writer_pdf_Export", "--outdir", work.toString(), source.toString())
                .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        office.waitFor(2, TimeUnit.MINUTES);
        Files.copy(work.resolve(name + ".pdf"), pdf, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    }

    /** Page, left, top, right and bottom of what is painted in each colour. */
    private static Map<Integer, double[]> places(Path pdf) throws IOException {
        Map<Integer, double[]> places = new TreeMap<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition glyph) {
                try {
                    float[] rgb = getGraphicsState().getNonStrokingColor().getColorSpace()
                        .toRGB(getGraphicsState().getNonStrokingColor().getComponents());
                    int blue = Math.round(rgb[2] * 255);
                    if (rgb[0] == 0 && rgb[1] == 0 && blue > 0 && !glyph.getUnicode().isBlank()) {
                        double[] one = {getCurrentPageNo(), glyph.getXDirAdj(), glyph.getYDirAdj() - glyph.getHeightDir(),
                            glyph.getXDirAdj() + glyph.getWidthDirAdj(), glyph.getYDirAdj()};
                        places.merge(blue, one, (a, b) -> new double[]{a[0], Math.min(a[1], b[1]), Math.min(a[2], b[2]), Math.max(a[3],
                            b[3]),
                            Math.max(a[4], b[4])});
                    }
                } catch (IOException problem) {
                    throw new java.io.UncheckedIOException(problem);
                }
            }
        };
        stripper.addOperator(new SetNonStrokingColor(stripper));
        stripper.addOperator(new SetNonStrokingColorN(stripper));
        stripper.addOperator(new SetNonStrokingColorSpace(stripper));
        stripper.addOperator(new SetNonStrokingDeviceRGBColor(stripper));
        stripper.addOperator(new SetNonStrokingDeviceGrayColor(stripper));
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            stripper.writeText(document, new java.io.OutputStreamWriter(OutputStream.nullOutputStream()));
        }
        return places;
    }

    /** A run of one colour; 0 is plain. */
    private record Run(int number, String text) {
    }

    private static List<Run> runs(String line) {
        List<Run> runs = new ArrayList<>();
        Matcher mark = Pattern.compile("\1(.)([^\2]*)\2").matcher(line);
        int from = 0;
        while (mark.find()) {
            if (mark.start() > from) {
                runs.add(new Run(0, line.substring(from, mark.start())));
            }
            runs.add(new Run(mark.group(1).charAt(0) - 0x100, mark.group(2)));
            from = mark.end();
        }
        if (from < line.length()) {
            runs.add(new Run(0, line.substring(from)));
        }
        return runs;
    }

    /**
     * Set by OpenPDF: {@code openpdf FONT SIZE [landscape] [columns] [kerned]}; then {@code # heading}, paragraphs,
     * {@code table BORDER WIDTH,WIDTH} with rows {@code | a | b}; {@code >N} in front of a cell spans N columns; {@code foot TEXT}.
     */
    private static final class Set {
        private final List<String> lines;
        private final String[] how;
        private final Font font;
        private final Font bold;

        Set(List<String> lines) throws IOException {
            this.lines = lines;
            how = lines.get(1).split(" ");
            float size = Float.parseFloat(how[2]);
            String path = fonts.resolve(how[1] + "-Regular.ttf").toString();
            String strong = fonts.resolve(how[1] + "-Bold.ttf").toString();
            boolean own = new File(path).exists();
            font = new Font(own ? BaseFont.createFont(path, BaseFont.IDENTITY_H, true) : BaseFont.createFont(how[1], BaseFont.CP1252,
                false), size);
            bold = new Font(own ? BaseFont.createFont(strong, BaseFont.IDENTITY_H, true)
                : BaseFont.createFont(how[1].equals("Times-Roman") ? "Times-Bold" : how[1] + "-Bold", BaseFont.CP1252, false), size);
        }

        void write(Path pdf) throws IOException {
            boolean turned = lines.get(1).contains("landscape");
            Document document = new Document(turned ? PageSize.LETTER.rotate() : PageSize.LETTER, 50, 50, 45, 60);
            try (OutputStream out = Files.newOutputStream(pdf)) {
                PdfWriter writer = PdfWriter.getInstance(document, out);
                document.open();
                ColumnText columns = lines.get(1).contains("columns") ? new ColumnText(writer.getDirectContent()) : null;
                for (int i = 2; i < lines.size(); i++) {
                    String line = lines.get(i);
                    com.lowagie.text.Element element;
                    if (line.startsWith("table ")) {
                        List<String> rows = new ArrayList<>();
                        while (i + 1 < lines.size() && lines.get(i + 1).startsWith("|")) {
                            rows.add(lines.get(++i));
                        }
                        element = table(line.split(" "), rows, columns != null);
                    } else if (line.startsWith("foot ")) {
                        ColumnText.showTextAligned(writer.getDirectContent(), 0, phrase(line.substring(5), font), 50, 30, 0);
                        continue;
                    } else if (line.equals("newpage")) {
                        document.newPage();
                        continue;
                    } else {
                        Paragraph paragraph = new Paragraph(phrase(line.replaceFirst("^# ", ""), line.startsWith("# ") ? bold : font));
                        paragraph.setSpacingAfter(4);
                        paragraph.setLeading(font.getSize() * 1.3f);
                        element = paragraph;
                    }
                    if (columns == null) {
                        document.add(element);
                    } else {
                        columns.addElement(element);
                    }
                }
                if (columns != null) {
                    columns.setSimpleColumn(50, 330, 290, 740);
                    if (ColumnText.hasMoreText(columns.go())) {
                        columns.setSimpleColumn(322, 60, 562, 740);
                        columns.go();
                    }
                }
                document.close();
            }
        }

        private Phrase phrase(String line, Font with) {
            Phrase phrase = new Phrase();
            for (Run run : runs(line)) {
                for (String piece : run.text.split("(?=\\^\\()|(?<=\\))(?<=\\^\\(.{1,3}\\))")) {
                    Font own = new Font(with.getBaseFont(), piece.startsWith("^(") ? with.getSize() * 0.6f : with.getSize());
                    own.setColor(new Color(0, 0, run.number));
                    Chunk chunk = new Chunk(piece.startsWith("^(") ? piece.substring(2, piece.length() - 1) : piece, own);
                    if (piece.startsWith("^(")) {
                        chunk.setTextRise(with.getSize() * 0.35f);
                    }
                    phrase.add(chunk);
                }
            }
            return phrase;
        }

        private PdfPTable table(String[] how, List<String> rows, boolean narrow) {
            String[] widths = how[2].split(",");
            float[] shares = new float[widths.length];
            for (int i = 0; i < shares.length; i++) {
                shares[i] = Float.parseFloat(widths[i]);
            }
            PdfPTable table = new PdfPTable(shares);
            table.setWidthPercentage(100);
            table.setSpacingBefore(4);
            table.setSpacingAfter(8);
            if (how.length > 3) {
                table.setHeaderRows(Integer.parseInt(how[3]));
            }
            for (String row : rows) {
                for (String cell : row.substring(1).split(" ?\\|", -1)) {
                    String words = cell.strip();
                    PdfPCell made = new PdfPCell();
                    if (words.startsWith(">")) {
                        made.setColspan(words.charAt(1) - '0');
                        words = words.substring(2).strip();
                    }
                    made.setPhrase(phrase(words.replace(" / ", "\n").replaceFirst("^\\*", ""), words.startsWith("*") ? bold : font));
                    made.setBorder(how[1].equals("none") ? Rectangle.NO_BORDER : how[1].equals("lines") ? Rectangle.BOTTOM : Rectangle.BOX);
                    made.setPadding(narrow ? 2 : 3);
                    table.addCell(made);
                }
            }
            return table;
        }
    }

    /**
     * Placed by PDFBox: {@code pdfbox FONT SIZE [glyphs] [words] [sideways]}; {@code at X Y}; lines; {@code cols X,X,X} then rows
     * {@code | a | b}; {@code dots LABEL = VALUE}. {@code glyphs} shows each sign alone, {@code words} each word, blanks left out.
     */
    private static final class Placed {
        private final List<String> lines;
        private final String[] how;
        private PDPageContentStream out;
        private PDFont font;
        private PDPage page;
        private float size;
        private boolean turned;

        Placed(List<String> lines) {
            this.lines = lines;
            how = lines.get(1).split(" ");
        }

        void write(Path pdf) throws IOException {
            try (PDDocument document = new PDDocument()) {
                font = PDType0Font.load(document, fonts.resolve(how[1] + "-Regular.ttf").toFile());
                size = Float.parseFloat(how[2]);
                turned = lines.get(1).contains("sideways");
                page(document);
                float x = 54;
                float y = 60;
                float[] columns = {};
                for (String line : lines.subList(2, lines.size())) {
                    if (line.startsWith("at ")) {
                        x = Float.parseFloat(line.split(" ")[1]);
                        y = Float.parseFloat(line.split(" ")[2]);
                    } else if (line.startsWith("cols ")) {
                        String[] parts = line.substring(5).split(",");
                        columns = new float[parts.length];
                        for (int i = 0; i < parts.length; i++) {
                            columns[i] = Float.parseFloat(parts[i]);
                        }
                    } else if (line.equals("newpage")) {
                        out.close();
                        page(document);
                        y = 60;
                    } else if (line.startsWith("dots ")) {
                        String[] pair = line.substring(5).split(" = ", 2);
                        float end = show(pair[0] + " ", x, y);
                        float width = 0;
                        for (Run run : runs(pair[1])) {
                            width += font.getStringWidth(run.text) / 1000 * size;
                        }
                        int dots = (int) ((x + 400 - width - end) / (font.getStringWidth(".") / 1000 * size)) - 1;
                        show(".".repeat(Math.max(3, dots)), end, y);
                        show(pair[1], x + 400 - width, y);
                        y += size * 1.5f;
                    } else if (line.startsWith("|")) {
                        String[] cells = line.substring(1).split("\\|", -1);
                        int most = 1;
                        for (int i = 0; i < cells.length; i++) {
                            String[] parts = cells[i].strip().split(" / ");
                            most = Math.max(most, parts.length);
                            for (int j = 0; j < parts.length; j++) {
                                show(parts[j], x + columns[i], y + j * size * 1.15f);
                            }
                        }
                        y += size * (most * 1.15f + 0.35f);
                    } else if (!line.isBlank()) {
                        show(line, x, y);
                        y += size * 1.4f;
                    } else {
                        y += size;
                    }
                }
                out.close();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                document.save(bytes);
                Files.write(pdf, bytes.toByteArray());
            }
        }

        private void page(PDDocument document) throws IOException {
            page = new PDPage(turned ? new PDRectangle(612, 792) : PDRectangle.A4);
            if (turned) {
                page.setRotation(90);
            }
            document.addPage(page);
            out = new PDPageContentStream(document, page);
        }

        private float show(String line, float x, float y) throws IOException {
            float at = x;
            for (Run run : runs(line)) {
                out.setNonStrokingColor(0f, 0f, run.number / 255f);
                String splitter = lines.get(1).contains("glyphs") ? "" : lines.get(1).contains("words") ? "(?<= )" : "\n";
                for (String piece : run.text.split(splitter)) {
                    if (!(piece.isBlank() && lines.get(1).contains("glyphs"))) {
                        out.beginText();
                        out.setFont(font, size);
                        out.setTextMatrix(turned ? new Matrix(0, 1, -1, 0, y, at)
                            : Matrix.getTranslateInstance(at, page.getMediaBox().getHeight() - y));
                        out.showText(lines.get(1).contains("words") ? piece.stripTrailing() : piece);
                        out.endText();
                    }
                    at += font.getStringWidth(piece) / 1000 * size;
                }
            }
            return at;
        }
    }
}
