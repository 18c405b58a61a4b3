package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;

import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.wp.usermodel.HeaderFooterType;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSimpleField;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.DocumentDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.NumberingDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

/** A word processor's file around a body that is written as markup (WordprocessingML, ECMA-376), in the styles and lists of a section. */
final class DocxPaper {
    /** Letter paper between margins of an inch, in twentieths of a point. */
    private static final int TEXT_WIDTH = 9360;

    private DocxPaper() {
    }

    /**
     * @param head at the right of the head, beside the job
     * @param foot at the left of the foot, beside the page's number
     * @param body paragraphs as markup
     */
    static byte[] of(String title, String job, String head, String foot, String body) {
        try (XWPFDocument document = new XWPFDocument()) {
            document.createStyles().setStyles(StylesDocument.Factory.parse(DocxParts.styles(TEXT_WIDTH)).getStyles());
            XWPFNumbering numbering = document.createNumbering();
            for (CTAbstractNum list : NumberingDocument.Factory.parse(DocxParts.numbering()).getNumbering().getAbstractNumArray()) {
                numbering.addAbstractNum(new XWPFAbstractNum(list));
            }
            for (long id = DocxParts.SECTION_LIST; id <= DocxParts.CAUTION_LIST; id++) {
                numbering.addNum(BigInteger.valueOf(id), BigInteger.valueOf(id));
            }
            POIXMLProperties.CoreProperties core = document.getProperties().getCoreProperties();
            core.setTitle(title);
            core.setSubjectProperty(job);
            core.setCreator("Reglet");
            SameBytes.dated(core);
            document.getProperties().getExtendedProperties().setApplication("Reglet");
            document.getDocument().set(DocumentDocument.Factory.parse("<w:document " + DocxParts.NAMESPACE + "><w:body>" + body
                + "<w:sectPr><w:pgSz w:w=\"12240\" w:h=\"15840\"/><w:pgMar w:left=\"1440\" w:right=\"1440\" w:top=\"1440\""
                + " w:bottom=\"1440\" w:header=\"720\" w:footer=\"720\" w:gutter=\"0\"/></w:sectPr></w:body></w:document>").getDocument());
            edges(document, job, head, foot);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.write(out);
            return SameBytes.archive(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XmlException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void edges(XWPFDocument document, String job, String head, String foot) {
        XWPFParagraph top = document.createHeader(HeaderFooterType.DEFAULT).createParagraph();
        top.setStyle("Header");
        tabbed(top, job, head);
        XWPFParagraph bottom = document.createFooter(HeaderFooterType.DEFAULT).createParagraph();
        bottom.setStyle("Footer");
        tabbed(bottom, foot, "page ");
        field(bottom, "PAGE");
        bottom.createRun().setText(" of ");
        field(bottom, "NUMPAGES");
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

    /** A paragraph with its properties and its runs. */
    static String paragraph(String style, String properties, String runs) {
        return "<w:p><w:pPr><w:pStyle w:val=\"" + style + "\"/>" + properties + "</w:pPr>" + runs + "</w:p>";
    }

    static String listed(long list, int level) {
        return "<w:numPr><w:ilvl w:val=\"" + level + "\"/><w:numId w:val=\"" + list + "\"/></w:numPr>";
    }

    static String text(String text) {
        return run("", text, false);
    }

    static String strong(String text) {
        return run("<w:b/>", text, false);
    }

    /** A run of text; text that is taken out stands in an element of its own. */
    static String run(String properties, String text, boolean gone) {
        String element = gone ? "w:delText" : "w:t";
        return "<w:r>" + (properties.isEmpty() ? "" : "<w:rPr>" + properties + "</w:rPr>") + "<" + element + " xml:space=\"preserve\">"
            + Html.text(text) + "</" + element + "></w:r>";
    }
}
