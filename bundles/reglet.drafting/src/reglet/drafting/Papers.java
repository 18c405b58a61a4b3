package reglet.drafting;

import java.util.LinkedHashSet;
import java.util.Set;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.CrossReference;

/** What all formats of a section print in the same words. */
final class Papers {
    static final String NOT_USED = "Not used.";
    static final String CAUTIONS = "Cautions";

    private Papers() {
    }

    static String issue(SectionDocument section) {
        return section.issue().isEmpty() ? "Draft" : "Issue: " + section.issue();
    }

    /** A paragraph's number in a table. */
    static String paragraph(String path) {
        return path.isEmpty() ? "not printed" : path;
    }

    static String end(SectionDocument section) {
        return "END OF SECTION " + section.number();
    }

    /** Ids of articles and paragraphs of the section that its references lead to. */
    static Set<String> targets(SectionDocument section) {
        Set<String> here = new LinkedHashSet<>();
        section.parts().forEach(part -> part.articles().forEach(article -> here.add(article.id())));
        section.paragraphs().forEach(paragraph -> here.add(paragraph.id()));
        Set<String> targets = new LinkedHashSet<>();
        section.paragraphs().forEach(paragraph -> paragraph.text().forEach(span -> {
            if (span instanceof CrossReference reference && here.contains(reference.target())) {
                targets.add(reference.target());
            }
        }));
        section.parts().forEach(part -> part.articles().stream().filter(Article::table).forEach(article ->
            ReferenceTable.rows(section, article)
            .forEach(row -> row.cited().forEach(reference -> targets.add(reference.target())))));
        return targets;
    }
}
