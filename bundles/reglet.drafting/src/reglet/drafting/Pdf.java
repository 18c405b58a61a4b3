package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;


import com.lowagie.text.Chunk;
import com.lowagie.text.Phrase;

import reglet.drafting.PdfFonts.Face;
import reglet.drafting.PdfSheets.Block;
import reglet.drafting.PdfSheets.Edges;
import reglet.model.Drawing;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;

/** A section on letter paper, as PDF with embedded fonts, bookmarks and links; the same bytes for the same section. */
public final class Pdf {
    private static final float SIZE = 10.5f;
    private static final float LEADING = 13.5f;
    private static final float END = 9.5f;
    private static final float ARTICLE_TEXT = 40;
    private static final float FIRST_MARK = 18;
    private static final float STEP = 22;

    private final SectionDocument section;
    private final Set<String> targets;
    private final PdfSheets sheets;

    private Pdf(SectionDocument section, int of) {
        this.section = section;
        this.targets = Papers.targets(section);
        this.sheets = new PdfSheets("Section " + section.number() + ", " + section.title(), PdfSheets.UPRIGHT,
            new Edges(section.job(), Papers.issue(section), section.number() + "  " + section.title(),
            sheet -> "page " + sheet + " of " + of));
    }

    public static byte[] of(SectionDocument section) {
        // The first layout counts the sheets, the second prints their number.
        Pdf trial = new Pdf(section, 0);
        trial.write();
        Pdf pdf = new Pdf(section, trial.sheets.sheet());
        pdf.write();
        return pdf.sheets.bytes();
    }

    /** The section with drawings as its appendix, on sheets of their own after its end. */
    public static byte[] of(SectionDocument section, List<Drawing> appendix, Frame frame) {
        return appendix.isEmpty() ? of(section) : SameBytes.joined(of(section), DrawingPdf.of(appendix, frame));
    }

    private void write() {
        head();
        List<Block> blocks = new ArrayList<>();
        section.parts().forEach(part -> part(part, blocks));
        // The end mark never stands alone on a sheet.
        blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1).keeping(true));
        float middle = (sheets.width() - sheets.fonts.width(Papers.end(section), Face.SANS_BOLD, END)) / 2;
        blocks.add(Block.of(new Phrase(run(Papers.end(section), Face.SANS_BOLD, END)), middle, LEADING, 24));
        sheets.flow(blocks);
        PdfText.cautions(sheets, section.cautions());
    }

    private void head() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.of(new Phrase(run("SECTION " + section.number(), Face.SANS_BOLD, 11)), 0, 15, 0));
        blocks.add(Block.of(new Phrase(run(section.title(), Face.SANS_BOLD, 17)), 0, 21, 0));
        if (!section.note().isEmpty()) {
            blocks.add(Block.of(new Phrase(run(section.note(), Face.TEXT_ITALIC, 9.5f)), 0, 13, 2));
        }
        sheets.flow(blocks);
        sheets.space(10);
        sheets.rule(1);
    }

    private void part(Part part, List<Block> blocks) {
        String title = "PART " + part.number() + " - " + part.title();
        blocks.add(Block.of(new Phrase(run(title, Face.SANS_BOLD, 11.5f)), 0, 15, 20).keeping(true).bookmarked(title, 0));
        if (part.articles().isEmpty()) {
            blocks.add(Block.of(new Phrase(run(Papers.NOT_USED, Face.TEXT, SIZE)), 0, LEADING, 6));
        }
        for (Article article : part.articles()) {
            blocks.add(Block.of(new Phrase(run(article.title(), Face.SANS_BOLD, 9.5f)), ARTICLE_TEXT, LEADING, 13)
                .hanging(run(article.number(), Face.SANS_BOLD, 9.5f), 0).keeping(true).named(name(article.id()))
                .bookmarked(article.number() + " " + article.title(), 1));
            article.paragraphs().forEach(paragraph -> paragraph(paragraph, blocks));
        }
    }

    private void paragraph(Paragraph paragraph, List<Block> blocks) {
        Phrase text = new Phrase();
        paragraph.text().forEach(span -> text.add(run(span)));
        float mark = FIRST_MARK + (paragraph.level() - 1) * STEP;
        blocks.add(Block.of(text, mark + STEP, LEADING, paragraph.level() == 1 ? 6 : 3)
            .hanging(run(Marks.of(paragraph), Face.TEXT, SIZE), mark)
            .keeping(!paragraph.children().isEmpty()).named(name(paragraph.id())));
        paragraph.children().forEach(child -> paragraph(child, blocks));
    }

    private Chunk run(Span span) {
        Chunk chunk = run(span.text(), span instanceof Strong ? Face.TEXT_BOLD : Face.TEXT, SIZE);
        if (span instanceof CrossReference reference && targets.contains(reference.target())) {
            chunk.setLocalGoto(reference.target());
        }
        return chunk;
    }

    private Chunk run(String text, Face face, float size) {
        return sheets.fonts.run(text, face, size, PdfSheets.INK);
    }

    /** Only what is referred to needs a name. */
    private String name(String id) {
        return targets.contains(id) ? id : "";
    }
}
