package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import com.lowagie.text.Phrase;

import reglet.drafting.PdfFonts.Face;
import reglet.drafting.PdfSheets.Block;

/** An addendum's own pages: what it changes, instruction by instruction; the questions that it answers; the cautions. */
public final class NarrativePages {
    private static final String ANSWERS = "Questions answered";

    private NarrativePages() {
    }

    public static String markdown(Narrative narrative) {
        StringBuilder page = new StringBuilder("# ").append(ClauseText.escape(narrative.title())).append("\n\n")
            .append(ClauseText.escape(narrative.job())).append("\n\n");
        narrative.facts().forEach(fact -> page.append("- ").append(ClauseText.escape(fact)).append('\n'));
        for (Narrative.Part part : narrative.sections()) {
            page.append("\n## ").append(ClauseText.escape(part.title())).append("\n\n");
            int number = 0;
            for (String instruction : part.instructions()) {
                page.append(++number).append(". ").append(ClauseText.escape(instruction)).append('\n');
            }
        }
        if (!narrative.answers().isEmpty()) {
            page.append("\n## ").append(ANSWERS).append('\n');
            narrative.answers().forEach(answer -> page.append("\n**").append(ClauseText.escape(answer.head())).append("**\n\n> ")
                .append(ClauseText.escape(answer.question())).append("\n\n").append(ClauseText.escape(answer.answer())).append('\n'));
        }
        if (!narrative.cautions().isEmpty()) {
            page.append("\n## ").append(Papers.CAUTIONS).append("\n\n");
            narrative.cautions().forEach(caution -> page.append("- ").append(ClauseText.escape(caution)).append('\n'));
        }
        return page.toString();
    }

    public static byte[] docx(Narrative narrative, Letterhead letterhead) {
        StringBuilder body = new StringBuilder(DocxPaper.paragraph("SectionTitle", "", DocxPaper.text(narrative.title())));
        body.append(DocxPaper.paragraph("CoverText", "", DocxPaper.strong(narrative.job())));
        narrative.facts().forEach(fact -> body.append(DocxPaper.paragraph("CoverText", "", DocxPaper.text(fact))));
        for (Narrative.Part part : narrative.sections()) {
            body.append(DocxPaper.paragraph("CoverHeading", "", DocxPaper.text(part.title())));
            int number = 0;
            for (String instruction : part.instructions()) {
                body.append(hanging(++number + ".", instruction));
            }
        }
        if (!narrative.answers().isEmpty()) {
            body.append(DocxPaper.paragraph("CoverHeading", "", DocxPaper.text(ANSWERS)));
            for (Narrative.Answer answer : narrative.answers()) {
                body.append(DocxPaper.paragraph("CoverText", "<w:keepNext/>", DocxPaper.strong(answer.head())));
                body.append(DocxPaper.paragraph("JobNote", "<w:keepNext/>", DocxPaper.text(answer.question())));
                body.append(DocxPaper.paragraph("Normal", "", DocxPaper.text(answer.answer())));
            }
        }
        if (!narrative.cautions().isEmpty()) {
            body.append(DocxPaper.paragraph("CautionTitle", "", DocxPaper.text(Papers.CAUTIONS)));
            narrative.cautions().forEach(caution -> body.append(DocxPaper.paragraph("Caution",
                DocxPaper.listed(DocxParts.CAUTION_LIST, 0), DocxPaper.text(caution))));
        }
        return DocxPaper.of(narrative.title(), narrative.job(), letterhead, body.toString());
    }

    private static String hanging(String number, String text) {
        return DocxPaper.paragraph("CoverText",
            "<w:tabs><w:tab w:val=\"left\" w:pos=\"480\"/></w:tabs><w:ind w:left=\"480\" w:hanging=\"480\"/>",
            DocxPaper.text(number) + "<w:r><w:tab/></w:r>" + DocxPaper.text(text));
    }

    public static byte[] pdf(Narrative narrative, Letterhead letterhead) {
        PdfSheets trial = pages(narrative, letterhead, 0);
        return pages(narrative, letterhead, trial.sheet()).bytes();
    }

    private static PdfSheets pages(Narrative narrative, Letterhead letterhead, int of) {
        PdfSheets sheets = PdfLetterhead.sheets(narrative.title() + ", " + narrative.job(), narrative.job(), letterhead, of);
        PdfLetterhead.sender(sheets, letterhead);
        PdfText.title(sheets, narrative.title(), narrative.title());
        PdfText.strong(sheets, narrative.job());
        narrative.facts().forEach(fact -> PdfText.text(sheets, fact));
        for (Narrative.Part part : narrative.sections()) {
            PdfText.heading(sheets, part.title());
            List<Block> blocks = new ArrayList<>();
            for (String instruction : part.instructions()) {
                blocks.add(Block.of(new Phrase(sheets.fonts.run(instruction, Face.TEXT, 10.5f, PdfSheets.INK)), 24, 13.5f, 5)
                    .hanging(sheets.fonts.run(blocks.size() + 1 + ".", Face.TEXT, 10.5f, PdfSheets.INK), 0));
            }
            sheets.flow(blocks);
        }
        if (!narrative.answers().isEmpty()) {
            PdfText.heading(sheets, ANSWERS);
            for (Narrative.Answer answer : narrative.answers()) {
                PdfText.strong(sheets, answer.head());
                sheets.flow(List.of(Block.of(new Phrase(sheets.fonts.run(answer.question(), Face.TEXT_ITALIC, 10.5f, PdfSheets.INK)),
                    16, 13.5f,
                    2)));
                PdfText.text(sheets, answer.answer());
            }
        }
        PdfText.cautions(sheets, narrative.cautions());
        return sheets;
    }
}
