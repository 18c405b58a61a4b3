package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Set;

import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.wp.usermodel.HeaderFooterType;
import org.apache.poi.xwpf.usermodel.IRunBody;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTHyperlink;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTNumbering;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageSz;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSdtRun;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSimpleField;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.NumberingDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STFldCharType;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;

/**
 * A section as a word processor's file. Parts, articles and paragraphs are numbered by one list of seven levels, so that
 * they count on when somebody edits; each paragraph is a bookmark; references to articles are fields; phrases made from
 * requirements are content controls tagged with their slot. The same bytes for the same section.
 */
public final class Docx {
    private static final int TWIPS_PER_INCH = 1440;
    private static final int LONGEST_BOOKMARK = 40;

    private final SectionDocument section;
    private final Set<String> targets;
    private final XWPFDocument document = new XWPFDocument();
    private long bookmarks;

    private Docx(SectionDocument section) {
        this.section = section;
        this.targets = Papers.targets(section);
    }

    public static byte[] of(SectionDocument section) {
        try {
            Docx docx = new Docx(section);
            docx.write();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            docx.document.write(out);
            docx.document.close();
            return SameBytes.archive(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XmlException e) {
            throw new IllegalStateException(e);
        }
    }

    private void write() throws XmlException {
        document.createStyles().setStyles(StylesDocument.Factory.parse(DocxParts.styles()).getStyles());
        numbering();
        properties();
        edges();
        paragraph("SectionNumber").createRun().setText("SECTION " + section.number());
        paragraph("SectionTitle").createRun().setText(section.title());
        if (!section.note().isEmpty()) {
            paragraph("JobNote").createRun().setText(section.note());
        }
        section.parts().forEach(this::part);
        // The end mark never stands alone on a page.
        document.getParagraphArray(document.getParagraphs().size() - 1).setKeepNext(true);
        paragraph("EndOfSection").createRun().setText(Papers.end(section));
        if (!section.cautions().isEmpty()) {
            paragraph("CautionTitle").createRun().setText(Papers.CAUTIONS);
            section.cautions().forEach(caution -> listed("Caution", DocxParts.CAUTION_LIST, 0).createRun().setText(caution));
        }
    }

    private void numbering() throws XmlException {
        CTNumbering parsed = NumberingDocument.Factory.parse(DocxParts.numbering()).getNumbering();
        XWPFNumbering numbering = document.createNumbering();
        for (CTAbstractNum list : parsed.getAbstractNumArray()) {
            numbering.addAbstractNum(new XWPFAbstractNum(list));
        }
        for (long id = DocxParts.SECTION_LIST; id <= DocxParts.CAUTION_LIST; id++) {
            numbering.addNum(BigInteger.valueOf(id), BigInteger.valueOf(id));
        }
    }

    private void properties() {
        POIXMLProperties.CoreProperties core = document.getProperties().getCoreProperties();
        core.setTitle("Section " + section.number() + ", " + section.title());
        core.setSubjectProperty(section.job());
        core.setCreator("Reglet");
        SameBytes.dated(core);
        document.getProperties().getExtendedProperties().setApplication("Reglet");
    }

    private void edges() {
        CTSectPr page = document.getDocument().getBody().addNewSectPr();
        CTPageSz size = page.addNewPgSz();
        size.setW(BigInteger.valueOf(TWIPS_PER_INCH * 17 / 2));
        size.setH(BigInteger.valueOf(TWIPS_PER_INCH * 11));
        CTPageMar margins = page.addNewPgMar();
        BigInteger inch = BigInteger.valueOf(TWIPS_PER_INCH);
        BigInteger half = BigInteger.valueOf(TWIPS_PER_INCH / 2);
        margins.setLeft(inch);
        margins.setRight(inch);
        margins.setTop(inch);
        margins.setBottom(inch);
        margins.setHeader(half);
        margins.setFooter(half);
        margins.setGutter(BigInteger.ZERO);
        XWPFParagraph head = document.createHeader(HeaderFooterType.DEFAULT).createParagraph();
        head.setStyle("Header");
        tabbed(head, section.job(), Papers.issue(section));
        XWPFParagraph foot = document.createFooter(HeaderFooterType.DEFAULT).createParagraph();
        foot.setStyle("Footer");
        tabbed(foot, section.number() + "  " + section.title(), "page ");
        field(foot, "PAGE");
        foot.createRun().setText(" of ");
        field(foot, "NUMPAGES");
    }

    private static void tabbed(XWPFParagraph paragraph, String left, String right) {
        paragraph.createRun().setText(left);
        paragraph.createRun().addTab();
        paragraph.createRun().setText(right);
    }

    private static void field(XWPFParagraph paragraph, String name) {
        CTSimpleField field = paragraph.getCTP().addNewFldSimple();
        field.setInstr(name);
        field.addNewR().addNewT().setStringValue("1");
    }

    private void part(Part part) {
        listed("Part", DocxParts.SECTION_LIST, DocxParts.PART).createRun().setText(part.title());
        if (part.articles().isEmpty()) {
            paragraph("Normal").createRun().setText(Papers.NOT_USED);
        }
        for (Article article : part.articles()) {
            XWPFParagraph heading = listed("Article", DocxParts.SECTION_LIST, DocxParts.ARTICLE);
            bookmark(heading, article.id(), () -> heading.createRun().setText(article.title()));
            article.paragraphs().forEach(this::paragraph);
        }
    }

    private void paragraph(Paragraph paragraph) {
        XWPFParagraph made = listed("Paragraph" + paragraph.level(), DocxParts.SECTION_LIST, DocxParts.ARTICLE + paragraph.level());
        if (!paragraph.children().isEmpty()) {
            made.setKeepNext(true);
        }
        bookmark(made, paragraph.id(), () -> paragraph.text().forEach(span -> span(made, span)));
        paragraph.children().forEach(this::paragraph);
    }

    private void span(XWPFParagraph paragraph, Span span) {
        if (span instanceof Slot slot) {
            CTSdtRun control = paragraph.getCTP().addNewSdt();
            control.addNewSdtPr().addNewTag().setVal(slot.ref());
            new XWPFRun(control.addNewSdtContent().addNewR(), (IRunBody) paragraph).setText(slot.text());
        } else if (span instanceof CrossReference reference && targets.contains(reference.target())) {
            reference(paragraph, reference);
        } else {
            XWPFRun run = paragraph.createRun();
            if (span instanceof Strong) {
                run.setBold(true);
            }
            run.setText(span.text());
        }
    }

    /** An article's number is a field that follows the list; a paragraph's full address is a link, as no field prints it. */
    private void reference(XWPFParagraph paragraph, CrossReference reference) {
        int space = reference.text().lastIndexOf(' ') + 1;
        String number = reference.text().substring(space);
        if (reference.text().startsWith("Article")) {
            paragraph.createRun().setText(reference.text().substring(0, space));
            paragraph.createRun().getCTR().addNewFldChar().setFldCharType(STFldCharType.BEGIN);
            paragraph.createRun().getCTR().addNewInstrText().setStringValue(" REF " + bookmark(reference.target()) + " \\r \\h ");
            paragraph.createRun().getCTR().addNewFldChar().setFldCharType(STFldCharType.SEPARATE);
            paragraph.createRun().setText(number);
            paragraph.createRun().getCTR().addNewFldChar().setFldCharType(STFldCharType.END);
        } else {
            CTHyperlink link = paragraph.getCTP().addNewHyperlink();
            link.setAnchor(bookmark(reference.target()));
            link.addNewR().addNewT().setStringValue(reference.text());
        }
    }

    private void bookmark(XWPFParagraph paragraph, String id, Runnable text) {
        BigInteger number = BigInteger.valueOf(bookmarks++);
        var start = paragraph.getCTP().addNewBookmarkStart();
        start.setId(number);
        start.setName(bookmark(id));
        text.run();
        paragraph.getCTP().addNewBookmarkEnd().setId(number);
    }

    /** A bookmark's name takes few characters, so the end of a digest keeps ids apart that look alike in them. */
    static String bookmark(String id) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.UTF_8));
            String end = "_" + HexFormat.of().formatHex(digest, 0, 4);
            String start = "p_" + SlotNames.key(id);
            return start.substring(0, Math.min(start.length(), LONGEST_BOOKMARK - end.length())) + end;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private XWPFParagraph paragraph(String style) {
        XWPFParagraph paragraph = document.createParagraph();
        paragraph.setStyle(style);
        return paragraph;
    }

    private XWPFParagraph listed(String style, long list, int level) {
        XWPFParagraph paragraph = paragraph(style);
        paragraph.setNumID(BigInteger.valueOf(list));
        paragraph.setNumILvl(BigInteger.valueOf(level));
        return paragraph;
    }
}
