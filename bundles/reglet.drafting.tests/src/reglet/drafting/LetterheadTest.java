package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.junit.jupiter.api.Test;
import org.librepdf.openpdf.fonts.Liberation;

import reglet.drafting.PdfFonts.Face;
import reglet.model.Office;
import reglet.model.SectionDocument;
import reglet.model.UnusableInput;

class LetterheadTest {
    private static final String HEADER = "${office.name} <> ${job.title}\n\n${issue}<#if paged>, sheet ${page} of ${pages}</#if>";
    private static final String COVER = "# ${section.title}\n\nFor *${job.title}*\n\n- one\n- two\n";

    private static Office office(Map<String, String> templates) throws Exception {
        BufferedImage picture = new BufferedImage(300, 90, BufferedImage.TYPE_INT_ARGB);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", png);
        return new Office("office", "Quay & <Field>", List.of("14 Lantern Row"),
            Optional.of(new Office.Picture("head.png", png.toByteArray())), Office.Paper.A4, Map.of(Office.Face.REGULAR,
            new Office.Font("own.ttf", "Liberation Sans", PdfFonts.file(Face.SANS))), templates);
    }

    private static SectionDocument section() throws UnusableInput {
        return Drafter.draft(Sample.small().assembly(), Sample.SECTION, "100% set");
    }

    private static Letterhead letterhead(boolean paged) throws Exception {
        return Letterhead.of(office(Map.of(Office.HEADER, HEADER, Office.COVER, COVER)), section(), paged);
    }

    @Test
    void withoutAnOfficeNothingIsAdded() throws Exception {
        assertEquals(Letterhead.plain(section()).head(), Letterhead.of(Office.none(), section(), true).head());
        assertArrayEquals(Docx.of(section()), Docx.of(section(), Letterhead.of(Office.none(), section(), true)));
    }

    @Test
    void thePdfHasTheOfficesCoverPaperFontAndHead() throws Exception {
        byte[] made = Pdf.of(section(), letterhead(true));
        assertArrayEquals(made, Pdf.of(section(), letterhead(true)));
        try (PDDocument pdf = Loader.loadPDF(made)) {
            assertEquals(595, pdf.getPage(0).getMediaBox().getWidth());
            assertEquals(842, pdf.getPage(0).getMediaBox().getHeight());
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            String cover = first.getText(pdf).replaceAll("\\s+", " ");
            assertTrue(cover.contains("Quay & <Field> <> Harbour clinic"), cover);
            assertTrue(cover.contains("Issue: 100% set, sheet 1 of " + pdf.getNumberOfPages()), cover);
            assertTrue(cover.contains("Manufactured Stone Masonry For Harbour clinic • one • two"), cover);
            assertFalse(cover.contains("PART 1"), cover);
            for (var page : pdf.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).getName().endsWith("LiberationSans"), "the office's font alone");
                }
            }
        }
    }

    @Test
    void theWordProcessorsFileHasThemAsWell() throws Exception {
        byte[] made = Docx.of(section(), letterhead(true));
        assertArrayEquals(made, Docx.of(section(), letterhead(true)));
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(made))) {
            List<String> texts = docx.getParagraphs().stream().map(XWPFParagraph::getText).collect(Collectors.toList());
            assertEquals(List.of("", "Quay & <Field>", "14 Lantern Row", "Manufactured Stone Masonry", "For Harbour clinic", "one", "two"),
                texts.subList(0, 7));
            assertEquals(1, docx.getAllPictures().size());
            String head = docx.getHeaderList().get(0)._getHdrFtr().xmlText();
            assertTrue(head.contains("PAGE") && head.contains("NUMPAGES"), head);
            assertEquals(BigInteger.valueOf(11906), docx.getDocument().getBody().getSectPr().getPgSz().getW());
            assertFalse(docx.getStyles().getStyle("Normal").getCTStyle().xmlText().contains("Liberation Serif"), "the office's font alone");
        }
    }

    @Test
    void thePageForTheScreenHasNoNumbersOfSheetsAndNothingInjected() throws Exception {
        String html = Html.of(section(), letterhead(false));
        assertTrue(html.contains("<p>Quay &amp; &lt;Field&gt; &lt;&gt; Harbour clinic</p>"), html);
        assertTrue(html.contains("<p>Issue: 100% set</p>") && !html.contains("sheet"));
        assertTrue(html.contains("src=\"data:image/png;base64,"));
        assertTrue(html.contains("size: A4"));
    }

    @Test
    void htmlInATemplateIsRefused() throws Exception {
        Office office = office(Map.of(Office.COVER, "# x\n\n<script>alert(1)</script>\n"));
        String message = assertThrows(UnusableInput.class, () -> Letterhead.of(office, section(), true)).getMessage();
        assertTrue(message.startsWith("office/cover.md.ftl: prints HTML or a picture: <script>"), message);
    }

    @Test
    void aFontThatLacksASignOfTheSectionIsRefused() throws Exception {
        byte[] mono;
        try (InputStream in = Liberation.class.getResourceAsStream("/liberation/LiberationMono-Regular.ttf")) {
            mono = in.readAllBytes();
        }
        Font usual = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(PdfFonts.file(Face.TEXT)));
        Font narrower = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(mono));
        int sign = IntStream.range(0xA0, 0xFFFF).filter(one -> Character.isLetter(one) && usual.canDisplay(one)
            && !narrower.canDisplay(one))
            .findFirst().orElseThrow();
        Office office = new Office("office", "Quay", List.of(), Optional.empty(), Office.Paper.LETTER, Map.of(Office.Face.REGULAR,
            new Office.Font("mono.ttf", "Mono", mono)), Map.of());
        String message = assertThrows(UnusableInput.class, () -> Letterhead.of(office, odd(Character.toString(sign)), true)).getMessage();
        assertTrue(message.startsWith("office/mono.ttf: has no \"" + Character.toString(sign) + "\""), message);
        // What the usual fonts lack too is shown to be missing, as without an office.
        assertEquals(office, Letterhead.of(office, odd("日"), true).office());
    }

    private static SectionDocument odd(String sign) throws UnusableInput {
        Sample sample = new Sample().wall("W1", "28 ft", "lath=metal-2.5").uses("odd", "lath", "Text " + sign + " end.", "W1");
        return Drafter.draft(sample.assembly(), Sample.SECTION, "");
    }

    @Test
    void aDamagedPictureIsRefusedWithItsPlace() throws Exception {
        Office office = office(Map.of());
        Office damaged = new Office(office.folder(), office.name(), office.address(), Optional.of(new Office.Picture("head.png",
            new byte[] {1, 2, 3})), office.paper(), office.fonts(), Map.of());
        assertTrue(assertThrows(UnusableInput.class, () -> Letterhead.of(damaged, section(), true)).getMessage()
            .startsWith("office/head.png: is damaged"));
    }
}
