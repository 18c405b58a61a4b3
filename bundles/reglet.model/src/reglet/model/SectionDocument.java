package reglet.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A drafted section: one tree that feeds every format.
 *
 * @param number  "04 73 00"
 * @param title   "Manufactured Stone Masonry"
 * @param job     job title
 * @param note    the job's note; ""
 * @param issue   name of the issue; "" for a draft
 * @param cautions sentences printed with the section
 */
public record SectionDocument(String number, String title, String job, String note, String issue, List<String> cautions, List<Part> parts) {

    public SectionDocument {
        cautions = List.copyOf(cautions);
        parts = List.copyOf(parts);
    }

    /** "GENERAL", "PRODUCTS", "EXECUTION". */
    public record Part(int number, String title, List<Article> articles) {
        public Part {
            articles = List.copyOf(articles);
        }
    }

    /**
     * An article with its number: "2.3", "LATH".
     *
     * @param table whether its paragraphs are references that print as the rows of a table
     */
    public record Article(String id, String number, String title, List<Paragraph> paragraphs, boolean table) {

        /** An article of paragraphs as they are. */
        public Article(String id, String number, String title, List<Paragraph> paragraphs) {
            this(id, number, title, paragraphs, false);
        }

        public Article {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    /**
     * A paragraph.
     *
     * @param id       stable id: the clause's id, with a path of child numbers and the walls it was drafted for where needed
     * @param number   own mark without punctuation: "A", "1", "a"
     * @param path     full address: "2.3.A.1"
     * @param level    1 for A., 2 for 1., 3 for a., 4 for 1), 5 for a)
     * @param own      whether the text is a person's own
     */
    public record Paragraph(String id, String number, String path, int level, boolean own, List<Span> text, List<Paragraph> children) {
        public Paragraph {
            text = List.copyOf(text);
            children = List.copyOf(children);
        }

        /** The text without marks. */
        public String plain() {
            StringBuilder line = new StringBuilder();
            text.forEach(span -> line.append(span.text()));
            return line.toString();
        }
    }

    /** A run of text in a paragraph. */
    public sealed interface Span permits Plain, Strong, Slot, Cited, CrossReference {
        String text();
    }

    public record Plain(String text) implements Span {
    }

    public record Strong(String text) implements Span {
    }

    /**
     * A phrase made from requirements or choices.
     *
     * @param ref          "lath.weight", "lath", "lath.weight.value"
     * @param requirements the requirements that it prints; empty when it prints a chosen option or a fact
     */
    public record Slot(String ref, String text, List<Requirement> requirements) implements Span {
        public Slot {
            requirements = List.copyOf(requirements);
        }
    }

    /** A cited standard. */
    public record Cited(String standard, String text) implements Span {
    }

    /** A reference to an article or paragraph of this section, or to another section; {@code target} is an id or a section number. */
    public record CrossReference(String target, String text) implements Span {
    }

    /** All paragraphs, each before its children. */
    public List<Paragraph> paragraphs() {
        List<Paragraph> all = new ArrayList<>();
        parts.forEach(part -> part.articles().forEach(article -> article.paragraphs().forEach(paragraph -> collect(paragraph, all))));
        return all;
    }

    private static void collect(Paragraph paragraph, List<Paragraph> all) {
        all.add(paragraph);
        paragraph.children().forEach(child -> collect(child, all));
    }

    /**
     * Address of the first paragraph that prints a requirement of this wall, component, option and property; for one that no paragraph
     * prints, such as a kind that the option's title says, of the first of Part 2 or 3 that names the option for this wall.
     */
    public Optional<String> pathOf(Requirement requirement) {
        return printing(slot -> slot.requirements().contains(requirement)).map(Paragraph::path).findFirst()
            .or(() -> pathOfOption(printing(slot -> slot.ref().equals(requirement.component())).toList(), requirement));
    }

    /** The first outside Part 1 of the paragraphs that name a component, in which its option is meant for the wall. */
    private static Optional<String> pathOfOption(List<Paragraph> naming, Requirement requirement) {
        return naming.stream().filter(paragraph -> !paragraph.path().startsWith("1.") && isFor(paragraph.id(), requirement))
            .map(Paragraph::path).findFirst();
    }

    /**
     * As {@link #pathOf} for many requirements of one wall type: the section is looked through once. Those without an address are left out.
     */
    public Map<Requirement, String> pathsOf(String wall, Collection<Requirement> requirements) {
        Map<Requirement, String> printed = new HashMap<>();
        Map<String, List<Paragraph>> naming = new HashMap<>();
        for (Paragraph paragraph : paragraphs()) {
            for (Span span : paragraph.text()) {
                if (span instanceof Slot slot) {
                    naming.computeIfAbsent(slot.ref(), ref -> new ArrayList<>()).add(paragraph);
                    slot.requirements().stream().filter(requirement -> requirement.wall().equals(wall))
                        .forEach(requirement -> printed.putIfAbsent(requirement, paragraph.path()));
                }
            }
        }
        Map<Requirement, String> paths = new LinkedHashMap<>();
        requirements.forEach(requirement -> Optional.ofNullable(printed.get(requirement))
            .or(() -> pathOfOption(naming.getOrDefault(requirement.component(), List.of()), requirement))
            .ifPresent(path -> paths.put(requirement, path)));
        return paths;
    }

    private Stream<Paragraph> printing(Predicate<Slot> prints) {
        return paragraphs().stream().filter(paragraph -> paragraph.text().stream()
            .anyMatch(span -> span instanceof Slot slot && prints.test(slot)));
    }

    /** Ids name the walls, and the options that are alternatives, where a paragraph isn't for all: "lath.metal@W1,W2~metal-3.4". */
    private static boolean isFor(String id, Requirement requirement) {
        return names(id, '@', requirement.wall()) && names(id, '~', requirement.option());
    }

    private static boolean names(String id, char mark, String name) {
        int start = id.indexOf(mark);
        return start < 0 || Stream.of(id.substring(start + 1).split("[@~,&/]"))
            .anyMatch(found -> found.equals(name) || found.startsWith(name + "."));
    }
}
