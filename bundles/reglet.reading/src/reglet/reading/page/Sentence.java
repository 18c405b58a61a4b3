package reglet.reading.page;

import reglet.reading.words.Said;

/**
 * A sentence of running text.
 *
 * @param conditions whether it stands among what a report asks of those who use the product, which isn't what the product is
 * @param before     what the same paragraph says before it
 */
public record Sentence(Cell cell, Said said, boolean conditions, String before) {
    /** Words that stand in no running text, as a sentence. */
    public static Sentence of(Cell cell) {
        return of(cell, false, "");
    }

    static Sentence of(Cell cell, boolean conditions, String before) {
        return new Sentence(cell, new Said(cell.text()), conditions, before);
    }
}
