package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Layout;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionPlan;
import reglet.model.SectionPlan.Made;

/** Numbers the articles and paragraphs of a section and puts the numbers into its references. Empty articles are left out. */
final class Numbering {
    private static final List<String> PARTS = List.of("GENERAL", "PRODUCTS", "EXECUTION");

    private final Map<String, List<Draft>> articles;
    private final SectionPlan plan;
    private final Layout layout;
    /** By target id: text and id of the thing referred to. */
    private final Map<String, CrossReference> references = new LinkedHashMap<>();

    private Numbering(SectionPlan plan, Map<String, List<Draft>> articles, Layout layout) {
        this.plan = plan;
        this.layout = layout;
        this.articles = articles;
    }

    /** The parts of a section; all three stand even when one is empty. */
    static List<Part> parts(SectionPlan plan, Map<String, List<Draft>> articles, Layout layout) {
        Numbering numbering = new Numbering(plan, articles, layout);
        // Once to learn the numbers, once to print them in references.
        numbering.number();
        return numbering.number();
    }

    private List<Part> number() {
        List<Part> parts = new ArrayList<>();
        for (int part = 1; part <= PARTS.size(); part++) {
            List<Article> numbered = new ArrayList<>();
            for (SectionPlan.Article article : plan.articles()) {
                List<Draft> drafts = articles.getOrDefault(article.id(), List.of());
                if (article.part() == part && !drafts.isEmpty()) {
                    String number = part + "." + (numbered.size() + 1);
                    references.put(article.id(), new CrossReference(article.id(), "Article " + number));
                    numbered.add(new Article(article.id(), number, article.title(), paragraphs(drafts, number, 1),
                        article.made() == Made.REFERENCES && layout.references() == Layout.References.TABLE));
                }
            }
            parts.add(new Part(part, PARTS.get(part - 1), numbered));
        }
        return parts;
    }

    private List<Paragraph> paragraphs(List<Draft> drafts, String above, int level) {
        List<Paragraph> paragraphs = new ArrayList<>();
        for (Draft draft : drafts) {
            String number = Marks.number(level, paragraphs.size() + 1);
            String path = above + "." + number;
            CrossReference reference = new CrossReference(draft.id(), "Paragraph " + path);
            references.put(draft.id(), reference);
            if (level == 1) {
                // A clause that prints several times is referred to where it prints first.
                references.putIfAbsent(draft.id().replaceFirst("[@~].*", ""), reference);
            }
            paragraphs.add(new Paragraph(draft.id(), number, path, level, draft.own(), draft.text().stream().map(this::resolved).toList(),
                paragraphs(draft.children(), path, level + 1)));
        }
        return paragraphs;
    }

    private Span resolved(Span span) {
        if (!(span instanceof CrossReference reference) || !reference.text().isEmpty()) {
            return span;
        }
        // What is referred to may have been left out of this job; the section is then the nearest thing that exists.
        return references.containsKey(reference.target()) ? references.get(reference.target()) : new Plain("this Section");
    }
}
