package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;

/** Reads a section as it was frozen. */
final class IssuedSections {
    private final Pack pack;

    private IssuedSections(Pack pack) {
        this.pack = pack;
    }

    static SectionDocument read(Cursor file, Pack pack) {
        Fields fields = file.fields("format", "number", "title", "job", "note", "issue", "cautions", "parts");
        Formats.check(fields, IssueFiles.FORMAT, "issued section");
        IssuedSections sections = new IssuedSections(pack);
        List<Part> parts = new ArrayList<>();
        for (Cursor part : fields.items("parts")) {
            Fields one = part.fields("part", "title", "articles");
            parts.add(new Part(one.number("part", 0), one.text("title"), one.items("articles").stream().map(sections::article).toList()));
        }
        return new SectionDocument(fields.text("number"), fields.text("title"), fields.text("job", ""), fields.text("note", ""),
            fields.text("issue", ""), fields.texts("cautions"), parts);
    }

    private Article article(Cursor cursor) {
        Fields fields = cursor.fields("id", "number", "title", "paragraphs");
        return new Article(fields.text("id"), fields.text("number"), fields.text("title"), paragraphs(fields));
    }

    private List<Paragraph> paragraphs(Fields fields) {
        return fields.items("paragraphs").stream().map(this::paragraph).toList();
    }

    private Paragraph paragraph(Cursor cursor) {
        Fields fields = cursor.fields("id", "number", "path", "level", "own", "text", "paragraphs");
        return new Paragraph(fields.text("id"), fields.text("number"), fields.text("path"), fields.number("level", 1),
            fields.text("own", "no").equals("yes"), fields.items("text").stream().map(this::span).toList(), paragraphs(fields));
    }

    private Span span(Cursor cursor) {
        Fields fields = cursor.fields("plain", "strong", "slot", "standard", "see", "text", "requires");
        String text = fields.text("text", "");
        if (fields.find("slot").isPresent()) {
            return new Slot(fields.text("slot"), text,
                fields.items("requires").stream().flatMap(item -> requirement(item).stream()).toList());
        }
        if (fields.find("standard").isPresent()) {
            return new Cited(fields.text("standard"), text);
        }
        if (fields.find("see").isPresent()) {
            return new CrossReference(fields.text("see"), text);
        }
        if (fields.find("strong").isPresent()) {
            return new Strong(fields.text("strong", ""));
        }
        if (fields.find("plain").isEmpty()) {
            cursor.wrong("is no run of text", "expected one of: plain, strong, slot, standard, see");
        }
        return new Plain(fields.text("plain", ""));
    }

    /** The requirement, as far as the pack still declares its property and reads its value. */
    private Optional<Requirement> requirement(Cursor cursor) {
        Fields fields = cursor.fields("wall", "component", "option", "property", "value", "file", "line", "column");
        Place at = new Place(fields.text("file", ""), fields.number("line", 0), fields.number("column", 0));
        return pack.component(fields.text("component")).flatMap(component -> component.property(fields.text("property")))
            .flatMap(property -> fields.find("value")
            .flatMap(value -> value.isList() ? property.type().set(value.texts()) : property.type().read(value.text()))
            .map(value -> new Requirement(fields.text("wall", ""), fields.text("component"), fields.text("option", ""), property,
                value, at)));
    }
}
