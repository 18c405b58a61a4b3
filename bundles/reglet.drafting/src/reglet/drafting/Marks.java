package reglet.drafting;

import reglet.model.SectionDocument.Paragraph;

/** The marks of paragraphs: A. then 1. then a. then 1) then a). */
final class Marks {
    private Marks() {
    }

    /**
     * A mark without punctuation. After Z comes AA, then BB, as word processors count.
     *
     * @param level 1 for A., as in {@link Paragraph}
     * @param count counted from 1
     */
    static String number(int level, int count) {
        return switch (level) {
            case 1 -> letters('A', count);
            case 3, 5 -> letters('a', count);
            default -> String.valueOf(count);
        };
    }

    /** The mark with its punctuation: "A.", "1)". */
    static String of(Paragraph paragraph) {
        return paragraph.number() + (paragraph.level() < 4 ? "." : ")");
    }

    private static String letters(char first, int count) {
        return String.valueOf((char) (first + (count - 1) % 26)).repeat((count - 1) / 26 + 1);
    }
}
