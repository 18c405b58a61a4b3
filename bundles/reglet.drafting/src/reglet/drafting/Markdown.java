package reglet.drafting;

import java.util.List;
import java.util.stream.Collectors;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;

/**
 * A section as Markdown (CommonMark): headings for parts and articles, nested lists whose items start with their mark in
 * strong text, slots as links, and each paragraph's id in a comment, so that tree and ids can be read back. References that stand in a
 * table do so with upright bars, as most readers of Markdown know them.
 */
public final class Markdown {
    static final String TABLE_HEAD = "| | " + String.join(" | ", ReferenceTable.TITLES) + " |";
    static final String TABLE_RULE = "| --- ".repeat(1 + ReferenceTable.TITLES.size()) + "|";
    private static final String BREAK = "\n\n";

    private Markdown() {
    }

    public static String of(SectionDocument section) {
        StringBuilder text = new StringBuilder("# Section " + section.number() + ": " + ClauseText.escape(section.title()) + BREAK);
        text.append(ClauseText.escape(section.job())).append(section.issue().isEmpty() ? ", draft"
            : ", issue " + ClauseText.escape(section.issue()))
            .append(BREAK);
        if (!section.note().isEmpty()) {
            text.append(ClauseText.escape(section.note())).append(BREAK);
        }
        section.parts().forEach(part -> part(section, part, text));
        text.append("END OF SECTION ").append(section.number()).append('\n');
        if (!section.cautions().isEmpty()) {
            text.append("\n## Cautions").append(BREAK);
            section.cautions().forEach(caution -> text.append("- ").append(ClauseText.escape(caution)).append('\n'));
        }
        return text.toString();
    }

    private static void part(SectionDocument section, Part part, StringBuilder text) {
        text.append("## PART ").append(part.number()).append(" - ").append(part.title()).append(BREAK);
        if (part.articles().isEmpty()) {
            text.append(Papers.NOT_USED).append(BREAK);
        }
        for (Article article : part.articles()) {
            text.append("### ").append(article.number()).append(' ').append(ClauseText.escape(article.title())).append(BREAK);
            if (article.table()) {
                table(section, article, text);
            } else {
                article.paragraphs().forEach(paragraph -> paragraph(paragraph, text));
            }
            text.append('\n');
        }
    }

    private static void paragraph(Paragraph paragraph, StringBuilder text) {
        text.append("  ".repeat(paragraph.level() - 1)).append("- **").append(Marks.of(paragraph)).append("** ");
        paragraph.text().forEach(span -> text.append(span(span)));
        text.append(' ').append(id(paragraph)).append('\n');
        paragraph.children().forEach(child -> paragraph(child, text));
    }

    private static String id(Paragraph paragraph) {
        return "<!-- " + paragraph.id() + (paragraph.own() ? " (own text)" : "") + " -->";
    }

    private static void table(SectionDocument section, Article article, StringBuilder text) {
        text.append(TABLE_HEAD).append('\n').append(TABLE_RULE).append('\n');
        for (ReferenceTable.Row row : ReferenceTable.rows(section, article)) {
            String cited = row.cited().stream().map(Markdown::span).collect(Collectors.joining(", "));
            row(row.paragraph(), "", cell(row.number()), cell(row.title()), cited, text);
        }
    }

    /** What stands below a row, and has the marks of all above it, follows as rows. */
    private static void row(Paragraph paragraph, String above, String number, String title, String cited, StringBuilder text) {
        String marks = (above + " " + Marks.of(paragraph)).strip();
        text.append("| **").append(marks).append("** | ").append(number).append(" | ").append(title).append(' ').append(id(paragraph))
            .append(" | ").append(cited).append(" |\n");
        paragraph.children().forEach(child -> row(child, marks, "", cell(child.text()), "", text));
    }

    private static String cell(List<Span> spans) {
        return spans.stream().map(Markdown::span).collect(Collectors.joining()).replace("|", "\\|");
    }

    private static String span(Span span) {
        if (span instanceof Slot slot) {
            return ClauseText.link(slot.ref(), slot.text());
        }
        if (span instanceof Cited cited) {
            return "[" + ClauseText.escape(cited.text()) + "](std:" + SlotNames.key(cited.standard()) + ")";
        }
        if (span instanceof CrossReference reference) {
            return "[" + ClauseText.escape(reference.text()) + "](see:" + reference.target().replace(' ', '_') + ")";
        }
        return span instanceof Plain ? ClauseText.escape(span.text()) : strong(span.text());
    }

    /** Spaces stand outside the stars, or Markdown doesn't see them. */
    static String strong(String text) {
        String bare = text.strip();
        int start = text.indexOf(bare);
        return bare.isEmpty() ? text
            : text.substring(0, start) + "**" + ClauseText.escape(bare) + "**" + text.substring(start + bare.length());
    }
}
