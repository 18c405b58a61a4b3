package reglet.reading;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.apache.pdfbox.util.Matrix;

import reglet.model.Box;

/** Invented data sheets as different makers and programs save them, each page with a word of its own. */
final class Habits {
    static final List<String> ALL = List.of("plain", "turned 90", "turned 180", "turned 270", "cropped", "cropped and turned",
        "mixed sizes",
        "form", "annotated", "script", "owner password", "forbids", "user password", "cut off", "zero pages", "huge page", "large unit",
        "no PDF", "empty", "index lost", "sideways text", "uncompressed", "inherited", "shared list", "picture alone", "negative origin",
        "tiny", "attachment", "dynamic form", "upside down text");
    private static final List<String> UNUSABLE = List.of("forbids", "user password", "cut off", "zero pages", "no PDF", "empty",
        "dynamic form");
    private static final List<String> WORDLESS = List.of("picture alone");

    /**
     * A sheet that was made.
     *
     * @param pages pages that can be bound in; 0 for none
     * @param words the word of each page; "" for none
     */
    record Sheet(Path file, String habit, int pages, List<String> words) {
    }

    private Habits() {
    }

    /** So many sheets in a folder, in all habits by turns. */
    static List<Sheet> make(Path folder, int count) throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String habit = ALL.get(i % ALL.size());
            int pages = habit.equals("zero pages") ? 0 : habit.equals("mixed sizes") ? 4 : 1 + i % 3;
            List<String> words = new ArrayList<>();
            for (int page = 1; page <= pages; page++) {
                words.add("V" + i + "X" + page + "Q");
            }
            Path file = Made.file(folder, String.format(Locale.ROOT, "%03d %s.pdf", i, habit), bytes(habit, words));
            boolean usable = !UNUSABLE.contains(habit);
            sheets.add(new Sheet(file, habit, usable ? pages : 0, WORDLESS.contains(habit) || !usable ? List.of() : words));
        }
        return sheets;
    }

    /** A cover with a link to the word of each page, a divider before each sheet, and a number beside each word. */
    static PackagePlan plan(List<Sheet> sheets, List<Measure> measures) throws IOException {
        List<Path> files = sheets.stream().map(Sheet::file).toList();
        List<List<Spotted>> found = Child.usual().find(files, sheets.stream().map(Sheet::words).toList());
        String[] own = new String[sheets.size() + 1];
        own[0] = "Cover";
        List<PackagePlan.Part> parts = new ArrayList<>(List.of(Made.own("Cover", 1, 1)));
        List<PackagePlan.Link> links = new ArrayList<>();
        int page = 2;
        int number = 0;
        for (int i = 0; i < sheets.size(); i++) {
            own[i + 1] = "Divider " + (i + 1);
            parts.add(Made.own("Divider " + (i + 1), i + 2, 1));
            page++;
            if (measures.get(i).usable()) {
                List<PackagePlan.Spot> spots = new ArrayList<>();
                for (Spotted one : found.get(i)) {
                    spots.add(new PackagePlan.Spot(one.page(), one.box(), "N" + ++number));
                    links.add(new PackagePlan.Link(1, new Box(10, 10 + number, 5, 1), page + one.page() - 1, Optional.of(one.box()), ""));
                }
                int pages = measures.get(i).pages();
                parts.add(new PackagePlan.Part("Sheet " + i, 2, 1, pages, Optional.of(new PackagePlan.Sheet(files.get(i), pages)),
                    "Sheet " + i + ", page {page} of " + pages + " - package page {package page}", spots));
                page += pages;
            }
        }
        return new PackagePlan("Habits", Made.pdf(own), parts, links);
    }

    private static byte[] bytes(String habit, List<String> words) throws IOException {
        switch (habit) {
            case "no PDF":
                return "A word processor's file with a wrong ending.".getBytes(StandardCharsets.UTF_8);
            case "empty":
                return new byte[0];
            default:
                break;
        }
        try (PDDocument document = new PDDocument()) {
            for (String word : words) {
                page(document, habit, word);
            }
            change(document, habit);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out, habit.equals("uncompressed") ? CompressParameters.NO_COMPRESSION : CompressParameters.DEFAULT_COMPRESSION);
            byte[] bytes = out.toByteArray();
            if (habit.equals("cut off")) {
                return Arrays.copyOf(bytes, bytes.length * 2 / 3);
            }
            return habit.equals("index lost") ? indexLost(bytes) : bytes;
        }
    }

    /** The place of the index is wrong, as after an editor that changes line ends. */
    private static byte[] indexLost(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf("startxref");
        return (text.substring(0, at) + "startxref\n7\n%%EOF\n").getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void page(PDDocument document, String habit, String word) throws IOException {
        PDRectangle size = switch (habit) {
            case "mixed sizes" -> List.of(PDRectangle.LETTER, PDRectangle.A4, new PDRectangle(1224, 792), PDRectangle.A3)
                .get(document.getNumberOfPages() % 4);
            case "huge page" -> new PDRectangle(14_400, 14_400);
            case "large unit" -> new PDRectangle(306, 396);
            case "negative origin" -> new PDRectangle(-200, -300, 612, 792);
            case "tiny" -> new PDRectangle(180, 120);
            default -> PDRectangle.LETTER;
        };
        PDPage page = new PDPage(size);
        document.addPage(page);
        if (habit.startsWith("cropped")) {
            page.setCropBox(new PDRectangle(40, 60, 450, 600));
        }
        if (habit.endsWith("turned")) {
            page.setRotation(90);
        } else if (habit.startsWith("turned ")) {
            page.setRotation(Integer.parseInt(habit.substring(7)));
        }
        if (habit.equals("large unit")) {
            page.setUserUnit(2);
        }
        if (habit.equals("picture alone")) {
            fill(document, page);
        } else {
            write(document, page, habit, word);
        }
    }

    private static void fill(PDDocument document, PDPage page) throws IOException {
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            out.setNonStrokingColor(0.8f);
            out.addRect(100, 100, 300, 300);
            out.fill();
        }
    }

    private static void write(PDDocument document, PDPage page, String habit, String word) throws IOException {
        PDRectangle box = page.getCropBox();
        float size = box.getWidth() < 200 ? 9 : 11;
        float x = box.getLowerLeftX() + box.getWidth() * 0.35f;
        float y = box.getLowerLeftY() + box.getHeight() * 0.6f;
        Matrix place = switch (habit) {
            case "sideways text" -> new Matrix(0, 1, -1, 0, x, y);
            case "upside down text" -> new Matrix(-1, 0, 0, -1, x, y);
            default -> new Matrix(1, 0, 0, 1, x, y);
        };
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, false, true)) {
            out.beginText();
            out.setFont(new PDType1Font(FontName.HELVETICA), size);
            out.setTextMatrix(place);
            out.showText("Weight " + word + " lb");
            out.endText();
        }
    }

    private static void change(PDDocument document, String habit) throws IOException {
        switch (habit) {
            case "form" -> form(document);
            case "annotated" -> annotate(document);
            case "script" -> document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert('x')"));
            case "owner password" -> protect(document, "owner", "", true);
            case "forbids" -> protect(document, "owner", "", false);
            case "user password" -> protect(document, "owner", "user", true);
            case "inherited" -> inherit(document);
            case "shared list" -> document.getPages().forEach(page -> page.getCOSObject().setItem(COSName.CONTENTS,
                new COSArray(List.of(page.getCOSObject().getItem(COSName.CONTENTS)))));
            case "attachment" -> document.getDocumentCatalog().getCOSObject().setItem(COSName.AF,
                new COSArray(List.of(new PDStream(document,
                new ByteArrayInputStream(new byte[100])).getCOSObject())));
            case "dynamic form" -> {
                PDAcroForm form = new PDAcroForm(document);
                document.getDocumentCatalog().setAcroForm(form);
                form.getCOSObject().setItem(COSName.XFA, new COSString("<xdp/>"));
            }
            default -> { }
        }
    }

    private static void inherit(PDDocument document) {
        COSDictionary first = document.getPage(0).getCOSObject();
        COSDictionary above = first.getCOSDictionary(COSName.PARENT);
        above.setItem(COSName.MEDIA_BOX, first.getItem(COSName.MEDIA_BOX));
        document.getPages().forEach(page -> page.getCOSObject().removeItem(COSName.MEDIA_BOX));
    }

    private static void protect(PDDocument document, String owner, String user, boolean assembling) throws IOException {
        AccessPermission permission = new AccessPermission();
        permission.setCanModify(false);
        permission.setCanAssembleDocument(assembling);
        StandardProtectionPolicy policy = new StandardProtectionPolicy(owner, user, permission);
        policy.setEncryptionKeyLength(128);
        document.protect(policy);
    }

    private static void form(PDDocument document) throws IOException {
        PDAcroForm form = new PDAcroForm(document);
        document.getDocumentCatalog().setAcroForm(form);
        PDResources resources = new PDResources();
        resources.put(COSName.getPDFName("Helv"), new PDType1Font(FontName.HELVETICA));
        form.setDefaultResources(resources);
        form.setDefaultAppearance("/Helv 10 Tf 0 g");
        PDTextField field = new PDTextField(form);
        field.setPartialName("color");
        form.getFields().add(field);
        PDAnnotationWidget widget = field.getWidgets().get(0);
        widget.setRectangle(new PDRectangle(72, 300, 200, 20));
        widget.setPage(document.getPage(0));
        document.getPage(0).getAnnotations().add(widget);
        field.setValue("chosen by hand");
    }

    private static void annotate(PDDocument document) throws IOException {
        PDAnnotationLink link = new PDAnnotationLink();
        link.setRectangle(new PDRectangle(10, 10, 50, 50));
        PDActionURI uri = new PDActionURI();
        uri.setURI("https://sheet.invalid/");
        link.setAction(uri);
        PDAnnotationText note = new PDAnnotationText();
        note.setRectangle(new PDRectangle(100, 10, 20, 20));
        note.setContents("a note");
        document.getPage(0).setAnnotations(List.of(link, note));
    }
}
