package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

import com.lowagie.text.Phrase;

import reglet.drafting.PdfFonts.Face;
import reglet.drafting.PdfSheets.Block;
import reglet.drafting.PdfSheets.Edges;
import reglet.model.Office;

/** Sheets in an office's paper and type, with its head and foot; and its name at the top of the first. */
final class PdfLetterhead {
    /** Height of a letterhead's picture at most, in points. */
    private static final float PICTURE = 54;

    private PdfLetterhead() {
    }

    /**
     * @param subject what the file says that it is about
     * @param of      number of the last sheet; 0 while it isn't known
     */
    static PdfSheets sheets(String title, String subject, Letterhead letterhead, int of) {
        String last = String.valueOf(of);
        String footRight = letterhead.foot().right().replace(Letterhead.PAGES, last);
        return new PdfSheets(title, letterhead.office().paper() == Office.Paper.A4 ? PdfSheets.UPRIGHT_A4 : PdfSheets.UPRIGHT,
            new Edges(letterhead.head().left().replace(Letterhead.PAGES, last), letterhead.head().right().replace(Letterhead.PAGES, last),
            letterhead.foot().left().replace(Letterhead.PAGES, last), sheet -> footRight), subject, new PdfFonts(letterhead.office()));
    }

    /**
     * Sheets whose numbers are cited, so that the right side of the foot isn't the office's.
     *
     * @param wide  whether they lie
     * @param page  number of the page that a sheet, counted from 1, is
     * @param pages number of all pages
     * @param foot  right side of the foot, by sheet
     */
    static PdfSheets cited(String title, String subject, Letterhead letterhead, boolean wide, IntFunction<String> page,
            IntFunction<String> pages, IntFunction<String> foot) {
        boolean a4 = letterhead.office().paper() == Office.Paper.A4;
        return new PdfSheets(title, wide ? a4 ? PdfSheets.WIDE_A4 : PdfSheets.WIDE : a4 ? PdfSheets.UPRIGHT_A4 : PdfSheets.UPRIGHT,
            new Edges(letterhead.head().left(), letterhead.head().right(), letterhead.foot().left(), foot, (text, sheet) ->
            text.replace(Letterhead.PAGE, page.apply(sheet)).replace(Letterhead.PAGES, pages.apply(sheet))), subject,
            new PdfFonts(letterhead.office()));
    }

    /** Whose paper it is: picture, name and address; nothing without an office. */
    static void sender(PdfSheets sheets, Letterhead letterhead) {
        if (letterhead.office().name().isEmpty()) {
            return;
        }
        if (letterhead.picture().length > 0) {
            sheets.image(letterhead.picture(), PICTURE);
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.of(new Phrase(sheets.fonts.run(letterhead.office().name(), Face.SANS_BOLD, 9.5f, PdfSheets.INK)), 0, 13, 4));
        letterhead.office().address().forEach(line ->
            blocks.add(Block.of(new Phrase(sheets.fonts.run(line, Face.SANS, 8.5f, PdfSheets.INK)), 0, 11, 0)));
        sheets.flow(blocks);
        sheets.space(20);
    }
}
