package reglet.workbench.section;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.PartInitException;

import reglet.desk.SectionPage.Line;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.workbench.Session;
import reglet.workbench.WallView;
import reglet.workbench.walls.FactsView;

/** Ways from a paragraph: to the choice of a value, to what a reference refers to and back, to the next own text. */
final class Ways {
    private final SectionView view;
    private final Session session;
    private final StyledText text;
    private final PageText written;
    private final Deque<String> cameFrom = new ArrayDeque<>();

    Ways(SectionView view, Session session, StyledText text, PageText written) {
        this.view = view;
        this.session = session;
        this.text = text;
        this.written = written;
    }

    /** Looks at a component while this section stays in sight. */
    void look(String component) {
        String shown = view.section();
        session.look(session.focus().onComponent(component));
        if (!session.snapshot().map(now -> now.section(session.focus())).orElse(shown).equals(shown)) {
            // the person reads this section; a component of another one is looked at from here
            session.look(session.focus().onSection(shown));
        }
    }

    /** To the choice of a value: the one given, else the one in which the keyboard stands, else the first of the paragraph. */
    void choose(Optional<String> written) {
        written.or(() -> here(Slot.class).map(Slot::ref))
            .ifPresentOrElse(this::choose, () -> view.refuse("No value of this paragraph is chosen."));
    }

    void choose(String slot) {
        String owner = slot.replaceFirst("\\..*", "");
        boolean component = session.snapshot().flatMap(now -> now.component(owner)).isPresent();
        if (component) {
            look(owner);
        }
        try {
            view.getSite().getPage().showView(component ? WallView.ID : FactsView.ID);
        } catch (PartInitException unavailable) {
            view.refuse("The build-up can't be shown: " + unavailable.getMessage());
        }
    }

    /** The run of a kind in which the keyboard stands, else the first of the paragraph. */
    private <S extends Span> Optional<S> here(Class<S> kind) {
        return written.spanAt(text.getCaretOffset()).filter(kind::isInstance).or(() -> view.here().map(Line::paragraph)
            .flatMap(paragraph -> paragraph.text().stream().filter(kind::isInstance).findFirst())).map(kind::cast);
    }

    void followHere() {
        here(CrossReference.class).ifPresentOrElse(this::follow, () -> view.refuse("This paragraph refers to no other."));
    }

    void follow(CrossReference reference) {
        if (reference.target().matches("\\d\\d \\d\\d \\d\\d.*")) {
            session.look(session.focus().onSection(reference.target()));
            return;
        }
        Optional<String> from = view.here().map(Line::id);
        written.lineOf(reference.target()).ifPresentOrElse(index -> {
            from.ifPresent(cameFrom::push);
            stand(index);
        }, () -> view.refuse("What the reference leads to isn't printed."));
    }

    /** Back to where the reference stands that was followed last. */
    void back() {
        if (!cameFrom.isEmpty()) {
            written.lineOf(cameFrom.pop()).ifPresent(this::stand);
        }
    }

    private void stand(int line) {
        text.setSelection(text.getOffsetAtLine(line));
        text.setFocus();
    }

    /** To the next paragraph that a person changed, or the one before; round at the end. */
    void own(int by) {
        List<PageText.Row> rows = written.rows();
        int at = view.here().map(Line::id).flatMap(written::row).map(rows::indexOf).orElse(0);
        for (int i = 1; i <= rows.size(); i++) {
            PageText.Row row = rows.get(Math.floorMod(at + by * i, rows.size()));
            if (row.line().isOwn()) {
                stand(row.index());
                return;
            }
        }
        view.refuse("Nothing of this section was changed: it is the library's text throughout.");
    }
}
