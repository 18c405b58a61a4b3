package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.drafting.Markdown;
import reglet.drafting.MarkdownReader;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionPlan;
import reglet.model.UnusableInput;

/** The Markdown of a section holds all of it but the requirements behind its slots. */
class MarkdownReadBackTest {

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library", "orchard-row"})
    void everySectionOfTheSamplesReadsBackAsItWas(String name) throws Exception {
        OpenJob job = Samples.open(name);
        for (SectionDocument section : job.sections()) {
            SectionPlan plan = job.pack().plan(section.number()).orElseThrow();
            String markdown = Markdown.of(section);
            SectionDocument read = MarkdownReader.read("section.md", plan, markdown);
            assertEquals(bare(section), read);
            assertEquals(markdown, Markdown.of(read));
        }
    }

    @Test
    void aLineThatIsNoneOfASectionIsNamedWithItsPlace() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        SectionDocument section = job.section("04 73 00");
        SectionPlan plan = job.pack().plan("04 73 00").orElseThrow();
        String markdown = Markdown.of(section);
        String broken = markdown.replaceFirst("\n- \\*\\*A\\.\\*\\* ", "\n- A. ");
        int line = broken.substring(0, broken.indexOf("\n- A. ") + 1).split("\n", -1).length;
        UnusableInput wrong = assertThrows(UnusableInput.class, () -> MarkdownReader.read("section.md", plan, broken));
        assertTrue(wrong.getMessage().startsWith("section.md:" + line + ":1: "), wrong.getMessage());
        assertThrows(UnusableInput.class, () -> MarkdownReader.read("section.md", plan, markdown.substring(0, markdown.indexOf("END OF"))));
        assertThrows(UnusableInput.class, () -> MarkdownReader.read("section.md", plan, markdown.replace(" SUMMARY\n", " SUMARY\n")));
    }

    private static SectionDocument bare(SectionDocument section) {
        return new SectionDocument(section.number(), section.title(), section.job(), section.note(), section.issue(), section.cautions(),
            section.parts().stream().map(part -> new Part(part.number(), part.title(), part.articles().stream().map(article ->
                new Article(article.id(), article.number(), article.title(), bare(article.paragraphs()),
                    article.table())).toList())).toList());
    }

    private static List<Paragraph> bare(List<Paragraph> paragraphs) {
        return paragraphs.stream().map(one -> new Paragraph(one.id(), one.number(), one.path(), one.level(), one.own(),
            spans(one.text()), bare(one.children()))).toList();
    }

    /** Slots without requirements; plain texts that follow one another are one in Markdown. */
    private static List<Span> spans(List<Span> text) {
        List<Span> spans = new ArrayList<>();
        for (Span span : text) {
            Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
            if (span instanceof Plain && last instanceof Plain) {
                spans.set(spans.size() - 1, new Plain(last.text() + span.text()));
            } else {
                spans.add(span instanceof Slot slot ? new Slot(slot.ref(), slot.text(), List.of()) : span);
            }
        }
        return spans;
    }
}
