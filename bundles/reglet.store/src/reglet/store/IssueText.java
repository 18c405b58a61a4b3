package reglet.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import reglet.model.Issue;
import reglet.model.Place;
import reglet.model.Question;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;
import reglet.model.Value;
import reglet.model.WordSet;

/** The text of frozen files: an issue's own page as YAML, each section as JSON, which is YAML too. Reading gives back what was written. */
final class IssueText {

    private IssueText() {
    }

    /** @param digests SHA-256 of the other files of the issue, by name */
    static String head(Issue issue, Map<String, String> digests) {
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("format", IssueFiles.FORMAT);
        page.put("name", issue.name());
        page.put("kind", issue.kind().text());
        page.put("order", issue.order());
        page.put("number", issue.number());
        issue.date().ifPresent(date -> page.put("date", date.toString()));
        page.put("note", issue.note());
        page.put("job", issue.job());
        page.put("job-note", issue.jobNote());
        page.put("pack", map("name", issue.pack(), "digest", issue.packDigest()));
        page.put("findings", issue.findings());
        Map<String, Object> choices = new LinkedHashMap<>();
        issue.choices().forEach((address, made) -> choices.put(address, map("accept", made.accept(), "by", made.by())));
        page.put("choices", choices);
        Map<String, Object> questions = new LinkedHashMap<>();
        issue.questions().forEach(question -> questions.put(String.valueOf(question.number()), question(question)));
        page.put("questions", questions);
        page.put("cautions", issue.cautions());
        page.put("sections", issue.sections().stream().map(SectionDocument::number).toList());
        page.put("files", digests);
        StringBuilder text = new StringBuilder();
        page.forEach((name, value) -> {
            text.append(name).append(": ");
            write(value, "  ", text);
            text.append('\n');
        });
        return text.toString();
    }

    private static Map<String, Object> question(Question question) {
        Map<String, Object> form = map("from", question.from());
        question.asked().ifPresent(date -> form.put("asked", date.toString()));
        form.put("question", question.question());
        form.put("about", question.about());
        form.put("answer", question.answer());
        question.answered().ifPresent(date -> form.put("answered", date.toString()));
        return form;
    }

    static String section(SectionDocument section) {
        Map<String, Object> form = map("format", IssueFiles.FORMAT, "number", section.number(), "title", section.title(), "job",
            section.job(),
            "note", section.note(), "issue", section.issue(), "cautions", section.cautions());
        List<Object> parts = new ArrayList<>();
        for (SectionDocument.Part part : section.parts()) {
            List<Object> articles = new ArrayList<>();
            part.articles().forEach(article -> articles.add(map("id", article.id(), "number", article.number(), "title", article.title(),
                "paragraphs", paragraphs(article.paragraphs()))));
            parts.add(map("part", part.number(), "title", part.title(), "articles", articles));
        }
        form.put("parts", parts);
        StringBuilder text = new StringBuilder();
        write(form, "", text);
        return text.append('\n').toString();
    }

    private static List<Object> paragraphs(List<Paragraph> paragraphs) {
        List<Object> forms = new ArrayList<>();
        for (Paragraph paragraph : paragraphs) {
            Map<String, Object> form = map("id", paragraph.id(), "number", paragraph.number(), "path", paragraph.path(), "level",
                paragraph.level(), "own", paragraph.own() ? "yes" : "no", "text", paragraph.text().stream().map(IssueText::span).toList());
            if (!paragraph.children().isEmpty()) {
                form.put("paragraphs", paragraphs(paragraph.children()));
            }
            forms.add(form);
        }
        return forms;
    }

    private static Map<String, Object> span(Span span) {
        if (span instanceof Slot slot) {
            Map<String, Object> form = map("slot", slot.ref(), "text", slot.text());
            if (!slot.requirements().isEmpty()) {
                form.put("requires", slot.requirements().stream().map(IssueText::requirement).toList());
            }
            return form;
        }
        if (span instanceof Cited cited) {
            return map("standard", cited.standard(), "text", cited.text());
        }
        if (span instanceof CrossReference reference) {
            return map("see", reference.target(), "text", reference.text());
        }
        return map(span instanceof Strong ? "strong" : "plain", span.text());
    }

    private static Map<String, Object> requirement(Requirement requirement) {
        Place at = requirement.at();
        return map("wall", requirement.wall(), "component", requirement.component(), "option", requirement.option(), "property",
            requirement.property().name(), "value", value(requirement.value()), "file", at.file(), "line", at.line(), "column",
                at.column());
    }

    private static Object value(Value value) {
        return value instanceof WordSet set ? set.words() : value.text();
    }

    private static Map<String, Object> map(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }

    /** JSON (RFC 8259), maps and lists of maps over several lines. */
    private static void write(Object value, String indent, StringBuilder text) {
        if (value instanceof Map<?, ?> map) {
            String mark = "{";
            for (Map.Entry<?, ?> member : map.entrySet()) {
                text.append(mark).append(quoted((String) member.getKey())).append(": ");
                write(member.getValue(), indent + " ", text);
                mark = ", ";
            }
            text.append(map.isEmpty() ? "{}" : "}");
        } else if (value instanceof List<?> list) {
            text.append('[');
            String mark = "";
            for (Object item : list) {
                text.append(mark).append('\n').append(indent).append(' ');
                write(item, indent + " ", text);
                mark = ",";
            }
            text.append(']');
        } else {
            text.append(value instanceof Integer ? value.toString() : quoted((String) value));
        }
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            if (character == '"' || character == '\\') {
                quoted.append('\\').append(character);
            } else if (character == '\n') {
                quoted.append("\\n");
            } else if (character < ' ' || character >= 0x7F && character < 0xA0 || character == 0x2028 || character == 0x2029
                || character == 0xFEFF) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) character));
            } else {
                quoted.append(character);
            }
        }
        return quoted.append('"').toString();
    }
}
