package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.Test;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfWriter;

import reglet.drafting.Frame.Paper;
import reglet.model.Drawing;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;

class DrawingPdfTest {
    private static final Drawing WIDE = new Drawing("sill", "Sill of opening", "W2", 5,
        List.of(new Area("stone", DrawingSample.points(0, 0, 1200, 0, 1200, 200, 0, 200), Hatch.STONE, Pen.THIN)), List.of());

    @Test
    void eachDrawingHasASheetOfThePaperAskedFor() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(DrawingPdf.of(List.of(DrawingSample.base(), WIDE), DrawingSample.FRAME))) {
            assertEquals(2, pdf.getNumberOfPages());
            // Letter paper is 8 1/2 in by 11 in of 72 points each.
            assertEquals(List.of(612f, 792f), size(pdf.getPage(0)));
            assertEquals(List.of(792f, 612f), size(pdf.getPage(1)));
        }
        Frame a4 = Frame.of("Job", "", "", Paper.A4, "");
        try (PDDocument pdf = Loader.loadPDF(DrawingPdf.of(List.of(DrawingSample.base()), a4))) {
            assertEquals(210 / 25.4 * 72, pdf.getPage(0).getMediaBox().getWidth(), 0.01);
        }
    }

    @Test
    void textIsReadBack() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(DrawingPdf.of(List.of(DrawingSample.base(), WIDE), DrawingSample.FRAME))) {
            String first = text(pdf, 1);
            for (String said : List.of("Base of wall at grade", "Scale 1:5", "page 1 of 2", "lb/yd²", "Treated sill plate", "5-1/2 in",
                DrawingSample.CAUTION)) {
                assertTrue(first.contains(said), said + " in " + first);
            }
            assertTrue(text(pdf, 2).contains("Sill of opening") && text(pdf, 2).contains("page 2 of 2"));
            assertEquals("Sill of opening", pdf.getDocumentCatalog().getDocumentOutline().getFirstChild().getNextSibling().getTitle());
        }
    }

    @Test
    void fontsAreEmbedded() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(DrawingPdf.of(List.of(DrawingSample.base()), DrawingSample.FRAME))) {
            int fonts = 0;
            for (COSName name : pdf.getPage(0).getResources().getFontNames()) {
                assertTrue(pdf.getPage(0).getResources().getFont(name).isEmbedded(), name.getName());
                fonts++;
            }
            assertEquals(2, fonts);
        }
    }

    @Test
    void sameDrawingsGiveTheSameBytes() {
        List<Drawing> drawings = List.of(DrawingSample.base(), WIDE);
        assertArrayEquals(DrawingPdf.of(drawings, DrawingSample.FRAME), DrawingPdf.of(drawings, DrawingSample.FRAME));
    }

    @Test
    void noDrawingIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> DrawingPdf.of(List.of(), DrawingSample.FRAME));
    }

    @Test
    void drawingStandsInItsPlaceOnAPageOfAnotherPaper() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Document document = new Document(PdfSheets.UPRIGHT);
        PdfWriter writer = PdfWriter.getInstance(document, out);
        document.open();
        DrawingPdf.draw(writer.getDirectContent(), new PdfFonts(), DrawingSample.base(), 72, 100, 470, 400);
        document.close();
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            PDFTextStripperByArea stripper = new PDFTextStripperByArea();
            stripper.addRegion("place", new java.awt.geom.Rectangle2D.Double(72, 792 - 500, 470, 400));
            stripper.extractRegions(pdf.getPage(0));
            String inside = stripper.getTextForRegion("place").replaceAll("\\s+", "");
            assertEquals(new PDFTextStripper().getText(pdf).replaceAll("\\s+", "").length(), inside.length(), "nothing stands outside");
            assertTrue(inside.contains("Baseofwallatgrade") && inside.contains("Scale1:10"), inside);
        }
    }

    private static List<Float> size(PDPage page) {
        return List.of((float) Math.round(page.getMediaBox().getWidth()), (float) Math.round(page.getMediaBox().getHeight()));
    }

    private static String text(PDDocument pdf, int page) throws Exception {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(pdf).replaceAll("\\s+", " ");
    }
}
