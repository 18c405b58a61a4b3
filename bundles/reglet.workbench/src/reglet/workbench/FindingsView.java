package reglet.workbench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PartInitException;

import reglet.model.Component;
import reglet.model.Finding;

/** The findings, grouped by wall type and kind, text first. Selecting one shows its component, its reason and its remedies. */
public final class FindingsView extends Part {
    static final String ID = "reglet.workbench.findings";
    private TreeViewer tree;
    private RemediesList remedies;

    /** The findings of one kind at one place; equal by title without the count. */
    record Group(String key, String title, List<Finding> findings) {
        Group {
            findings = List.copyOf(findings);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Group group && key.equals(group.key);
        }

        @Override
        public int hashCode() {
            return key.hashCode();
        }
    }

    @Override
    void fill(Composite page) {
        page.setLayout(new FillLayout());
        SashForm sash = new SashForm(page, SWT.HORIZONTAL);
        Composite frame = new Composite(sash, SWT.NONE);
        TreeColumnLayout columns = new TreeColumnLayout();
        frame.setLayout(columns);
        tree = new TreeViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        Ui.named(tree.getTree(), "Findings");
        tree.getTree().setHeaderVisible(true);
        ColumnViewerToolTipSupport.enableFor(tree);
        column(columns, "What", 72, 40, new Words());
        column(columns, "Where", 28, 16, new Places());
        tree.setContentProvider(new Lines());
        tree.getTree().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (event.item.getData() instanceof Finding finding) {
                session().look(session().focus().onFinding(finding));
            }
        }));
        tree.addOpenListener(event -> jump());
        remedies = new RemediesList(sash, session());
        sash.setWeights(64, 36);
    }

    private void column(TreeColumnLayout columns, String title, int weight, int characters, ColumnLabelProvider labels) {
        TreeViewerColumn column = new TreeViewerColumn(tree, SWT.LEFT);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, Ui.characters(tree.getTree(), characters)));
    }

    private void jump() {
        Object selected = tree.getStructuredSelection().getFirstElement();
        if (selected instanceof Group) {
            tree.setExpandedState(selected, !tree.getExpandedState(selected));
            return;
        }
        try {
            ((WallView) getSite().getPage().showView(WallView.ID)).toOptions();
        } catch (PartInitException unavailable) {
            session().say("The wall can't be shown: " + unavailable.getMessage(), true);
        }
    }

    @Override
    public void jobChanged() {
        if (session().snapshot().isEmpty()) {
            showEmpty("Conflicts, gaps and cautions stand here once a job is open, each in one sentence.");
            return;
        }
        List<Group> groups = groups(session().snapshot().get());
        if (groups.isEmpty()) {
            tree.setInput(groups);
            showEmpty("Nothing stands against this job: " + Marks.summary(session().snapshot().get().checked()) + ".");
            return;
        }
        List<?> before = tree.getInput() == null ? List.of() : (List<?>) tree.getInput();
        List<Object> open = new ArrayList<>(List.of(tree.getExpandedElements()));
        // what is new opens by itself, what the person closed stays closed
        groups.stream().filter(group -> !before.contains(group)).forEach(open::add);
        tree.getControl().setRedraw(false);
        tree.setInput(groups);
        tree.setExpandedElements(open.toArray());
        tree.getControl().setRedraw(true);
        show();
        focusChanged();
    }

    @Override
    public void focusChanged() {
        remedies.follow();
        if (tree.getInput() == null) {
            return;
        }
        session().focus().finding().ifPresentOrElse(finding -> {
            if (!finding.equals(tree.getStructuredSelection().getFirstElement())) {
                tree.setSelection(new StructuredSelection(finding), true);
            }
        }, () -> tree.setSelection(StructuredSelection.EMPTY));
    }

    /** Moves to the next or previous finding from the one in focus, around the end. */
    void step(int by) {
        List<Finding> all = session().snapshot().map(FindingsView::groups).orElse(List.of()).stream()
            .flatMap(group -> group.findings().stream()).toList();
        if (!all.isEmpty()) {
            int at = session().focus().finding().map(all::indexOf).orElse(by > 0 ? -1 : 0);
            session().look(session().focus().onFinding(all.get(Math.floorMod(at + by, all.size()))));
        }
    }

    /** In the order of walls, then of kinds; the findings of the whole job first, the accepted ones last. */
    static List<Group> groups(Snapshot now) {
        List<Group> groups = new ArrayList<>();
        kinds(groups, "", "The whole job", now.findings(""));
        now.job().job().walls().forEach(wall -> kinds(groups, wall.id(), wall.id() + " " + wall.title(), now.findings(wall.id())));
        if (!now.checked().accepted().isEmpty()) {
            groups.add(new Group("accepted", "Accepted: " + now.checked().accepted().size(), now.checked().accepted()));
        }
        return groups;
    }

    private static void kinds(List<Group> groups, String wall, String title, List<Finding> findings) {
        for (Finding.Kind kind : Finding.Kind.values()) {
            List<Finding> some = findings.stream().filter(finding -> finding.kind() == kind).toList();
            if (!some.isEmpty()) {
                groups.add(new Group(wall + " " + kind.text(), title + ": " + Marks.counts(some), some));
            }
        }
    }

    /** Words for the place of a finding: "Lath", "Lath, window-1", "window-1". */
    static String place(Snapshot now, Finding finding) {
        String component = now.component(finding.component()).map(Component::title).orElse("");
        return component + (component.isEmpty() || finding.meeting().isEmpty() ? "" : ", ") + finding.meeting();
    }

    @Override
    void focusPage() {
        tree.getControl().setFocus();
    }

    /** The sentence, led by shape and word. */
    private static final class Words extends ColumnLabelProvider {
        @Override
        public String getText(Object line) {
            return line instanceof Finding finding ? Marks.word(finding.kind()) + ": " + finding.says() : ((Group) line).title();
        }

        @Override
        public String getToolTipText(Object line) {
            return line instanceof Finding finding ? finding.says() + "\n" + finding.fix() : null;
        }
    }

    /** The component and what it meets. */
    private final class Places extends ColumnLabelProvider {
        @Override
        public String getText(Object line) {
            return line instanceof Finding finding ? session().snapshot().map(now -> place(now, finding)).orElse("") : "";
        }
    }

    /** The groups as the tree asks for them. */
    private static final class Lines implements ITreeContentProvider {
        private List<?> groups = List.of();

        @Override
        public void inputChanged(Viewer viewer, Object before, Object now) {
            groups = now == null ? List.of() : (List<?>) now;
        }

        @Override
        public Object[] getElements(Object input) {
            return groups.toArray();
        }

        @Override
        public Object[] getChildren(Object line) {
            return line instanceof Group group ? group.findings().toArray() : new Object[0];
        }

        @Override
        public Object getParent(Object line) {
            return groups.stream().filter(group -> ((Group) group).findings().contains(line)).findFirst().orElse(null);
        }

        @Override
        public boolean hasChildren(Object line) {
            return line instanceof Group;
        }
    }
}
