package reglet.workbench.section;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.swt.custom.StyledText;

import reglet.desk.SectionPage;
import reglet.desk.SectionPage.Article;
import reglet.desk.SectionPage.Line;
import reglet.desk.SectionPage.Standing;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.workbench.Prose;
import reglet.workbench.Ui;

/** Writes the page of a section, and knows which paragraph stands in which line of the text. */
final class PageText {
    /** Characters of indent for each level, the width of a mark with its blanks. */
    private static final int STEP = 4;
    private static final int PRODUCTS = 2;
    /** Points left free below what is brought in sight. */
    private static final int ROOM = 4;
    private static final String STRUCK = "—";
    private final Prose prose;
    private final Function<String, Optional<String>> component;
    private final Consumer<String> look;
    private final Consumer<CrossReference> follow;
    private List<Row> rows = List.of();
    private List<Title> titles = List.of();
    private Optional<Integer> gapAt = Optional.empty();

    /** What is written in, in place of a paragraph or behind one. */
    interface Gap {
        /** Whether it stands in place of this paragraph. */
        boolean isFor(Line line);

        /** Whether it stands behind this paragraph. */
        boolean isBehind(Line line);

        /** In points. */
        int height();

        /** Where it stands, in points of the text. */
        void at(int x, int y);

        /** Whether it stands on the page at all. */
        void shown(boolean shown);
    }

    /**
     * A paragraph in the text.
     *
     * @param index      of its line in the text
     * @param components that its values speak of
     */
    record Row(int index, int part, Line line, Set<String> components, List<Stretch> stretches) {
    }

    /** A run of text in a line, counted from the line's start. */
    record Stretch(int start, int end, Span span) {
    }

    private record Title(int index, String id) {
    }

    /**
     * @param component the component of a slot's owner
     * @param look      told the component of a value that was clicked
     * @param follow    told a reference that was clicked
     */
    PageText(Prose prose, Function<String, Optional<String>> component, Consumer<String> look, Consumer<CrossReference> follow) {
        this.prose = prose;
        this.component = component;
        this.look = look;
        this.follow = follow;
    }

    /** @param gap empty when nobody writes */
    void draw(SectionPage page, Optional<Gap> gap) {
        List<Row> made = new ArrayList<>();
        List<Title> headings = new ArrayList<>();
        SectionDocument section = page.document();
        gapAt = Optional.empty();
        prose.heading("SECTION " + section.number());
        prose.heading(section.title().toUpperCase(Locale.ROOT));
        if (!section.note().isEmpty()) {
            prose.line(section.note());
        }
        int part = 0;
        for (Article article : page.articles()) {
            if (article.part() != part) {
                part = article.part();
                prose.title("PART " + part + "  " + article.partTitle());
            }
            prose.title((article.number().isEmpty() ? STRUCK : article.number()) + "  " + article.title());
            headings.add(new Title(prose.lines() - 1, article.id()));
            for (int i = 0; i < article.lines().size(); i++) {
                Line line = article.lines().get(i);
                draw(article.part(), line, gap, made);
                int at = i;
                gap.filter(one -> isBehind(one, article.lines(), at)).ifPresent(this::gap);
            }
        }
        if (!section.cautions().isEmpty()) {
            prose.title("CAUTIONS");
            section.cautions().forEach(prose::line);
        }
        rows = List.copyOf(made);
        titles = List.copyOf(headings);
        prose.show();
        gap.ifPresent(one -> one.shown(page.lines().stream().anyMatch(line -> one.isFor(line) || one.isBehind(line))));
    }

    /** Behind a paragraph, all that stands below it, and what was added behind it. */
    private static boolean isBehind(Gap gap, List<Line> lines, int at) {
        int last = at;
        while (last >= 0 && !gap.isBehind(lines.get(last))) {
            last--;
        }
        if (last < 0) {
            return false;
        }
        int end = last;
        while (end + 1 < lines.size() && goesWith(lines.get(end + 1).paragraph(), lines.get(last).paragraph())) {
            end++;
        }
        return end == at;
    }

    private static boolean goesWith(Paragraph one, Paragraph first) {
        return one.level() > first.level() || one.level() == first.level() && one.id().startsWith(first.id() + "+");
    }

    /** Brings what is written in sight. */
    void bring() {
        gapAt.ifPresent(this::bring);
    }

    /** Brings a paragraph in sight, all of it where there is room. */
    void bring(String id) {
        row(id).map(Row::index).ifPresent(this::bring);
    }

    private void bring(int index) {
        StyledText text = prose.control();
        if (index + 1 >= text.getLineCount()) {
            return;
        }
        int from = text.getLinePixel(index);
        int over = text.getLinePixel(index + 1) + ROOM - text.getClientArea().height;
        if (from < 0) {
            text.setTopPixel(text.getTopPixel() + from);
        } else if (over > 0) {
            text.setTopPixel(text.getTopPixel() + Math.min(over, from));
        }
    }

    private void gap(Gap gap) {
        gapAt = Optional.of(prose.lines());
        prose.picture(gap.height(), (gc, at) -> gap.at(at.x, at.y));
    }

    private void draw(int part, Line line, Optional<Gap> gap, List<Row> made) {
        int index = prose.lines();
        if (gap.filter(one -> one.isFor(line)).isPresent()) {
            gap(gap.get());
            made.add(new Row(index, part, line, Set.of(), List.of()));
            return;
        }
        Paragraph paragraph = line.paragraph();
        boolean struck = line.standing() == Standing.STRUCK;
        int start = prose.length();
        int indent = paragraph.level() * STEP - STEP + 1;
        prose.mark(struck ? STRUCK : mark(paragraph));
        Set<String> components = new LinkedHashSet<>();
        List<Stretch> stretches = new ArrayList<>();
        for (Span span : paragraph.text()) {
            int from = prose.length() - start;
            draw(span, struck);
            stretches.add(new Stretch(from, prose.length() - start, span));
            if (!struck) {
                component(span).ifPresent(components::add);
            }
        }
        components.stream().findFirst().ifPresent(first -> prose.leading(start, () -> look.accept(first)));
        prose.end(indent, indent + STEP);
        made.add(new Row(index, part, line, components, stretches));
    }

    private void draw(Span span, boolean struck) {
        Optional<String> of = component(span);
        if (struck) {
            prose.struck(span.text());
        } else if (span instanceof SectionDocument.Strong) {
            prose.strong(span.text());
        } else if (span instanceof CrossReference reference) {
            prose.lead(span.text(), () -> follow.accept(reference));
        } else if (of.isPresent()) {
            prose.lead(span.text(), () -> look.accept(of.get()));
        } else {
            prose.plain(span.text());
        }
    }

    /** "A.", "1.", "a.", "1)", "a)". */
    private static String mark(Paragraph paragraph) {
        return paragraph.number() + (paragraph.level() <= 3 ? "." : ")");
    }

    private Optional<String> component(Span span) {
        return span instanceof Slot slot ? component.apply(slot.ref().replaceFirst("\\..*", "")) : Optional.empty();
    }

    /**
     * Marks the paragraphs that speak of a component.
     *
     * @param reveal whether one of them is brought in sight
     */
    void mark(String component, boolean reveal) {
        StyledText text = prose.control();
        text.setLineBackground(0, text.getLineCount(), null);
        List<Row> found = rows.stream().filter(row -> row.components().contains(component) && row.index() < text.getLineCount()).toList();
        found.forEach(row -> text.setLineBackground(row.index(), 1, Ui.highlight(text)));
        if (!reveal || found.isEmpty()) {
            return;
        }
        List<Row> best = of(component);
        int top = text.getLineIndex(0);
        int bottom = text.getLineIndex(text.getClientArea().height);
        if (best.stream().noneMatch(row -> row.index() > top && row.index() < bottom)) {
            text.setTopIndex(Math.max(0, best.get(0).index() - 2));
        }
    }

    /** The paragraphs that say what a component is, else those that speak of it. */
    List<Row> of(String component) {
        List<Row> found = rows.stream().filter(row -> row.components().contains(component)).toList();
        List<Row> said = found.stream().filter(row -> row.part() == PRODUCTS).toList();
        return said.isEmpty() ? found : said;
    }

    List<Row> rows() {
        return rows;
    }

    void clear() {
        rows = List.of();
        titles = List.of();
    }

    Optional<Row> row(String id) {
        return rows.stream().filter(row -> row.line().id().equals(id)).findFirst();
    }

    /** The row in which a place of the text stands; the next one for a heading, the last one behind all. */
    Optional<Row> rowAt(int offset) {
        StyledText text = prose.control();
        int index = text.getLineAtOffset(Math.min(offset, text.getCharCount()));
        return rows.stream().filter(row -> row.index() >= index).findFirst()
            .or(() -> rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(rows.size() - 1)));
    }

    /** Index of the line of an article or paragraph, by its id with or without the walls it was drafted for. */
    Optional<Integer> lineOf(String target) {
        return titles.stream().filter(title -> title.id().equals(target)).map(Title::index).findFirst()
            .or(() -> row(target).map(Row::index))
            .or(() -> rows.stream().filter(row -> row.line().id().replaceFirst("[@~].*", "").equals(target)).map(Row::index).findFirst());
    }

    /** The run that stands at a place of the text. */
    Optional<Span> spanAt(int offset) {
        StyledText text = prose.control();
        return rowAt(offset).filter(row -> row.index() == text.getLineAtOffset(Math.min(offset, text.getCharCount()))).flatMap(row -> {
            int place = offset - text.getOffsetAtLine(row.index());
            return row.stretches().stream().filter(stretch -> stretch.start() <= place && place < stretch.end()).map(Stretch::span)
                .findFirst();
        });
    }
}
