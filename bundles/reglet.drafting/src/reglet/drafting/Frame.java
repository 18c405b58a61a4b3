package reglet.drafting;

import reglet.model.Office;

/**
 * What stands around a drawing on its sheet.
 *
 * @param job     title of the job
 * @param note    such as "Invented sample"; "" for none
 * @param issue   the issue's name; "" for a draft
 * @param notes   whether leaders carry their texts or their keys
 * @param caution sentence on every sheet; "" for none
 * @param page    number of the first sheet, from 1
 * @param of      how many sheets there are in all; 0 for as many as there are drawings
 */
public record Frame(String job, String note, String issue, Paper paper, Notes notes, String caution, int page, int of) {

    /** Upright sizes in millimetres: ANSI/ASME Y14.1 A and B, ISO 216 A4 and A3. */
    public enum Paper {
        LETTER(215.9, 279.4), TABLOID(279.4, 431.8), A4(210, 297), A3(297, 420);

        final double width;
        final double height;

        Paper(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    /** TEXTS at the leaders; KEYS at the leaders and a legend that explains them. Texts that don't fit give way to keys. */
    public enum Notes { TEXTS, KEYS }

    /** Texts at the leaders, sheets counted from 1. */
    public static Frame of(String job, String note, String issue, Paper paper, String caution) {
        return new Frame(job, note, issue, paper, Notes.TEXTS, caution, 1, 0);
    }

    /** The same frame on an office's paper. */
    public Frame on(Office.Paper office) {
        return new Frame(job, note, issue, office == Office.Paper.A4 ? Paper.A4 : paper, notes, caution, page, of);
    }

    /** The same frame for one of several drawings, counted from 0. */
    Frame sheet(int index, int drawings) {
        return new Frame(job, note, issue, paper, notes, caution, page + index, of == 0 ? page + drawings - 1 : of);
    }
}
