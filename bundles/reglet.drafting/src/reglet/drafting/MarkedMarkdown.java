package reglet.drafting;

import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Edit;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Line;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionChanges.Side;
import reglet.model.SectionChanges.Sort;

/** The changed lines of a section as Markdown, below the articles that they stand in; what is put in and taken out as HTML has it. */
public final class MarkedMarkdown {

    private MarkedMarkdown() {
    }

    /** @param marks what the paper is: "Changes from Bid set to Addendum 1" */
    public static String of(SectionChanges changes, String marks) {
        StringBuilder page = new StringBuilder("# Section ").append(changes.section().number()).append(": ")
            .append(ClauseText.escape(changes.section().title())).append("\n\n").append(ClauseText.escape(changes.section().job()))
            .append("\n\n").append(ClauseText.escape(marks)).append(": <ins>put in</ins>, <del>taken out</del>.\n");
        Side article = null;
        Side written = null;
        for (Line line : changes.lines()) {
            Side side = line.side();
            if (side.sort() == Sort.ARTICLE) {
                article = side;
            }
            if (line.kind() == Kind.SAME || side.sort() == Sort.CAUTION) {
                continue;
            }
            if (side.sort() == Sort.ARTICLE) {
                page.append("\n## ").append(side.path()).append(' ').append(text(line)).append("\n\n");
                written = side;
            } else {
                if (side.sort() == Sort.PARAGRAPH && article != null && article != written) {
                    page.append("\n## ").append(article.path()).append(' ').append(ClauseText.escape(article.plain())).append("\n\n");
                    written = article;
                }
                page.append("- **").append(side.path()).append("** ").append(text(line)).append('\n');
            }
        }
        if (changes.provisions().isEmpty()) {
            page.append("\nNo paragraph changed.\n");
        }
        if (!changes.cautions().isEmpty()) {
            page.append("\n## ").append(Papers.CAUTIONS).append("\n\n");
            changes.cautions().forEach(line -> page.append("- ").append(text(line)).append('\n'));
        }
        return page.toString();
    }

    private static String start(Edit edit) {
        return edit == Edit.KEPT ? "" : edit == Edit.INSERTED ? "<ins>" : "<del>";
    }

    private static String end(Edit edit) {
        return edit == Edit.KEPT ? "" : edit == Edit.INSERTED ? "</ins>" : "</del>";
    }

    private static String text(Line line) {
        StringBuilder text = new StringBuilder();
        Edit open = Edit.KEPT;
        for (Run run : line.runs()) {
            text.append(run.edit() == open ? "" : end(open) + start(run.edit())).append(ClauseText.escape(run.span().text()));
            open = run.edit();
        }
        text.append(end(open));
        if (line.kind() == Kind.LEFT) {
            text.append(" (moved to ").append(line.after().orElseThrow().path()).append(')');
        } else if (line.kind() == Kind.MOVED) {
            text.append(" (moved from ").append(line.before().orElseThrow().path()).append(')');
        }
        return text.toString();
    }
}
