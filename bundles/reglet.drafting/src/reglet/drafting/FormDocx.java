package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

import reglet.drafting.Form.Grid;
import reglet.model.Assembly;
import reglet.model.Office;
import reglet.model.Pack;
import reglet.model.UnusableInput;

/** A form as a word processor's file, for an office that wants to add its own lines. The same bytes for the same form. */
public final class FormDocx {
    private static final int TITLE = 16;
    private static final int TEXT = 10;
    private static final int CELL = 8;

    private final XWPFDocument document = new XWPFDocument();
    private final DocxLetterhead around;
    private final String font;

    private FormDocx(Letterhead letterhead) throws XmlException, IOException {
        Letterhead.Edge foot = letterhead.foot();
        // as in the PDF: the right side of a form's foot counts its pages
        this.around = new DocxLetterhead(document, new Letterhead(letterhead.office(), letterhead.picture(), letterhead.head(),
            new Letterhead.Edge(foot.left(), "page " + Letterhead.PAGE + " of " + Letterhead.PAGES), List.of()), true);
        this.font = Optional.ofNullable(letterhead.office().fonts().get(Office.Face.REGULAR)).map(Office.Font::family)
            .orElse(DocxParts.SANS);
        document.createStyles().setStyles(StylesDocument.Factory.parse(DocxParts.styles(letterhead.office(), around.textWidth()))
            .getStyles());
    }

    /** Without an office's letterhead. */
    public static byte[] of(Assembly assembly, Form form) {
        return of(assembly, form, FormsPdf.subject(assembly).plain());
    }

    /**
     * On an office's paper, with its picture, name and address, head and foot, and in its font.
     *
     * @throws UnusableInput if a template, picture or font of the office can't be used
     */
    public static byte[] of(Assembly assembly, Form form, Office office) throws UnusableInput {
        return of(assembly, form, FormsPdf.subject(assembly).of(office));
    }

    private static byte[] of(Assembly assembly, Form form, Letterhead letterhead) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            FormDocx docx = new FormDocx(letterhead);
            docx.write(assembly, form);
            docx.document.getProperties().getCoreProperties().setTitle(form.title());
            docx.document.getProperties().getCoreProperties().setCreator("Reglet");
            SameBytes.dated(docx.document.getProperties().getCoreProperties());
            docx.document.write(out);
            docx.document.close();
            return SameBytes.archive(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InvalidFormatException | XmlException e) {
            throw new IllegalStateException(e);
        }
    }

    private void write(Assembly assembly, Form form) throws InvalidFormatException, IOException {
        around.write();
        text(form.title(), TITLE, true);
        text(assembly.job().title() + ". " + assembly.job().note(), TEXT, false);
        form.texts().forEach(text -> text(text, TEXT, false));
        form.grids().forEach(this::table);
        form.signs().forEach(who -> text(Form.line(who), TEXT, false).setSpacingBefore(240));
        text(Papers.CAUTIONS, CELL, true).setSpacingBefore(240);
        assembly.cautions().stream().map(Pack.Caution::text).forEach(caution -> text("• " + caution, CELL, false));
        around.edges();
    }

    private XWPFParagraph text(String text, int size, boolean bold) {
        XWPFParagraph paragraph = document.createParagraph();
        run(paragraph, text, size, bold);
        paragraph.setSpacingAfter(80);
        return paragraph;
    }

    private void run(XWPFParagraph paragraph, String text, int size, boolean bold) {
        XWPFRun run = paragraph.createRun();
        run.setFontFamily(font);
        run.setFontSize(size);
        run.setBold(bold);
        String[] lines = text.split("\n");
        for (int i = 0; i < lines.length; i++) {
            if (i > 0) {
                run.addBreak();
            }
            run.setText(lines[i]);
        }
    }

    private void table(Grid grid) {
        XWPFTable table = document.createTable(grid.rows().size() + 1, grid.titles().size());
        long sum = grid.widths().stream().mapToLong(Integer::longValue).sum();
        table.setWidth(String.valueOf(around.textWidth()));
        table.setCellMargins(30, 60, 30, 60);
        for (int row = 0; row <= grid.rows().size(); row++) {
            List<String> texts = row == 0 ? grid.titles() : grid.rows().get(row - 1);
            table.getRow(row).setRepeatHeader(row == 0);
            table.getRow(row).setCantSplitRow(true);
            for (int column = 0; column < texts.size(); column++) {
                XWPFTableCell cell = table.getRow(row).getCell(column);
                cell.setWidth(String.valueOf(around.textWidth() * grid.widths().get(column) / sum));
                run(cell.getParagraphs().get(0), texts.get(column), CELL, row == 0);
            }
        }
        text("", CELL, false);
    }
}
