package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Assembly;
import reglet.model.Component;
import reglet.model.Place;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Strong;
import reglet.model.TextChange;

/**
 * A paragraph of a drafted section that a person wrote.
 *
 * @param section number of the section
 * @param part    1, 2 or 3
 * @param article id of its article
 * @param text    what was typed, without slots and list marks
 * @param about   component of the clause that it changes or follows; empty for none
 * @param above   text of the paragraph that it stands below; ""
 * @param change  the block that it comes from
 */
record OwnText(String section, int part, String article, Paragraph paragraph, String text, Optional<Component> about, String above,
        TextChange change) {

    static List<OwnText> of(Assembly assembly, SectionDocument section) {
        List<OwnText> all = new ArrayList<>();
        for (Part part : section.parts()) {
            for (Article article : part.articles()) {
                article.paragraphs().forEach(paragraph -> collect(assembly, section.number(), part.number(), article.id(), paragraph,
                    "", all));
            }
        }
        return all;
    }

    private static void collect(Assembly assembly, String section, int part, String article, Paragraph paragraph, String above,
            List<OwnText> all) {
        if (paragraph.own()) {
            change(assembly, section, paragraph).ifPresent(change -> all.add(new OwnText(section, part, article, paragraph,
                typed(paragraph),
                assembly.pack().component(head(change.paragraph())), above, change)));
        }
        paragraph.children().forEach(child -> collect(assembly, section, part, article, child, paragraph.plain(), all));
    }

    /** "lath" of "lath.metal@W1/2". */
    static String head(String id) {
        return id.replaceFirst("[.@~/+].*", "");
    }

    /** Slots print what is required, so only what stands between them is looked at. */
    private static String typed(Paragraph paragraph) {
        StringBuilder text = new StringBuilder();
        LibraryText.unled(paragraph).forEach(span -> text.append(span instanceof Plain || span instanceof Strong ? span.text() : "|"));
        return text.toString().strip();
    }

    /** Several blocks may stand after one paragraph; the one is meant that holds the words. */
    static Optional<TextChange> change(Assembly assembly, String section, Paragraph paragraph) {
        List<TextChange> made = assembly.job().changes().stream().filter(change -> change.section().equals(section)
            && (change.kind() == TextChange.Kind.CHANGE || change.kind() == TextChange.Kind.ADD)
            && (paragraph.id().equals(change.paragraph())
                || paragraph.id().startsWith(change.paragraph() + "/") || paragraph.id().startsWith(change.paragraph() + "+"))).toList();
        String words = paragraph.text().stream().filter(span -> span instanceof Plain).map(span -> span.text().strip())
            .filter(text -> !text.isEmpty()).findFirst().orElse("");
        return made.stream().filter(change -> change.text().replaceAll("\\s+", " ").contains(words)).findFirst()
            .or(() -> made.stream().findFirst());
    }

    Place at(String phrase) {
        return change.placeOf(phrase);
    }

    /** "3.2.B". */
    String path() {
        return paragraph.path();
    }

    /** Whether it is a paragraph of its own that names what it is about: "Joint reinforcement: …". */
    boolean names() {
        return paragraph.level() == 1 && paragraph.id().contains("+") && !paragraph.id().contains(TextChanges.KEPT)
            && text.indexOf(':') > 0;
    }

    /** What it is about, before the colon. */
    String lead() {
        return text.substring(0, text.indexOf(':'));
    }
}
