package reglet.reading;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import com.lowagie.text.Document;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;

/** Binds 300 sheets in all habits of makers and programs, some saved by LibreOffice and OpenPDF, and counts what came of them. */
public final class HabitsRun {
    private static final int MADE = 240;
    private static final int OFFICE = 30;
    private static final int OPENPDF = 30;
    /** Points between a place and the corner of the view that a link leads to. */
    private static final double NEAR = 170;

    private HabitsRun() {
    }

    /** "FOLDER", which exists and is empty. Ends with 1 when anything is not as it should be. */
    public static void main(String[] words) throws IOException {
        Path folder = Path.of(words[0]);
        List<Habits.Sheet> sheets = new ArrayList<>(Habits.make(folder, MADE));
        sheets.addAll(OfficeSheets.make(folder, sheets.size(), OFFICE));
        sheets.addAll(openPdf(folder, sheets.size()));
        List<Measure> measures = Child.usual().measure(sheets.stream().map(Habits.Sheet::file).toList());
        PackagePlan plan = Habits.plan(sheets, measures);
        Path written = folder.resolve("package.out");
        try (OutputStream out = Files.newOutputStream(written)) {
            Child.usual().assemble(plan, out);
        }
        try (PDDocument bound = Loader.loadPDF(written.toFile())) {
            boolean sound = sheets(sheets, measures) & pages(bound, plan, sheets) & links(bound, plan);
            System.exit(sound ? 0 : 1);
        }
    }

    private static List<Habits.Sheet> openPdf(Path folder, int number) throws IOException {
        List<Habits.Sheet> sheets = new ArrayList<>();
        for (int at = number; at < number + OPENPDF; at++) {
            boolean lies = at % 2 == 0;
            List<String> words = List.of("V" + at + "X1Q", "V" + at + "X2Q");
            Path file = folder.resolve(at + " openpdf.pdf");
            Document document = new Document(lies ? PageSize.LETTER.rotate() : PageSize.A4);
            PdfWriter.getInstance(document, Files.newOutputStream(file));
            document.open();
            for (String word : words) {
                document.newPage();
                if (at % 3 == 0) {
                    PdfPTable table = new PdfPTable(3);
                    List.of("Weight", word, "lb").forEach(table::addCell);
                    document.add(table);
                } else {
                    document.add(new Paragraph("Weight " + word + " lb"));
                }
            }
            document.close();
            sheets.add(new Habits.Sheet(file, "OpenPDF", words.size(), words));
        }
        return sheets;
    }

    private static boolean sheets(List<Habits.Sheet> sheets, List<Measure> measures) {
        int right = 0;
        for (int i = 0; i < sheets.size(); i++) {
            boolean same = sheets.get(i).pages() == measures.get(i).pages() && measures.get(i).usable() == sheets.get(i).pages() > 0;
            right += same ? 1 : 0;
            if (!same) {
                System.out.println(sheets.get(i).habit() + ": " + measures.get(i));
            }
        }
        return told("sheets bound in, or told why not", right, sheets.size())
            & told("of them bound in", (int) measures.stream().filter(Measure::usable).count(),
                (int) sheets.stream().filter(sheet -> sheet.pages() > 0).count());
    }

    private static boolean pages(PDDocument bound, PackagePlan plan, List<Habits.Sheet> sheets) throws IOException {
        int numbered = 1;
        int wanted = 0;
        int marked = 0;
        int page = 1;
        int number = 0;
        for (int i = 0; i < sheets.size(); i++) {
            Habits.Sheet sheet = sheets.get(i);
            numbered += PageLook.of(bound.getPage(page++)).text().contains("Divider " + (i + 1)) ? 1 : 0;
            for (int own = 1; own <= sheet.pages(); own++, page++) {
                PageLook look = PageLook.of(bound.getPage(page));
                String mark = "Sheet " + i + ", page " + own + " of " + sheet.pages() + " - package page " + (page + 1);
                numbered += look.text().contains(mark) ? 1 : 0;
                if (!sheet.words().isEmpty()) {
                    wanted++;
                    boolean in = look.highlights().size() == 1 && look.text().contains("N" + ++number)
                        && covers(look, sheet.words().get(own - 1));
                    marked += in ? 1 : 0;
                    if (!in) {
                        System.out.println(sheet.habit() + ", page " + own + ": mark not in place");
                    }
                }
            }
        }
        return told("pages of the package", bound.getNumberOfPages(), plan.total()) & told("pages with their own numbers", numbered, page)
            & told("marks in place", marked, wanted);
    }

    private static boolean covers(PageLook look, String word) {
        Rectangle2D marked = look.highlights().get(0);
        for (Point2D letter : look.letters(word)) {
            if (!marked.contains(letter)) {
                return false;
            }
        }
        return !marked.contains(look.letters("Weight").get(0)) && !marked.contains(look.letters("lb").get(0));
    }

    private static boolean links(PDDocument bound, PackagePlan plan) throws IOException {
        List<PDAnnotation> links = bound.getPage(0).getAnnotations();
        int landing = 0;
        for (int i = 0; i < links.size(); i++) {
            PDPageXYZDestination to = (PDPageXYZDestination) ((PDActionGoTo) ((PDAnnotationLink) links.get(i)).getAction()).getDestination();
            Rectangle2D marked = PageLook.of(bound.getPage(to.retrievePageNumber())).highlights().get(0);
            double far = new Point2D.Double(marked.getCenterX(), marked.getCenterY()).distance(to.getLeft(), to.getTop());
            landing += plan.links().get(i).target() == to.retrievePageNumber() + 1 && far < NEAR ? 1 : 0;
        }
        return told("links that land beside their word", landing, plan.links().size());
    }

    private static boolean told(String what, int have, int of) {
        System.out.printf(Locale.ROOT, "%s: %d of %d%n", what, have, of);
        return have == of;
    }
}
