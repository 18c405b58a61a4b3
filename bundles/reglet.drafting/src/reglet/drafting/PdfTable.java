package reglet.drafting;

import java.awt.Color;

import com.lowagie.text.Chunk;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;

import reglet.drafting.PdfFonts.Face;
import reglet.model.Box;

/** A table on sheets, filled cell by cell. */
final class PdfTable {
    private static final Color SHADE = new Color(0xEC, 0xEC, 0xEC);
    private static final Color LINE = new Color(0xAA, 0xAA, 0xAA);
    private static final float SIZE = 8.5f;
    private static final float LEADING = 10.5f;

    private final PdfSheets sheets;
    private final PdfPTable table;
    private final boolean ruled;

    /** Takes where a cell came to stand. */
    interface Placed {
        void at(int sheet, Box box);
    }

    /**
     * A table over the whole width.
     *
     * @param ruled  whether cells have outlines
     * @param widths widths of the columns, relative to each other
     */
    PdfTable(PdfSheets sheets, boolean ruled, float... widths) {
        this.sheets = sheets;
        this.ruled = ruled;
        table = new PdfPTable(widths);
        table.setTotalWidth(sheets.width());
        table.setLockedWidth(true);
        table.setSplitLate(true);
    }

    /** A row of titles that comes again on each sheet. */
    PdfTable head(String... titles) {
        for (String title : titles) {
            PdfPCell cell = cell(title, Face.SANS_BOLD);
            cell.setBackgroundColor(SHADE);
            table.addCell(cell);
        }
        table.setHeaderRows(1);
        return this;
    }

    PdfTable row(String... texts) {
        for (String text : texts) {
            add(text);
        }
        return this;
    }

    PdfTable add(String text) {
        table.addCell(cell(text, Face.SANS));
        return this;
    }

    PdfTable strong(String text) {
        table.addCell(cell(text, Face.SANS_BOLD));
        return this;
    }

    /** A cell of runs, over several columns. */
    PdfTable add(Phrase text, int columns) {
        PdfPCell cell = framed(text);
        cell.setColspan(columns);
        table.addCell(cell);
        return this;
    }

    /** A run as cells print it. */
    Chunk run(String text, boolean strong) {
        return sheets.fonts.run(text, strong ? Face.SANS_BOLD : Face.SANS, SIZE, PdfSheets.INK);
    }

    /** A cell that something has to know the place of, such as a link that is added later. */
    PdfTable placed(String text, Placed placed) {
        PdfPCell cell = cell(text, Face.SANS);
        cell.setCellEvent((same, position, canvases) -> placed.at(sheets.sheet(), new Box(position.getLeft(),
            sheets.height() - position.getTop(), position.getWidth(), position.getHeight())));
        table.addCell(cell);
        return this;
    }

    void write() {
        sheets.table(table);
    }

    private PdfPCell cell(String text, Face face) {
        Phrase phrase = new Phrase(LEADING);
        for (String line : text.split("\n")) {
            if (!phrase.isEmpty()) {
                phrase.add(Chunk.NEWLINE);
            }
            phrase.add(sheets.fonts.run(line, face, SIZE, PdfSheets.INK));
        }
        return framed(phrase);
    }

    private PdfPCell framed(Phrase text) {
        PdfPCell cell = new PdfPCell(text);
        cell.setLeading(LEADING, 0);
        cell.setPadding(3);
        cell.setPaddingBottom(4);
        cell.setBorderColor(LINE);
        cell.setBorderWidth(0.5f);
        cell.setBorder(ruled ? Rectangle.BOX : Rectangle.NO_BORDER);
        return cell;
    }
}
