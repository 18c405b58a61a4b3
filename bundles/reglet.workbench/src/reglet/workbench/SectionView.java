package reglet.workbench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.UnusableInput;

/** The drafted section as it will print, with the paragraphs that speak of the component in focus marked and in sight. */
public final class SectionView extends Part {
    static final String ID = "reglet.workbench.section";
    /** Characters of indent for each level, the width of a mark with its blanks. */
    private static final int STEP = 4;
    private static final int PRODUCTS = 2;
    private Prose prose;
    private Latest latest;
    private String number = "";
    private List<Line> lines = List.of();
    private int drawn;

    /** A line of the page, the part it stands in, and the components that its slots speak of. */
    private record Line(int index, int part, Set<String> components) {
    }

    @Override
    protected void fill(Composite page) {
        page.setLayout(new FillLayout());
        prose = new Prose(page, "Section");
        latest = new Latest(page);
    }

    @Override
    public void jobChanged() {
        ask();
    }

    @Override
    public void focusChanged() {
        boolean other = session().snapshot().map(now -> !now.section(session().focus()).equals(number)).orElse(false);
        if (other) {
            ask();
        } else {
            mark(true);
        }
    }

    private void ask() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            setPartName("Section");
            showEmpty("The drafted section stands here as it will print. It grows with every choice.");
            return;
        }
        String wanted = now.section(session().focus());
        boolean same = wanted.equals(number);
        number = wanted;
        setPartName(wanted.isEmpty() ? "Section" : "Section " + wanted);
        if (!now.job().job().sections().contains(wanted)) {
            latest.cancel();
            lines = List.of();
            showEmpty("This job doesn't write section " + wanted + now.job().pack().plan(wanted).map(plan -> ", " + plan.title()).orElse("")
                + ". To have it drafted, add its number to the sections in job.yaml.");
            return;
        }
        latest.ask("Drafting section " + wanted, monitor -> draft(now, wanted), draft -> {
            if (draft.document == null) {
                lines = List.of();
                showEmpty("Section " + wanted + " can't be drafted. " + draft.why);
                return;
            }
            draw(draft.document);
            show();
            mark(!same);
        });
    }

    /** A section, or why there is none. */
    private record Draft(SectionDocument document, String why) {
    }

    private static Draft draft(Snapshot now, String wanted) {
        try {
            return new Draft(now.job().section(wanted), "");
        } catch (UnusableInput unusable) {
            return new Draft(null, unusable.getMessage());
        }
    }

    private void draw(SectionDocument section) {
        List<Line> made = new ArrayList<>();
        drawn = 0;
        prose.heading("SECTION " + section.number());
        prose.heading(section.title().toUpperCase(java.util.Locale.ROOT));
        drawn += 2;
        if (!section.note().isEmpty()) {
            prose.line(section.note());
            drawn++;
        }
        for (SectionDocument.Part part : section.parts()) {
            prose.title("PART " + part.number() + "  " + part.title());
            drawn += 2;
            for (SectionDocument.Article article : part.articles()) {
                prose.title(article.number() + "  " + article.title());
                drawn += 2;
                article.paragraphs().forEach(paragraph -> draw(part.number(), paragraph, made));
            }
        }
        if (!section.cautions().isEmpty()) {
            prose.title("CAUTIONS");
            drawn += 2;
            for (String caution : section.cautions()) {
                prose.line(caution);
                drawn++;
            }
        }
        lines = List.copyOf(made);
        prose.show();
    }

    private void draw(int part, Paragraph paragraph, List<Line> made) {
        int start = prose.length();
        int indent = paragraph.level() * STEP - STEP + 1;
        prose.mark(mark(paragraph));
        Set<String> components = new LinkedHashSet<>();
        for (Span span : paragraph.text()) {
            draw(span);
            component(span).ifPresent(components::add);
        }
        components.stream().findFirst().ifPresent(first -> prose.leading(start, () -> look(first)));
        prose.end(indent, indent + STEP);
        made.add(new Line(drawn, part, components));
        drawn++;
        paragraph.children().forEach(child -> draw(part, child, made));
    }

    private void draw(Span span) {
        if (span instanceof SectionDocument.Strong) {
            prose.strong(span.text());
            return;
        }
        Optional<String> component = component(span);
        if (component.isPresent()) {
            prose.lead(span.text(), () -> look(component.get()));
        } else {
            prose.plain(span.text());
        }
    }

    private void look(String component) {
        String shown = number;
        session().look(session().focus().onComponent(component));
        if (!session().snapshot().map(now -> now.section(session().focus())).orElse(shown).equals(shown)) {
            // the person reads this section; a component of another one is looked at from here
            session().look(session().focus().onSection(shown));
        }
    }

    /** "A.", "1.", "a.", "1)", "a)". */
    private static String mark(Paragraph paragraph) {
        return paragraph.number() + (paragraph.level() <= 3 ? "." : ")");
    }

    private Optional<String> component(Span span) {
        if (!(span instanceof Slot slot)) {
            return Optional.empty();
        }
        String owner = slot.ref().contains(".") ? slot.ref().substring(0, slot.ref().indexOf('.')) : slot.ref();
        return session().snapshot().flatMap(now -> now.component(owner)).map(found -> found.id());
    }

    private void mark(boolean reveal) {
        StyledText text = prose.control();
        String component = session().focus().component();
        text.setLineBackground(0, text.getLineCount(), null);
        List<Line> found = lines.stream().filter(line -> line.components().contains(component) && line.index() < text.getLineCount())
            .toList();
        found.forEach(line -> text.setLineBackground(line.index(), 1, Ui.highlight(text)));
        if (!reveal || found.isEmpty()) {
            return;
        }
        // Part 2 says what the component is; elsewhere it is only spoken of
        List<Line> best = found.stream().anyMatch(line -> line.part() == PRODUCTS) ? found.stream()
            .filter(line -> line.part() == PRODUCTS).toList() : found;
        int top = text.getLineIndex(0);
        int bottom = text.getLineIndex(text.getClientArea().height);
        if (best.stream().noneMatch(line -> line.index() > top && line.index() < bottom)) {
            text.setTopIndex(Math.max(0, best.get(0).index() - 2));
        }
    }

    @Override
    protected void focusPage() {
        prose.control().setFocus();
    }
}
