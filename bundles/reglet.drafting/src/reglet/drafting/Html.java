package reglet.drafting;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import reglet.model.Drawing;
import reglet.model.Office;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;

/**
 * A section as one HTML file without outside parts or scripts. Articles and paragraphs are anchors by their ids, phrases made
 * from requirements carry the slot's name in <code>data-slot</code>, and a style for printing is included.
 */
public final class Html {
    private static final String STYLE = """
        :root { color-scheme: light dark; }
        body { font: 1rem/1.5 "Liberation Serif", serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; }
        header, footer, h2, h3, nav { font-family: "Liberation Sans", sans-serif; }
        header p { margin: 0; font-size: .9rem; }
        h1 { font: 700 1.5rem/1.25 "Liberation Sans", sans-serif; margin: .25rem 0 1rem; }
        h2 { font-size: 1.1rem; border-top: 2px solid; padding-top: .5rem; margin-top: 2.5rem; }
        h3 { font-size: 1rem; margin: 1.75rem 0 .5rem; }
        h3 .mark { display: inline-block; min-width: 3rem; }
        ol { list-style: none; margin: 0; padding: 0; }
        li { margin: .4rem 0; padding-left: 2.25rem; position: relative; }
        li > .mark { position: absolute; left: 0; }
        li.own { box-shadow: -4px 0 0 -2px #888; }
        table { border-collapse: collapse; width: 100%; font-size: .9rem; }
        th, td { border: 1px solid #888; padding: .3rem .5rem; text-align: left; vertical-align: top; }
        th { font-family: "Liberation Sans", sans-serif; font-size: .85rem; }
        td:first-child > .mark { display: inline-block; min-width: 1.5rem; }
        tr { break-inside: avoid; }
        li:target, tr:target, h3:target { background: #fff3c4; color: #000; }
        nav { font-size: .85rem; }
        nav ul { list-style: none; margin: 0; padding: 0; columns: 18rem; }
        nav ul ul { columns: auto; padding-left: 1rem; }
        nav li { margin: 0; padding: 0; break-inside: avoid; }
        .end { text-align: center; margin: 2.5rem 0; font: .9rem "Liberation Sans", sans-serif; }
        aside { border: 1px solid #888; padding: .25rem 1rem .75rem; font-size: .85rem; }
        aside h2 { border: 0; margin: .5rem 0; padding: 0; font-size: .9rem; }
        aside ul { margin: 0; padding-left: 1.25rem; }
        aside li { padding: 0; }
        .sender p { margin: 0; font: .85rem "Liberation Sans", sans-serif; }
        .sender { margin-bottom: 2rem; }
        .sender img { max-height: .75in; max-width: 100%; }
        .cover { min-height: 60vh; margin-bottom: 2rem; border-bottom: 1px solid #888; }
        .cover .title { font: 700 1.75rem/1.25 "Liberation Sans", sans-serif; margin-top: 6rem; }
        .cover .heading { font: 700 1.1rem/1.4 "Liberation Sans", sans-serif; }
        .details figure { margin: 1.5rem 0; background: #fff; }
        .details svg { display: block; width: 100%; height: auto; }
        footer { font-size: .9rem; margin-top: 2rem; }
        @page { size: letter; margin: 1in; }
        @media print {
          body { max-width: none; margin: 0; padding: 0; font-size: 10.5pt; line-height: 1.35; }
          h2, h3 { break-after: avoid; }
          li { orphans: 2; widows: 2; box-shadow: none; }
          aside { break-inside: avoid; }
          nav { display: none; }
          a { color: inherit; text-decoration: none; }
          .cover, .details figure { break-after: page; border: 0; }
          .details h2 { break-before: page; }
          .details svg { width: auto; max-width: 100%; height: 8in; margin: 0 auto; }
        }
        """;

    private final StringBuilder out = new StringBuilder();
    private final SectionDocument section;
    private final Set<String> targets;

    private final Letterhead letterhead;

    private Html(SectionDocument section, Letterhead letterhead) {
        this.section = section;
        this.targets = Papers.targets(section);
        this.letterhead = letterhead;
    }

    public static String of(SectionDocument section) {
        return of(section, Letterhead.plain(section));
    }

    /** The section as an office writes it; its letterhead is one for the screen, without numbers of pages. */
    public static String of(SectionDocument section, Letterhead letterhead) {
        return of(section, letterhead, List.of(), null);
    }

    /** The section with drawings as its appendix; the frame isn't looked at without one. */
    public static String of(SectionDocument section, Letterhead letterhead, List<Drawing> appendix, Frame frame) {
        return new Html(section, letterhead).page(appendix, frame);
    }

    private String page(List<Drawing> appendix, Frame frame) {
        out.append("<!DOCTYPE html>\n<html lang=\"en-US\">\n<head>\n<meta charset=\"utf-8\">\n")
            .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .append("<title>Section ").append(text(section.number() + ", " + section.title())).append("</title>\n<style>\n")
            .append(style(letterhead.office())).append("</style>\n</head>\n<body>\n");
        sender();
        cover();
        out.append("<header>\n");
        edge(letterhead.office().templates().containsKey(Office.HEADER) ? letterhead.head() : new Letterhead.Edge(section.job(), ""));
        if (!section.note().isEmpty()) {
            out.append("<p>").append(text(section.note())).append("</p>\n");
        }
        out.append("<p>").append(text(Papers.issue(section))).append("</p>\n<h1>Section ").append(text(section.number())).append("<br>")
            .append(text(section.title())).append("</h1>\n</header>\n");
        contents(!appendix.isEmpty());
        out.append("<main>\n");
        section.parts().forEach(this::part);
        out.append("</main>\n<p class=\"end\">").append(text(Papers.end(section))).append("</p>\n");
        cautions(section.cautions());
        details(appendix, frame);
        if (letterhead.office().templates().containsKey(Office.FOOTER)) {
            out.append("<footer>\n");
            edge(letterhead.foot());
            out.append("</footer>\n");
        }
        return out.append("</body>\n</html>\n").toString();
    }

    private void edge(Letterhead.Edge edge) {
        if (!edge.left().isEmpty()) {
            out.append("<p>").append(text(edge.left())).append("</p>\n");
        }
        if (!edge.right().isEmpty()) {
            out.append("<p>").append(text(edge.right())).append("</p>\n");
        }
    }

    private void sender() {
        Office office = letterhead.office();
        if (office.name().isEmpty()) {
            return;
        }
        out.append("<div class=\"sender\">\n");
        if (letterhead.picture().length > 0) {
            out.append("<img alt=\"\" src=\"data:image/png;base64,").append(Base64.getEncoder().encodeToString(letterhead.picture()))
                .append("\">\n");
        }
        out.append("<p><strong>").append(text(office.name())).append("</strong></p>\n");
        office.address().forEach(line -> out.append("<p>").append(text(line)).append("</p>\n"));
        out.append("</div>\n");
    }

    private void cover() {
        if (letterhead.cover().isEmpty()) {
            return;
        }
        out.append("<div class=\"cover\">\n");
        for (Letterhead.Line line : letterhead.cover()) {
            String tag = switch (line.kind()) {
                case TITLE -> "p class=\"title\"";
                case HEADING -> "p class=\"heading\"";
                case TEXT -> "p";
                case ITEM -> "p class=\"item\"";
            };
            out.append('<').append(tag).append('>').append(line.kind() == Letterhead.Kind.ITEM ? "• " : "").append(text(line.text()))
                .append("</p>\n");
        }
        out.append("</div>\n");
    }

    /** Drawings as they print, each on a sheet of its own. */
    private void details(List<Drawing> appendix, Frame frame) {
        if (appendix.isEmpty()) {
            return;
        }
        out.append("<section id=\"details\" class=\"details\">\n<h2>Details</h2>\n");
        for (int i = 0; i < appendix.size(); i++) {
            String svg = DrawingSvg.of(appendix.get(i), frame.sheet(i, appendix.size()));
            out.append("<figure>\n").append(svg.substring(svg.indexOf("<svg"))).append("</figure>\n");
        }
        out.append("</section>\n");
    }

    private static String style(Office office) {
        String style = office.paper() == Office.Paper.A4 ? STYLE.replace("size: letter", "size: A4") : STYLE;
        Office.Font own = office.fonts().get(Office.Face.REGULAR);
        return own == null ? style : style.replace("\"Liberation Serif\"", family(own) + ", \"Liberation Serif\"")
            .replace("\"Liberation Sans\"", family(own) + ", \"Liberation Sans\"");
    }

    /** A family's name comes from a file of somebody's: nothing in it may end the string that it stands in. */
    private static String family(Office.Font font) {
        return "\"" + font.family().replaceAll("[^\\p{L}\\p{N} ._-]", "") + "\"";
    }

    /** Articles to go to; a screen has no bookmarks beside it. Paper has none of it. */
    private void contents(boolean details) {
        out.append("<nav aria-label=\"Contents\">\n<ul>\n");
        for (Part part : section.parts()) {
            out.append("<li><a href=\"#part-").append(part.number()).append("\">PART ").append(part.number()).append(" - ")
                .append(text(part.title())).append("</a>\n<ul>\n");
            part.articles().forEach(article -> out.append("<li><a href=\"#").append(fragment(article.id())).append("\">")
                .append(article.number()).append(' ').append(text(article.title())).append("</a></li>\n"));
            out.append("</ul>\n</li>\n");
        }
        out.append(details ? "<li><a href=\"#details\">Details</a></li>\n" : "").append("</ul>\n</nav>\n");
    }

    private void part(Part part) {
        out.append("<section id=\"part-").append(part.number()).append("\">\n<h2>PART ").append(part.number()).append(" - ")
            .append(text(part.title())).append("</h2>\n");
        if (part.articles().isEmpty()) {
            out.append("<p>").append(Papers.NOT_USED).append("</p>\n");
        }
        for (Article article : part.articles()) {
            out.append("<h3 id=\"").append(text(article.id())).append("\"><span class=\"mark\">").append(article.number())
                .append("</span> ")
                .append(text(article.title())).append("</h3>\n");
            if (article.table()) {
                table(article);
            } else {
                list(article.paragraphs());
            }
        }
        out.append("</section>\n");
    }

    private void table(Article article) {
        out.append("<table>\n<thead>\n<tr>");
        ReferenceTable.TITLES.forEach(title -> out.append("<th scope=\"col\">").append(title).append("</th>"));
        out.append("</tr>\n</thead>\n<tbody>\n");
        for (ReferenceTable.Row row : ReferenceTable.rows(section, article)) {
            Paragraph paragraph = row.paragraph();
            out.append("<tr id=\"").append(text(paragraph.id())).append('"').append(paragraph.own() ? " class=\"own\"" : "").append("><td")
                .append(row.isText() ? " colspan=\"" + ReferenceTable.TITLES.size() + "\"" : "").append("><span class=\"mark\">")
                .append(Marks.of(paragraph)).append("</span> ");
            (row.isText() ? row.title() : row.number()).forEach(this::span);
            if (!row.isText()) {
                out.append("</td><td>");
                row.title().forEach(this::span);
                out.append("</td><td>");
                for (int i = 0; i < row.cited().size(); i++) {
                    out.append(i == 0 ? "" : ", ");
                    span(row.cited().get(i));
                }
            }
            if (!paragraph.children().isEmpty()) {
                out.append('\n');
                list(paragraph.children());
            }
            out.append("</td></tr>\n");
        }
        out.append("</tbody>\n</table>\n");
    }

    private void list(List<Paragraph> paragraphs) {
        out.append("<ol>\n");
        for (Paragraph paragraph : paragraphs) {
            out.append("<li id=\"").append(text(paragraph.id())).append('"').append(paragraph.own() ? " class=\"own\"" : "")
                .append("><span class=\"mark\">").append(Marks.of(paragraph)).append("</span> ");
            paragraph.text().forEach(this::span);
            if (!paragraph.children().isEmpty()) {
                out.append('\n');
                list(paragraph.children());
            }
            out.append("</li>\n");
        }
        out.append("</ol>\n");
    }

    private void span(Span span) {
        if (span instanceof Slot slot) {
            out.append("<span data-slot=\"").append(text(slot.ref())).append("\">").append(text(slot.text())).append("</span>");
        } else if (span instanceof Cited cited) {
            out.append("<span data-standard=\"").append(text(cited.standard())).append("\">").append(text(cited.text())).append("</span>");
        } else if (span instanceof CrossReference reference && targets.contains(reference.target())) {
            out.append("<a href=\"#").append(fragment(reference.target())).append("\">").append(text(reference.text())).append("</a>");
        } else if (span instanceof Strong) {
            out.append("<strong>").append(text(span.text())).append("</strong>");
        } else {
            out.append(text(span.text()));
        }
    }

    private void cautions(List<String> cautions) {
        if (!cautions.isEmpty()) {
            out.append("<aside>\n<h2>").append(Papers.CAUTIONS).append("</h2>\n<ul>\n");
            cautions.forEach(caution -> out.append("<li>").append(text(caution)).append("</li>\n"));
            out.append("</ul>\n</aside>\n");
        }
    }

    static String text(String raw) {
        return raw.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    /** An id in an address: everything but plain letters and digits in per cent notation. */
    private static String fragment(String id) {
        StringBuilder fragment = new StringBuilder();
        for (byte unit : id.getBytes(StandardCharsets.UTF_8)) {
            char character = (char) (unit & 0xff);
            if (character < 128 && (Character.isLetterOrDigit(character) || ".-_~".indexOf(character) >= 0)) {
                fragment.append(character);
            } else {
                fragment.append(String.format(Locale.ROOT, "%%%02X", unit & 0xff));
            }
        }
        return fragment.toString();
    }
}
