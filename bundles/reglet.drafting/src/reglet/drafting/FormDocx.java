package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.util.List;

import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageSz;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STPageOrientation;

import reglet.drafting.Form.Grid;
import reglet.model.Assembly;
import reglet.model.Office;
import reglet.model.Pack;
import reglet.model.UnusableInput;

/** A form as a word processor's file, for an office that wants to add its own lines. The same bytes for the same form. */
public final class FormDocx {
    private static final String FONT = "Liberation Sans";
    /** Paper lying down, in twentieths of a point. */
    private static final long LETTER_LONG = 15840;
    private static final long LETTER_SHORT = 12240;
    private static final long A4_LONG = 16838;
    private static final long A4_SHORT = 11906;
    private static final long MARGIN = 960;
    private static final int TITLE = 16;
    private static final int TEXT = 10;
    private static final int CELL = 8;

    private final XWPFDocument document = new XWPFDocument();

    private final Letterhead letterhead;
    private final boolean a4;

    private FormDocx(Letterhead letterhead) {
        this.letterhead = letterhead;
        this.a4 = letterhead.office().paper() == Office.Paper.A4;
    }

    /** Without an office's letterhead. */
    public static byte[] of(Assembly assembly, Form form) {
        return of(assembly, form, FormsPdf.subject(assembly).plain());
    }

    /**
     * On an office's paper, with its picture, name and address.
     *
     * @throws UnusableInput if a template or picture of the office can't be used
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
        } catch (InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private void sender() throws InvalidFormatException, IOException {
        if (letterhead.picture().length > 0) {
            DocxLetterhead.picture(document.createParagraph(), letterhead.picture(), room());
        }
        if (!letterhead.office().name().isEmpty()) {
            text(letterhead.office().name(), TEXT, true);
            text(String.join("\n", letterhead.office().address()), CELL, false).setSpacingAfter(240);
        }
    }

    /** Room for text, in twentieths of a point. */
    private long room() {
        return (a4 ? A4_LONG : LETTER_LONG) - 2 * MARGIN;
    }

    private void write(Assembly assembly, Form form) throws InvalidFormatException, IOException {
        sender();
        text(form.title(), TITLE, true);
        text(assembly.job().title() + ". " + assembly.job().note(), TEXT, false);
        form.texts().forEach(text -> text(text, TEXT, false));
        form.grids().forEach(this::table);
        form.signs().forEach(who -> text(Form.line(who), TEXT, false).setSpacingBefore(240));
        text(Papers.CAUTIONS, CELL, true).setSpacingBefore(240);
        assembly.cautions().stream().map(Pack.Caution::text).forEach(caution -> text("• " + caution, CELL, false));
        CTSectPr section = document.getDocument().getBody().addNewSectPr();
        CTPageSz size = section.addNewPgSz();
        size.setOrient(STPageOrientation.LANDSCAPE);
        size.setW(BigInteger.valueOf(a4 ? A4_LONG : LETTER_LONG));
        size.setH(BigInteger.valueOf(a4 ? A4_SHORT : LETTER_SHORT));
        CTPageMar margins = section.addNewPgMar();
        margins.setLeft(BigInteger.valueOf(MARGIN));
        margins.setRight(BigInteger.valueOf(MARGIN));
        margins.setTop(BigInteger.valueOf(MARGIN));
        margins.setBottom(BigInteger.valueOf(MARGIN));
    }

    private XWPFParagraph text(String text, int size, boolean bold) {
        XWPFParagraph paragraph = document.createParagraph();
        run(paragraph, text, size, bold);
        paragraph.setSpacingAfter(80);
        return paragraph;
    }

    private static void run(XWPFParagraph paragraph, String text, int size, boolean bold) {
        XWPFRun run = paragraph.createRun();
        run.setFontFamily(FONT);
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
        table.setWidth(String.valueOf(room()));
        for (int row = 0; row <= grid.rows().size(); row++) {
            List<String> texts = row == 0 ? grid.titles() : grid.rows().get(row - 1);
            table.getRow(row).setRepeatHeader(row == 0);
            table.getRow(row).setCantSplitRow(true);
            for (int column = 0; column < texts.size(); column++) {
                XWPFTableCell cell = table.getRow(row).getCell(column);
                cell.setWidth(String.valueOf(room() * grid.widths().get(column) / sum));
                run(cell.getParagraphs().get(0), texts.get(column), CELL, row == 0);
            }
        }
        text("", CELL, false);
    }
}
