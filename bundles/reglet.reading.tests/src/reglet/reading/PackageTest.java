package reglet.reading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionLaunch;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.action.PDPageAdditionalActions;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationRubberStamp;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Box;

/** Packages put together from made sheets and read back. */
class PackageTest {
    @TempDir
    Path folder;

    /** Cover, divider, a sheet of two pages, divider, a sheet of one page, and a last page. */
    private PackagePlan plan() throws IOException {
        Path first = Made.file(folder, "first.pdf", Made.pdf("first of A", "second of A"));
        Path second = Made.file(folder, "second sheet.pdf", Made.pdf("only of B"));
        return new PackagePlan("Harbour clinic, submittal 04-73-00-01", Made.pdf("Cover", "Divider A", "Divider B", "Missing"),
            List.of(Made.own("Transmittal", 1, 1), Made.own("Divider A", 2, 1), Made.sheet("Sheet 1", 2, first),
                Made.own("Divider B", 3, 1), Made.sheet("Sheet 2", 1, second), Made.own("Missing", 4, 1)),
            List.of(new PackagePlan.Link(1, new Box(72, 100, 200, 14), 6), new PackagePlan.Link(3, new Box(72, 50, 20, 10), 3)));
    }

    @Test
    void pagesFollowThePlanAndForeignPagesCarryTheirMark() throws IOException {
        try (PDDocument bound = Loader.loadPDF(Child.usual().assemble(plan()))) {
            List<String> texts = new ArrayList<>();
            for (int page = 1; page <= bound.getNumberOfPages(); page++) {
                texts.add(Made.text(bound, page));
            }
            assertEquals(List.of("Cover", "Divider A",
                "first of A Sheet 1, page 1 of 2 · Submittal 04-73-00-01 · Package page 3",
                "second of A Sheet 1, page 2 of 2 · Submittal 04-73-00-01 · Package page 4", "Divider B",
                "only of B Sheet 2, page 1 of 1 · Submittal 04-73-00-01 · Package page 6", "Missing"), texts);
            assertEquals("Harbour clinic, submittal 04-73-00-01", bound.getDocumentInformation().getTitle());
        }
    }

    @Test
    void aFlagStandsAtTheEdgeOfItsPageLevelWithItsPlaceAndLeavesTheRestAlone() throws IOException {
        PackagePlan plain = plan();
        PackagePlan flagged = new PackagePlan(plain.title(), plain.ownPages(), plain.parts(), plain.links(),
            List.of(new PackagePlan.Flag(4, new Box(72, 200, 100, 20), "7: falls short")));
        byte[] bytes = Child.usual().assemble(flagged);
        assertArrayEquals(bytes, Child.usual().assemble(flagged));
        try (PDDocument bound = Loader.loadPDF(bytes)) {
            String[] place = Made.place(bound, 4, "7: falls short").split(" ");
            assertTrue(Integer.parseInt(place[0]) > 500, place[0]);
            assertEquals(213, Integer.parseInt(place[1]), 5);
            assertEquals("", Made.place(bound, 3, "7: falls short"));
            assertTrue(Made.text(bound, 4).startsWith("second of A"), Made.text(bound, 4));
        }
    }

    @Test
    void pagesThatStandForABrokenSheetBearNoFlag() throws IOException {
        Path broken = Made.file(folder, "broken.pdf", new byte[] {1, 2, 3});
        PackagePlan plan = new PackagePlan("Package", Made.pdf("Cover"), List.of(Made.own("Cover", 1, 1), Made.sheet("Sheet 1", 1, broken)),
            List.of(), List.of(new PackagePlan.Flag(2, new Box(72, 200, 100, 20), "7: falls short")));
        try (PDDocument bound = Loader.loadPDF(Child.usual().assemble(plan))) {
            assertTrue(Made.text(bound, 2).contains("could not be bound in"));
            assertEquals("", Made.place(bound, 2, "7: falls short"));
        }
    }

    @Test
    void aFlagOnNoPageIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new PackagePlan("Package", new byte[0], List.of(), List.of(),
            List.of(new PackagePlan.Flag(1, new Box(0, 0, 1, 1), "1"))));
    }

    @Test
    void bookmarksStandInTwoLevelsAndLeadToTheFirstPageOfTheirPart() throws IOException {
        try (PDDocument bound = Loader.loadPDF(Child.usual().assemble(plan()))) {
            List<String> bookmarks = new ArrayList<>();
            for (PDOutlineItem item : bound.getDocumentCatalog().getDocumentOutline().children()) {
                bookmarks.add(item.getTitle() + " " + (((PDPageDestination) item.getDestination()).retrievePageNumber() + 1));
                for (PDOutlineItem below : item.children()) {
                    bookmarks.add("- " + below.getTitle() + " " + (((PDPageDestination) below.getDestination()).retrievePageNumber() + 1));
                }
            }
            assertEquals(List.of("Transmittal 1", "Divider A 2", "- Sheet 1 3", "Divider B 5", "- Sheet 2 6", "Missing 7"), bookmarks);
        }
    }

    @Test
    void linksOfOwnPagesLeadToPagesOfThePackage() throws IOException {
        try (PDDocument bound = Loader.loadPDF(Child.usual().assemble(plan()))) {
            PDAnnotationLink cover = (PDAnnotationLink) bound.getPage(0).getAnnotations().get(0);
            assertEquals(5, ((PDPageDestination) ((PDActionGoTo) cover.getAction()).getDestination()).retrievePageNumber());
            PDRectangle box = cover.getRectangle();
            assertEquals(List.of(72f, 792f - 114, 200f, 14f),
                List.of(box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight()));
            PDAnnotationLink divider = (PDAnnotationLink) bound.getPage(4).getAnnotations().get(0);
            assertEquals(2, ((PDPageDestination) ((PDActionGoTo) divider.getAction()).getDestination()).retrievePageNumber());
        }
    }

    @Test
    void linksThatLeadOutOfThePackageAreRefusedBeforeAnyWork() {
        List<PackagePlan.Part> parts = List.of(Made.own("Cover", 1, 1));
        assertThrows(IllegalArgumentException.class,
            () -> new PackagePlan("p", new byte[0], parts, List.of(new PackagePlan.Link(1, new Box(0, 0, 1, 1), 2))));
        assertThrows(IllegalArgumentException.class,
            () -> new PackagePlan("p", new byte[0], parts, List.of(new PackagePlan.Link(2, new Box(0, 0, 1, 1), 1))));
    }

    @Test
    void samePlanAndFilesGiveSameBytesAndAnotherSheetGivesAnotherIdentity() throws IOException {
        PackagePlan plan = plan();
        byte[] once = Child.usual().assemble(plan);
        assertArrayEquals(once, Child.usual().assemble(plan));
        Made.file(folder, "first.pdf", Made.pdf("first of A", "second of Z"));
        try (PDDocument before = Loader.loadPDF(once); PDDocument after = Loader.loadPDF(Child.usual().assemble(plan))) {
            assertFalse(before.getDocument().getDocumentID().getObject(0).equals(after.getDocument().getDocumentID().getObject(0)));
        }
    }

    @Test
    void marksAreUprightAtTheFootOfTurnedAndSmallPages() throws IOException {
        int[] turns = {0, 90, 180, 270};
        Path sheet = Made.file(folder, "turned.pdf", Made.pdf(document -> {
            for (int i = 0; i < turns.length; i++) {
                document.getPage(i).setRotation(turns[i]);
                document.getPage(i).setCropBox(new PDRectangle(20, 30, 400, 500));
            }
            document.getPage(4).setMediaBox(new PDRectangle(150, 100));
            document.getPage(5).setUserUnit(2);
        }, "a", "b", "c", "d", "e", "f"));
        try (PDDocument bound = Made.bound(sheet, 6)) {
            for (int i = 0; i < 4; i++) {
                PDPage page = bound.getPage(i + 1);
                assertEquals(turns[i], page.getRotation());
                assertEquals("20 30 400 500", box(page.getCropBox()));
                // 14 points above the foot of the page as shown
                boolean lies = turns[i] % 180 != 0;
                String place = Made.place(bound, i + 2, "Sheet 1");
                assertEquals((lies ? 400 : 500) - 14, Integer.parseInt(place.split(" ")[1]), 1, "turned " + turns[i]);
                assertEquals(middle(lies ? 500 : 400, Made.text(bound, i + 2)), Integer.parseInt(place.split(" ")[0]), 2,
                    "turned " + turns[i]);
            }
            assertEquals("6 86", Made.place(bound, 6, "Sheet 1"), "shrunk to the width of a small page");
            // a unit of two points: the foot is 7 units above the edge of a page of 792
            assertEquals("785", Made.place(bound, 7, "Sheet 1").split(" ")[1]);
            assertEquals(2f, bound.getPage(6).getUserUnit());
        }
    }

    /** Where a mark in the middle of a page starts; width by the font that is metric-compatible with the one used. */
    private static int middle(int wide, String text) throws IOException {
        String mark = text.substring(text.indexOf("Sheet 1"));
        return Math.round((wide - new PDType1Font(FontName.HELVETICA).getStringWidth(mark) / 1000 * 8) / 2);
    }

    private static String box(PDRectangle box) {
        return Math.round(box.getLowerLeftX()) + " " + Math.round(box.getLowerLeftY()) + " " + Math.round(box.getWidth()) + " "
            + Math.round(box.getHeight());
    }

    @Test
    void nothingThatActsOrIsAttachedComesAlong() throws IOException {
        Path sheet = Made.file(folder, "active.pdf", Made.pdf(PackageTest::arm, "Payload page"));
        String before = names(Loader.loadPDF(sheet.toFile()));
        for (String armed : List.of("OpenAction", "JavaScript", "Launch", "URI", "AA", "EmbeddedFile", "Filespec", "PieceInfo",
            "Metadata")) {
            assertTrue(before.contains("/" + armed + " "), armed + " is missing from the test's own sheet");
        }
        try (PDDocument bound = Made.bound(sheet, 1)) {
            assertTrue(Made.text(bound, 2).startsWith("Payload page"));
            String after = names(bound);
            for (String armed : List.of("OpenAction", "JavaScript", "JS", "Launch", "URI", "AA", "EmbeddedFile", "Filespec", "PieceInfo",
                "Metadata", "AcroForm")) {
                assertFalse(after.contains("/" + armed + " "), armed);
            }
        }
    }

    private static void arm(PDDocument document) throws IOException {
        PDPage page = document.getPage(0);
        PDActionJavaScript script = new PDActionJavaScript("app.alert('x')");
        document.getDocumentCatalog().setOpenAction(script);
        PDPageAdditionalActions actions = new PDPageAdditionalActions();
        PDActionLaunch launch = new PDActionLaunch();
        launch.setF("calculator");
        actions.setO(launch);
        page.setActions(actions);
        PDAnnotationLink link = new PDAnnotationLink();
        link.setRectangle(new PDRectangle(10, 10, 50, 50));
        PDActionURI uri = new PDActionURI();
        uri.setURI("https://sheet.invalid/");
        link.setAction(uri);
        page.setAnnotations(List.of(link));
        PDComplexFileSpecification file = new PDComplexFileSpecification();
        file.setFile("virus.txt");
        PDEmbeddedFile embedded = new PDEmbeddedFile(document, new ByteArrayInputStream(new byte[10]));
        embedded.getCOSObject().setItem(COSName.TYPE, COSName.getPDFName("EmbeddedFile"));
        file.setEmbeddedFile(embedded);
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(Map.of("virus", file));
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(names);
        page.getCOSObject().setItem(COSName.AF, new COSArray(List.of(file.getCOSObject())));
        page.getCOSObject().setItem(COSName.METADATA, new PDStream(document, new ByteArrayInputStream(new byte[5])));
        page.getCOSObject().setItem(COSName.getPDFName("PieceInfo"), new COSDictionary());
    }

    /** All names used in a document, in one line. */
    private static String names(PDDocument document) {
        StringBuilder names = new StringBuilder("/");
        document.getDocument().getXrefTable().keySet().stream().sorted().forEach(key -> names
            .append(names(document.getDocument().getObjectFromPool(key).getObject())));
        return names.append(' ').toString();
    }

    private static String names(Object base) {
        StringBuilder names = new StringBuilder();
        if (base instanceof COSDictionary dictionary) {
            dictionary.entrySet().forEach(entry -> names.append('/').append(entry.getKey().getName()).append(' ')
                .append(names(entry.getValue())));
        } else if (base instanceof COSArray array) {
            array.forEach(item -> names.append(names(item)));
        } else if (base instanceof COSName name) {
            names.append('/').append(name.getName()).append(' ');
        }
        return names.toString();
    }

    @Test
    void whatAFormShowsIsDrawnOntoThePage() throws IOException {
        Path sheet = Made.file(folder, "form.pdf", Made.pdf(document -> form(document, "filled in by hand"), "Form"));
        try (PDDocument bound = Made.bound(sheet, 1)) {
            assertTrue(Made.text(bound, 2).contains("filled in by hand"), Made.text(bound, 2));
            assertTrue(bound.getPage(1).getAnnotations().isEmpty());
            assertEquals(null, bound.getDocumentCatalog().getAcroForm());
            int y = Integer.parseInt(Made.place(bound, 2, "filled").split(" ")[1]);
            assertTrue(y > 792 - 520 && y < 792 - 500, "within the field, but at " + y);
        }
    }

    /** A text field 20 high, 500 above the foot, with an XFA part beside it as a hybrid form has. */
    private static void form(PDDocument document, String value) throws IOException {
        PDAcroForm form = new PDAcroForm(document);
        document.getDocumentCatalog().setAcroForm(form);
        PDResources resources = new PDResources();
        resources.put(COSName.getPDFName("Helv"), new PDType1Font(FontName.HELVETICA));
        form.setDefaultResources(resources);
        form.setDefaultAppearance("/Helv 10 Tf 0 g");
        form.getCOSObject().setItem(COSName.XFA, new PDStream(document, new ByteArrayInputStream("<xdp/>".getBytes())));
        PDTextField field = new PDTextField(form);
        field.setPartialName("weight");
        form.getFields().add(field);
        PDAnnotationWidget widget = field.getWidgets().get(0);
        widget.setRectangle(new PDRectangle(72, 500, 200, 20));
        widget.setPage(document.getPage(0));
        document.getPage(0).getAnnotations().add(widget);
        field.setValue(value);
    }

    @Test
    void aStampIsDrawnWhereItStoodAndAHiddenOneIsNot() throws IOException {
        Path sheet = Made.file(folder, "stamped.pdf", Made.pdf(document -> {
            PDAnnotationRubberStamp shown = stamp(document, "RECEIVED", new PDRectangle(300, 400, 200, 40));
            PDAnnotationRubberStamp hidden = stamp(document, "SECRET", new PDRectangle(300, 200, 200, 40));
            hidden.setHidden(true);
            document.getPage(0).setAnnotations(List.of(shown, hidden));
        }, "Sheet"));
        try (PDDocument bound = Made.bound(sheet, 1)) {
            // the appearance is 100 by 20 with the text at 10, 5: doubled and moved to 300, 400
            assertEquals("320 " + (792 - 410), Made.place(bound, 2, "RECEIVED"));
            assertEquals("", Made.place(bound, 2, "SECRET"));
        }
    }

    private static PDAnnotationRubberStamp stamp(PDDocument document, String text, PDRectangle at) throws IOException {
        PDAppearanceStream appearance = new PDAppearanceStream(document);
        appearance.setBBox(new PDRectangle(100, 20));
        PDResources resources = new PDResources();
        resources.put(COSName.getPDFName("A"), new PDType1Font(FontName.HELVETICA));
        appearance.setResources(resources);
        try (var out = appearance.getStream().createOutputStream()) {
            out.write(("BT /A 8 Tf 10 5 Td (" + text + ") Tj ET").getBytes());
        }
        PDAppearanceDictionary appearances = new PDAppearanceDictionary();
        appearances.setNormalAppearance(appearance);
        PDAnnotationRubberStamp stamp = new PDAnnotationRubberStamp();
        stamp.setRectangle(at);
        stamp.setAppearance(appearances);
        return stamp;
    }

    @Test
    void fontsAndSizesThatStandWithTheWholeSheetStayWithItsPages() throws IOException {
        Path sheet = Made.file(folder, "inherited.pdf", Made.pdf(document -> {
            COSDictionary page = document.getPage(0).getCOSObject();
            COSDictionary above = page.getCOSDictionary(COSName.PARENT);
            for (COSName key : List.of(COSName.RESOURCES, COSName.MEDIA_BOX)) {
                above.setItem(key, page.getItem(key));
                page.removeItem(key);
            }
            above.setInt(COSName.ROTATE, 90);
        }, "Inherited"));
        try (PDDocument bound = Made.bound(sheet, 1)) {
            // the text lies on its side, so the reader gives a line for each letter
            assertTrue(Made.text(bound, 2).replace(" ", "").contains("Inherited"), Made.text(bound, 2));
            assertEquals("0 0 612 792", box(bound.getPage(1).getMediaBox()));
            assertEquals(90, bound.getPage(1).getRotation());
        }
    }

    @Test
    void pagesThatShareTheirContentGetTheirOwnMarks() throws IOException {
        Path sheet = Made.file(folder, "shared.pdf", Made.pdf(document -> {
            COSArray list = new COSArray(List.of(document.getPage(0).getCOSObject().getItem(COSName.CONTENTS)));
            list.setDirect(false);
            for (PDPage page : document.getPages()) {
                page.getCOSObject().setItem(COSName.CONTENTS, list);
                page.setResources(document.getPage(0).getResources());
            }
        }, "Twice", "replaced"));
        try (PDDocument bound = Made.bound(sheet, 2)) {
            assertEquals("Twice Sheet 1, page 1 of 2 · Submittal 04-73-00-01 · Package page 2", Made.text(bound, 2));
            assertEquals("Twice Sheet 1, page 2 of 2 · Submittal 04-73-00-01 · Package page 3", Made.text(bound, 3));
        }
    }

    @Test
    void layersThatTheSheetHidesStayHidden() throws IOException {
        Path sheet = Made.file(folder, "layers.pdf", Made.pdf(document -> {
            PDOptionalContentProperties layers = new PDOptionalContentProperties();
            document.getDocumentCatalog().setOCProperties(layers);
            for (String name : List.of("seen", "hidden")) {
                PDOptionalContentGroup layer = new PDOptionalContentGroup(name);
                layers.addGroup(layer);
                layers.setGroupEnabled(layer, name.equals("seen"));
                try (PDPageContentStream out = new PDPageContentStream(document, document.getPage(0),
                    PDPageContentStream.AppendMode.APPEND, false, true)) {
                    out.beginMarkedContent(COSName.OC, layer);
                    out.addRect(0, 0, 10, 10);
                    out.fill();
                    out.endMarkedContent();
                }
            }
        }, "Layers"));
        try (PDDocument bound = Made.bound(sheet, 1)) {
            PDOptionalContentProperties layers = bound.getDocumentCatalog().getOCProperties();
            assertTrue(layers.isGroupEnabled("seen"));
            assertFalse(layers.isGroupEnabled("hidden"));
        }
    }

    @Test
    void aSheetThatBrokeSinceIsReplacedByPagesThatSayWhyAndNumbersStay() throws IOException {
        PackagePlan plan = plan();
        Made.file(folder, "first.pdf", "no PDF any more".getBytes());
        Made.file(folder, "second sheet.pdf", Made.pdf("one", "and another"));
        try (PDDocument bound = Loader.loadPDF(Child.usual().assemble(plan))) {
            assertEquals(plan.total(), bound.getNumberOfPages());
            assertEquals("This page stands for page 2 of 2 of the sheet first.pdf (Sheet 1), which could not be bound in: it is no PDF. "
                + "Sheet 1, page 2 of 2 · Submittal 04-73-00-01 · Package page 4", Made.text(bound, 4));
            assertTrue(Made.text(bound, 6).contains("could not be bound in: it has changed: it has 2 pages now and had 1 page."),
                Made.text(bound, 6));
        }
    }

    @Test
    void threeHundredPagesLargerThanTheProcessesMemoryAreBound() throws IOException {
        Random random = new Random(1);
        List<PackagePlan.Part> parts = new ArrayList<>(List.of(Made.own("Cover", 1, 1)));
        for (int i = 1; i <= 10; i++) {
            String[] texts = new String[30];
            java.util.Arrays.setAll(texts, page -> "page " + page);
            Path sheet = Made.file(folder, "large-" + i + ".pdf", Made.pdf(document -> {
                for (PDPage page : document.getPages()) {
                    byte[] noise = new byte[300_000];
                    random.nextBytes(noise);
                    PDStream picture = new PDStream(document, new ByteArrayInputStream(noise));
                    picture.getCOSObject().setItem(COSName.SUBTYPE, COSName.FORM);
                    COSDictionary pictures = new COSDictionary();
                    pictures.setItem("Noise", picture);
                    page.getResources().getCOSObject().setItem(COSName.XOBJECT, pictures);
                }
            }, texts));
            parts.add(Made.sheet("Sheet " + i, 30, sheet));
        }
        PackagePlan plan = new PackagePlan("Large", Made.pdf("Cover"), parts, List.of());
        byte[] bytes = Child.of(ChildMain.class, new Child.Limits(64, Duration.ofSeconds(60), Duration.ofSeconds(120), 1 << 30))
            .assemble(plan);
        assertTrue(bytes.length > 80 << 20, "larger than the heap of 64 MB, but " + bytes.length);
        try (PDDocument bound = Loader.loadPDF(bytes)) {
            assertEquals(301, bound.getNumberOfPages());
            assertEquals("page 29 Sheet 10, page 30 of 30 · Submittal 04-73-00-01 · Package page 301", Made.text(bound, 301));
        }
    }
}
