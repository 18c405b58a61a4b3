package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import com.lowagie.text.Phrase;

import reglet.drafting.PdfFonts.Face;
import reglet.drafting.PdfSheets.Block;

/** The plain pages around tables: titles, paragraphs, bulleted sentences. */
final class PdfText {
    private static final float HEADING_ROOM = 66;

    private PdfText() {
    }

    static void title(PdfSheets sheets, String text, String bookmark) {
        Block title = Block.of(phrase(sheets, text, Face.SANS_BOLD, 16), 0, 20, 0).keeping(true);
        sheets.flow(List.of(bookmark.isEmpty() ? title : title.bookmarked(bookmark, 0)));
        sheets.space(10);
    }

    static void heading(PdfSheets sheets, String text) {
        // room for a line that follows, which may be a table's
        sheets.room(HEADING_ROOM);
        sheets.flow(List.of(Block.of(phrase(sheets, text, Face.SANS_BOLD, 10.5f), 0, 14, 14).keeping(true)));
        sheets.space(3);
    }

    static void text(PdfSheets sheets, String text) {
        sheets.flow(List.of(Block.of(phrase(sheets, text, Face.TEXT, 10.5f), 0, 13.5f, 4)));
    }

    static void strong(PdfSheets sheets, String text) {
        sheets.flow(List.of(Block.of(phrase(sheets, text, Face.SANS_BOLD, 10.5f), 0, 14, 6)));
    }

    static void bullets(PdfSheets sheets, List<String> sentences) {
        List<Block> blocks = new ArrayList<>();
        sentences.forEach(sentence -> blocks.add(Block.of(phrase(sheets, sentence, Face.TEXT, 10.5f), 16, 13.5f, 3)
            .hanging(sheets.fonts.run("•", Face.TEXT, 10.5f, PdfSheets.INK), 4)));
        sheets.flow(blocks);
    }

    /** Small sentences numbered from 1. */
    static void numbered(PdfSheets sheets, List<String> sentences) {
        List<Block> blocks = new ArrayList<>();
        for (String sentence : sentences) {
            blocks.add(Block.of(phrase(sheets, sentence, Face.SANS, 8.5f), 16, 11.5f, 1)
                .hanging(sheets.fonts.run(String.valueOf(blocks.size() + 1), Face.SANS, 8.5f, PdfSheets.INK), 2));
        }
        sheets.flow(blocks);
    }

    /** Small but readable, under a heading that stays with them. */
    static void cautions(PdfSheets sheets, List<String> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.of(phrase(sheets, Papers.CAUTIONS, Face.SANS_BOLD, 8.5f), 0, 12, 18).keeping(true));
        cautions.forEach(caution -> blocks.add(Block.of(phrase(sheets, caution, Face.SANS, 8.5f), 14, 11.5f, 3)
            .hanging(sheets.fonts.run("•", Face.SANS, 8.5f, PdfSheets.INK), 4)));
        sheets.flow(blocks);
    }

    private static Phrase phrase(PdfSheets sheets, String text, Face face, float size) {
        return new Phrase(sheets.fonts.run(text, face, size, PdfSheets.INK));
    }
}
