package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import com.lowagie.text.Chunk;
import com.lowagie.text.Phrase;

import reglet.drafting.PdfFonts.Face;
import reglet.drafting.PdfSheets.Block;
import reglet.drafting.Letterhead.Line;
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
    /** The room that a cover leaves above its first line. */
    private static final float COVER_DROP = 120;
    private static final float ARTICLE_TEXT = 40;
    private static final float FIRST_MARK = 18;
    private static final float STEP = 22;
    /** Room for an article's heading, a table's head and two rows. */
    private static final float TABLE_START = 100;

    private final SectionDocument section;
    private final Letterhead letterhead;
    private final Set<String> targets;
    private final PdfSheets sheets;

    private Pdf(SectionDocument section, Letterhead letterhead, int of) {
        this.section = section;
        this.letterhead = letterhead;
        this.targets = Papers.targets(section);
        this.sheets = PdfLetterhead.sheets("Section " + section.number() + ", " + section.title(), section.job(), letterhead, of);
    }

    public static byte[] of(SectionDocument section) {
        return of(section, Letterhead.plain(section));
    }

    public static byte[] of(SectionDocument section, Letterhead letterhead) {
        // The first layout counts the sheets, the second prints their number.
        Pdf trial = new Pdf(section, letterhead, 0);
        trial.write();
        Pdf pdf = new Pdf(section, letterhead, trial.sheets.sheet());
        pdf.write();
        return pdf.sheets.bytes();
    }

    /** The section with drawings as its appendix, on sheets of their own after its end. */
    public static byte[] of(SectionDocument section, Letterhead letterhead, List<Drawing> appendix, Frame frame) {
        byte[] alone = of(section, letterhead);
        return appendix.isEmpty() ? alone : SameBytes.joined(alone, DrawingPdf.of(appendix, frame));
    }

    private void write() {
        if (letterhead.cover().isEmpty()) {
            PdfLetterhead.sender(sheets, letterhead);
        } else {
            cover();
        }
        head();
        List<Block> blocks = new ArrayList<>();
        section.parts().forEach(part -> part(part, blocks));
        // The end mark never stands alone on a sheet.
        if (!blocks.isEmpty()) {
            blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1).keeping(true));
        }
        float middle = (sheets.width() - sheets.fonts.width(Papers.end(section), Face.SANS_BOLD, END)) / 2;
        blocks.add(Block.of(new Phrase(run(Papers.end(section), Face.SANS_BOLD, END)), middle, LEADING, 24));
        sheets.flow(blocks);
        PdfText.cautions(sheets, section.cautions());
    }

    private void cover() {
        PdfLetterhead.sender(sheets, letterhead);
        sheets.space(COVER_DROP);
        List<Block> blocks = new ArrayList<>();
        for (Line line : letterhead.cover()) {
            blocks.add(switch (line.kind()) {
                case TITLE -> Block.of(new Phrase(run(line.text(), Face.SANS_BOLD, 20)), 0, 25, 12);
                case HEADING -> Block.of(new Phrase(run(line.text(), Face.SANS_BOLD, 12)), 0, 16, 16).keeping(true);
                case TEXT -> Block.of(new Phrase(run(line.text(), Face.TEXT, SIZE)), 0, LEADING, 6);
                case ITEM -> Block.of(new Phrase(run(line.text(), Face.TEXT, SIZE)), 16, LEADING, 3)
                    .hanging(run("•", Face.TEXT, SIZE), 4);
            });
        }
        sheets.flow(blocks);
        sheets.next();
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
            if (article.table()) {
                table(article, blocks);
            } else {
                article.paragraphs().forEach(paragraph -> paragraph(paragraph, blocks));
            }
        }
    }

    /** Sets what stands before the table, and the table below its heading. */
    private void table(Article article, List<Block> blocks) {
        List<Block> heading = new ArrayList<>();
        while (!blocks.isEmpty() && blocks.get(blocks.size() - 1).keep()) {
            heading.add(0, blocks.remove(blocks.size() - 1));
        }
        sheets.flow(blocks);
        blocks.clear();
        sheets.room(TABLE_START);
        sheets.flow(heading);
        sheets.space(6);
        PdfTable table = new PdfTable(sheets, true, ReferenceTable.WIDTHS).head("", ReferenceTable.TITLES.get(0),
            ReferenceTable.TITLES.get(1),
            ReferenceTable.TITLES.get(2));
        for (ReferenceTable.Row row : ReferenceTable.rows(section, article)) {
            row(row, table);
        }
        table.write();
    }

    private void row(ReferenceTable.Row row, PdfTable table) {
        Chunk mark = table.run(Marks.of(row.paragraph()), false);
        if (targets.contains(row.paragraph().id())) {
            mark.setLocalDestination(row.paragraph().id());
        }
        table.add(new Phrase(mark), 1);
        if (row.isText()) {
            table.add(cell(table, row.title()), ReferenceTable.TITLES.size());
        } else {
            Phrase cited = new Phrase();
            for (CrossReference reference : row.cited()) {
                cited.add(table.run(cited.isEmpty() ? "" : ", ", false));
                cited.add(linked(table.run(reference.text(), false), reference));
            }
            table.add(cell(table, row.number()), 1).add(cell(table, row.title()), 1).add(cited, 1);
        }
        row.paragraph().children().forEach(child -> below(child, table));
    }

    private void below(Paragraph paragraph, PdfTable table) {
        Phrase text = new Phrase(table.run(Marks.of(paragraph) + " ", false));
        text.addAll(cell(table, paragraph.text()));
        table.add("").add(text, ReferenceTable.TITLES.size());
        paragraph.children().forEach(child -> below(child, table));
    }

    private Phrase cell(PdfTable table, List<Span> spans) {
        Phrase text = new Phrase();
        spans.forEach(span -> text.add(linked(table.run(span.text(), span instanceof Strong), span)));
        return text;
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
        return linked(run(span.text(), span instanceof Strong ? Face.TEXT_BOLD : Face.TEXT, SIZE), span);
    }

    private Chunk linked(Chunk chunk, Span span) {
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
