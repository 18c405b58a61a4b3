package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.util.Map;
import java.util.stream.Collectors;

import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlOptions;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.DocumentDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.NumberingDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

/** A word processor's file around a body that is written as markup (WordprocessingML, ECMA-376), in the styles and lists of a section. */
final class DocxPaper {
    private static final XmlOptions OUTER = new XmlOptions().setSaveOuter().setSaveSuggestedPrefixes(
        Map.of("http://schemas.openxmlformats.org/wordprocessingml/2006/main", "w"));

    private DocxPaper() {
    }

    /** @param body paragraphs as markup */
    static byte[] of(String title, String job, Letterhead letterhead, String body) {
        try (XWPFDocument document = new XWPFDocument()) {
            DocxLetterhead around = new DocxLetterhead(document, letterhead);
            document.createStyles().setStyles(StylesDocument.Factory.parse(DocxParts.styles(letterhead.office(), around.textWidth()))
                .getStyles());
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
            // What the letterhead writes is taken over as markup, so that it can stand before the body.
            around.write();
            String sender = document.getParagraphs().stream().map(paragraph -> paragraph.getCTP().xmlText(OUTER))
                .collect(Collectors.joining());
            document.getDocument().set(DocumentDocument.Factory.parse("<w:document " + DocxParts.NAMESPACE + "><w:body>" + sender + body
                + "</w:body></w:document>").getDocument());
            around.edges();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.write(out);
            return SameBytes.archive(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XmlException | InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
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
