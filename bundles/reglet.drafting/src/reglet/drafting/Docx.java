package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xwpf.usermodel.IRunBody;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTHyperlink;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTNumbering;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSdtRun;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.NumberingDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STFldCharType;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

import reglet.drafting.Addresses.Step;
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
    private static final int LONGEST_BOOKMARK = 40;
    /** Steps of an address whose marks end with a point, which fields leave out; "1)" keeps its bracket. */
    private static final int DEEPEST_ADDRESS = 4;

    private final SectionDocument section;
    private final Letterhead letterhead;
    private final Set<String> targets;
    private final Map<String, List<Step>> addresses;
    private final XWPFDocument document = new XWPFDocument();
    private long bookmarks;
    /** Room for text, in twentieths of a point. */
    private int width;

    private Docx(SectionDocument section, Letterhead letterhead) {
        this.section = section;
        this.letterhead = letterhead;
        this.targets = Papers.targets(section);
        this.addresses = Addresses.of(section);
    }

    public static byte[] of(SectionDocument section) {
        return of(section, Letterhead.plain(section));
    }

    public static byte[] of(SectionDocument section, Letterhead letterhead) {
        try {
            Docx docx = new Docx(section, letterhead);
            docx.write();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            docx.document.write(out);
            docx.document.close();
            return SameBytes.archive(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XmlException | InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private void write() throws XmlException, InvalidFormatException, IOException {
        DocxLetterhead around = new DocxLetterhead(document, letterhead);
        document.createStyles().setStyles(StylesDocument.Factory.parse(DocxParts.styles(letterhead.office(), around.textWidth()))
            .getStyles());
        numbering();
        properties();
        width = around.textWidth();
        around.edges();
        around.write();
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

    private void part(Part part) {
        listed("Part", DocxParts.SECTION_LIST, DocxParts.PART).createRun().setText(part.title());
        if (part.articles().isEmpty()) {
            paragraph("Normal").createRun().setText(Papers.NOT_USED);
        }
        for (Article article : part.articles()) {
            XWPFParagraph heading = listed("Article", DocxParts.SECTION_LIST, DocxParts.ARTICLE);
            bookmark(heading, article.id(), () -> heading.createRun().setText(article.title()));
            if (article.table()) {
                table(article);
            } else {
                article.paragraphs().forEach(this::paragraph);
            }
        }
    }

    /** References as a table whose head comes again on each page; their letters are those of the list. */
    private void table(Article article) {
        List<ReferenceTable.Row> rows = ReferenceTable.rows(section, article);
        int columns = ReferenceTable.TITLES.size();
        XWPFTable table = document.createTable(rows.size() + 1, columns);
        table.setWidth(String.valueOf(width));
        for (int i = 0; i <= rows.size(); i++) {
            XWPFTableRow row = table.getRow(i);
            row.setRepeatHeader(i == 0);
            row.setCantSplitRow(true);
            for (int column = 0; column < columns; column++) {
                row.getCell(column).setWidth(String.valueOf(Math.round(width * share(column))));
            }
            if (i == 0) {
                for (int column = 0; column < columns; column++) {
                    row.getCell(column).setColor("ECECEC");
                    XWPFParagraph title = row.getCell(column).getParagraphs().get(0);
                    title.setStyle("TableHead");
                    title.createRun().setText(ReferenceTable.TITLES.get(column));
                }
            } else {
                row(row, rows.get(i - 1));
            }
        }
    }

    /** The marks stand in the same column as the numbers. */
    private static double share(int column) {
        float[] widths = ReferenceTable.WIDTHS;
        return (column == 0 ? widths[0] + widths[1] : widths[column + 1]) / (widths[0] + widths[1] + widths[2] + widths[3]);
    }

    private void row(XWPFTableRow cells, ReferenceTable.Row row) {
        XWPFTableCell first = cells.getCell(0);
        XWPFParagraph number = first.getParagraphs().get(0);
        listed(number, "TableNumber", DocxParts.SECTION_LIST, DocxParts.ARTICLE + 1);
        number.setIndentationLeft(DocxParts.STEP);
        number.setIndentationHanging(DocxParts.STEP);
        bookmark(number, row.paragraph().id(), () -> (row.isText() ? row.title() : row.number()).forEach(span -> span(number, span)));
        if (row.isText()) {
            cells.removeCell(2);
            cells.removeCell(1);
            first.getCTTc().getTcPr().addNewGridSpan().setVal(BigInteger.valueOf(ReferenceTable.TITLES.size()));
            first.setWidth(String.valueOf(width));
        } else {
            XWPFParagraph title = cells.getCell(1).getParagraphs().get(0);
            title.setStyle("TableText");
            row.title().forEach(span -> span(title, span));
            XWPFParagraph cited = cells.getCell(2).getParagraphs().get(0);
            cited.setStyle("TableText");
            for (CrossReference reference : row.cited()) {
                if (reference != row.cited().get(0)) {
                    cited.createRun().setText(", ");
                }
                span(cited, reference);
            }
        }
        row.paragraph().children().forEach(child -> paragraph(child, first));
    }

    private void paragraph(Paragraph paragraph, XWPFTableCell cell) {
        paragraph(paragraph, listed(cell.addParagraph(), "Paragraph" + paragraph.level(), DocxParts.SECTION_LIST,
            DocxParts.ARTICLE + paragraph.level()));
        paragraph.children().forEach(child -> paragraph(child, cell));
    }

    private void paragraph(Paragraph paragraph) {
        paragraph(paragraph, listed("Paragraph" + paragraph.level(), DocxParts.SECTION_LIST, DocxParts.ARTICLE + paragraph.level()));
        paragraph.children().forEach(this::paragraph);
    }

    private void paragraph(Paragraph paragraph, XWPFParagraph made) {
        if (!paragraph.children().isEmpty()) {
            made.setKeepNext(true);
        }
        bookmark(made, paragraph.id(), () -> paragraph.text().forEach(span -> span(made, span)));
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

    /** An address as fields that follow the list, one for each step: no single field prints "2.1.A.1" without the part's words. */
    private void reference(XWPFParagraph paragraph, CrossReference reference) {
        List<Step> address = addresses.get(reference.target());
        String path = address.stream().map(Step::number).collect(Collectors.joining("."));
        if (address.size() <= DEEPEST_ADDRESS && (" " + reference.text()).endsWith(" " + path)) {
            if (!reference.text().equals(path)) {
                paragraph.createRun().setText(reference.text().substring(0, reference.text().length() - path.length()));
            }
            for (int i = 0; i < address.size(); i++) {
                if (i > 0) {
                    paragraph.createRun().setText(".");
                }
                number(paragraph, address.get(i));
            }
        } else {
            CTHyperlink link = paragraph.getCTP().addNewHyperlink();
            link.setAnchor(bookmark(reference.target()));
            link.addNewR().addNewT().setStringValue(reference.text());
        }
    }

    /** The mark of a step without the point behind it and without what stands above it. */
    private static void number(XWPFParagraph paragraph, Step step) {
        paragraph.createRun().getCTR().addNewFldChar().setFldCharType(STFldCharType.BEGIN);
        paragraph.createRun().getCTR().addNewInstrText().setStringValue(" REF " + bookmark(step.id()) + " \\n \\h ");
        paragraph.createRun().getCTR().addNewFldChar().setFldCharType(STFldCharType.SEPARATE);
        paragraph.createRun().setText(step.number());
        paragraph.createRun().getCTR().addNewFldChar().setFldCharType(STFldCharType.END);
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
        return listed(document.createParagraph(), style, list, level);
    }

    private static XWPFParagraph listed(XWPFParagraph paragraph, String style, long list, int level) {
        paragraph.setStyle(style);
        paragraph.setNumID(BigInteger.valueOf(list));
        paragraph.setNumILvl(BigInteger.valueOf(level));
        return paragraph;
    }
}
