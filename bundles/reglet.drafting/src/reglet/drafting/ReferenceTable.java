package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Span;

/** The references of a section as a table: the same paragraphs with the same letters, and where each is cited. */
final class ReferenceTable {
    static final List<String> TITLES = List.of("Number", "Title", "Cited in");
    /** Widths of the columns: marks, numbers, titles, citing paragraphs. */
    static final float[] WIDTHS = {1, 4.5f, 9, 5};
    private static final String BREAK = ", ";

    /**
     * A row.
     *
     * @param number designation and edition; empty where a person wrote the row, which then has a text alone
     * @param title  title of the standard, or the whole text
     * @param cited  the paragraphs that cite it, each with its address as text
     */
    record Row(Paragraph paragraph, List<Span> number, List<Span> title, List<CrossReference> cited) {
        boolean isText() {
            return number.isEmpty();
        }
    }

    private ReferenceTable() {
    }

    /** One row for each paragraph of the article; what stands below a paragraph is left to who prints it. */
    static List<Row> rows(SectionDocument section, Article article) {
        return article.paragraphs().stream().map(paragraph -> row(section, article, paragraph)).toList();
    }

    private static Row row(SectionDocument section, Article article, Paragraph paragraph) {
        if (paragraph.own() || paragraph.text().isEmpty() || !(paragraph.text().get(0) instanceof Cited standard)) {
            return new Row(paragraph, List.of(), paragraph.text(), List.of());
        }
        List<Span> number = new ArrayList<>();
        List<Span> title = new ArrayList<>();
        for (Span span : paragraph.text()) {
            int comma = span instanceof Plain ? span.text().indexOf(BREAK) : -1;
            if (!title.isEmpty()) {
                title.add(span);
            } else if (comma < 0) {
                number.add(span);
            } else {
                if (comma > 0) {
                    number.add(new Plain(span.text().substring(0, comma)));
                }
                title.add(new Plain(span.text().substring(comma + BREAK.length())));
            }
        }
        return new Row(paragraph, number, title, citing(section, article, standard.standard()));
    }

    /** The text of a row that was told apart. */
    static List<Span> joined(List<Span> number, List<Span> title) {
        List<Span> all = new ArrayList<>();
        number.forEach(span -> add(all, span));
        if (!number.isEmpty() && !title.isEmpty()) {
            add(all, new Plain(BREAK));
        }
        title.forEach(span -> add(all, span));
        return all;
    }

    private static void add(List<Span> all, Span span) {
        if (span instanceof Plain && !all.isEmpty() && all.get(all.size() - 1) instanceof Plain last) {
            all.set(all.size() - 1, new Plain(last.text() + span.text()));
        } else {
            all.add(span);
        }
    }

    /** The paragraphs that print a standard, in whatever way it came into them. */
    private static List<CrossReference> citing(SectionDocument section, Article references, String standard) {
        Pattern printed = Pattern.compile("(?<![\\w/])" + Pattern.quote(standard) + "(?!\\w)");
        List<CrossReference> citing = new ArrayList<>();
        section.parts().forEach(part -> part.articles().stream().filter(article -> !article.id().equals(references.id()))
            .forEach(article -> article.paragraphs().forEach(paragraph -> collect(paragraph, printed, citing))));
        return citing;
    }

    private static void collect(Paragraph paragraph, Pattern printed, List<CrossReference> citing) {
        if (printed.matcher(paragraph.plain()).find()) {
            citing.add(new CrossReference(paragraph.id(), paragraph.path()));
        }
        paragraph.children().forEach(child -> collect(child, printed, citing));
    }
}
