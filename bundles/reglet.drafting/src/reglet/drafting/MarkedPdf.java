package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import com.lowagie.text.Chunk;
import com.lowagie.text.Phrase;

import reglet.drafting.PdfFonts.Face;
import reglet.drafting.PdfSheets.Block;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Edit;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Line;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionChanges.Side;
import reglet.model.SectionChanges.Sort;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Strong;

/**
 * The changes of a section on paper: what is put in stands bold and underlined, what is taken out struck through, and a bar in the
 * margin beside both, so that no colour is needed to see them. Numbers are the later draft's; what was taken out bears its old one.
 */
public final class MarkedPdf {
    private static final float SIZE = 10.5f;
    private static final float LEADING = 13.5f;
    private static final float ARTICLE_TEXT = 40;
    private static final float FIRST_MARK = 18;
    private static final float STEP = 22;
    private static final float LINE = 0.7f;

    private final SectionChanges changes;
    private final SectionDocument section;
    private final Letterhead letterhead;
    private final PdfSheets sheets;

    private MarkedPdf(SectionChanges changes, String marks, Letterhead letterhead, int of) {
        this.changes = changes;
        this.section = changes.section();
        this.letterhead = letterhead;
        this.sheets = PdfLetterhead.sheets("Section " + section.number() + ", " + section.title() + ": " + marks, section.job(), letterhead,
            of);
    }

    /** @param marks what the paper is: "Changes from Bid set to Addendum 1" */
    public static byte[] of(SectionChanges changes, String marks) {
        return of(changes, marks, Letterhead.marked(changes, marks));
    }

    public static byte[] of(SectionChanges changes, String marks, Letterhead letterhead) {
        MarkedPdf trial = new MarkedPdf(changes, marks, letterhead, 0);
        trial.write(marks);
        MarkedPdf pdf = new MarkedPdf(changes, marks, letterhead, trial.sheets.sheet());
        pdf.write(marks);
        return pdf.sheets.bytes();
    }

    private void write(String marks) {
        PdfLetterhead.sender(sheets, letterhead);
        List<Block> head = new ArrayList<>();
        head.add(Block.of(new Phrase(run("SECTION " + section.number(), Face.SANS_BOLD, 11)), 0, 15, 0));
        lines(Sort.TITLE).forEach(line -> head.add(block(line, 17, Face.SANS_BOLD, 0, 21, 0)));
        lines(Sort.NOTE).forEach(line -> head.add(block(line, 9.5f, Face.TEXT_ITALIC, 0, 13, 2)));
        Phrase legend = new Phrase(run(marks + ": ", Face.SANS, 8.5f));
        legend.add(marked("put in", Edit.INSERTED, Face.SANS, 8.5f));
        legend.add(run(", ", Face.SANS, 8.5f));
        legend.add(marked("taken out", Edit.DELETED, Face.SANS, 8.5f));
        legend.add(run("; a bar beside every line that changed.", Face.SANS, 8.5f));
        head.add(Block.of(legend, 0, 12, 4));
        sheets.flow(head);
        sheets.space(10);
        sheets.rule(1);
        List<Block> blocks = new ArrayList<>();
        changes.lines().forEach(line -> line(line, blocks));
        blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1).keeping(true));
        float middle = (sheets.width() - sheets.fonts.width(Papers.end(section), Face.SANS_BOLD, 9.5f)) / 2;
        blocks.add(Block.of(new Phrase(run(Papers.end(section), Face.SANS_BOLD, 9.5f)), middle, LEADING, 24));
        List<Line> cautions = lines(Sort.CAUTION);
        if (!cautions.isEmpty()) {
            blocks.add(Block.of(new Phrase(run(Papers.CAUTIONS, Face.SANS_BOLD, 8.5f)), 0, 12, 18).keeping(true));
            cautions.forEach(line -> blocks.add(block(line, 8.5f, Face.SANS, 14, 11.5f, 3).hanging(run("•", Face.SANS, 8.5f), 4)));
        }
        sheets.flow(blocks);
    }

    private List<Line> lines(Sort sort) {
        return changes.lines().stream().filter(line -> line.side().sort() == sort).toList();
    }

    private void line(Line line, List<Block> blocks) {
        Side side = line.side();
        String title = side.mark() + " " + side.plain();
        Edit edit = line.kind().stands() ? line.kind().stood() ? Edit.KEPT : Edit.INSERTED : Edit.DELETED;
        switch (side.sort()) {
            case PART -> blocks.add(Block.of(new Phrase(run(title, Face.SANS_BOLD, 11.5f)), 0, 15, 20).keeping(true).bookmarked(title, 0));
            case EMPTY -> blocks.add(block(line, SIZE, Face.TEXT, 0, LEADING, 6));
            case ARTICLE -> blocks.add(block(line, 9.5f, Face.SANS_BOLD, ARTICLE_TEXT, LEADING, 13)
                .hanging(marked(side.mark(), edit, Face.SANS_BOLD, 9.5f), 0).keeping(true).bookmarked(title, 1));
            case PARAGRAPH -> {
                float mark = FIRST_MARK + (side.level() - 1) * STEP;
                blocks.add(block(line, SIZE, Face.TEXT, mark + STEP, LEADING, side.level() == 1 ? 6 : 3)
                    .hanging(marked(side.mark(), edit, Face.TEXT, SIZE), mark).keeping(side.holds()));
            }
            default -> { }
        }
    }

    private Block block(Line line, float size, Face face, float left, float leading, float before) {
        Phrase text = new Phrase();
        for (Run run : line.runs()) {
            Face one = run.span() instanceof Strong ? Face.TEXT_BOLD : face;
            text.add(marked(run.span().text(), run.edit(), one, size));
        }
        String moved = line.kind() == Kind.LEFT ? " (moved to " + line.after().orElseThrow().path() + ")"
            : line.kind() == Kind.MOVED ? " (moved from " + line.before().orElseThrow().path() + ")" : "";
        if (!moved.isEmpty()) {
            text.add(run(moved, Face.TEXT_ITALIC, size));
        }
        return Block.of(text, left, leading, before).barred(line.kind() != Kind.SAME);
    }

    private Chunk marked(String text, Edit edit, Face face, float size) {
        Face shown = edit != Edit.INSERTED ? face : face == Face.SANS || face == Face.SANS_BOLD ? Face.SANS_BOLD : Face.TEXT_BOLD;
        Chunk chunk = run(text, shown, size);
        if (edit == Edit.INSERTED) {
            chunk.setUnderline(LINE, -size * 0.15f);
        } else if (edit == Edit.DELETED) {
            chunk.setUnderline(LINE, size * 0.28f);
        }
        return chunk;
    }

    private Chunk run(String text, Face face, float size) {
        return sheets.fonts.run(text, face, size, PdfSheets.INK);
    }
}
