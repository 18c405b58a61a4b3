package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

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
import reglet.workbench.settings.Units;

/** The findings, grouped by wall type and kind, text first. Selecting one shows its component, its reason and its remedies. */
public final class FindingsView extends Part {
    static final String ID = "reglet.workbench.findings";
    private static final String ACCEPTED = "accepted";
    private TreeViewer tree;
    private FindingAnswers answers;

    /**
     * A line above others: a wall type above kinds, a kind above findings; equal by key, so that it stays open when its words change.
     *
     * @param below groups or findings
     */
    record Group(String key, String title, List<?> below) {
        Group {
            below = List.copyOf(below);
        }

        /** The findings below, however deep. */
        Stream<Finding> findings() {
            return below.stream().flatMap(line -> line instanceof Group group ? group.findings() : Stream.of((Finding) line));
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
    protected void fill(Composite page) {
        page.setLayout(new FillLayout());
        SashForm sash = new SashForm(page, SWT.HORIZONTAL);
        Composite frame = new Composite(sash, SWT.NONE);
        TreeColumnLayout columns = new TreeColumnLayout();
        frame.setLayout(columns);
        tree = new TreeViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        Ui.named(tree.getTree(), "Findings");
        tree.getTree().setHeaderVisible(true);
        ColumnViewerToolTipSupport.enableFor(tree);
        column(columns, "What", 84, 40, new Words());
        column(columns, "Where", 16, 12, new Places());
        tree.setContentProvider(new Lines());
        tree.getTree().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (event.item.getData() instanceof Finding finding) {
                session().look(session().focus().onFinding(finding));
            }
        }));
        tree.addOpenListener(event -> jump());
        answers = new FindingAnswers(sash, session());
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
            WallView view = (WallView) getSite().getPage().showView(WallView.ID);
            view.onceFilled(view::toOptions);
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
        List<Group> known = every(before);
        every(groups).stream().filter(group -> !known.contains(group)).forEach(open::add);
        tree.getControl().setRedraw(false);
        tree.setInput(groups);
        tree.setExpandedElements(open.toArray());
        tree.getControl().setRedraw(true);
        show();
        focusChanged();
    }

    @Override
    public void focusChanged() {
        answers.follow();
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
            .filter(group -> !group.key().equals(ACCEPTED)).flatMap(Group::findings).toList();
        if (!all.isEmpty()) {
            int at = session().focus().finding().map(all::indexOf).orElse(by > 0 ? -1 : 0);
            session().look(session().focus().onFinding(all.get(Math.floorMod(at + by, all.size()))));
        }
    }

    /** In the order of walls, then of kinds; the findings of the whole job first, the accepted ones last. */
    static List<Group> groups(Snapshot now) {
        List<Group> groups = new ArrayList<>();
        wall(groups, "", "The whole job", now.findings(""));
        now.job().job().walls().forEach(wall -> wall(groups, wall.id(), wall.id() + " " + wall.title(), now.findings(wall.id())));
        List<Finding> accepted = now.checked().accepted();
        if (!accepted.isEmpty()) {
            groups.add(new Group(ACCEPTED, "● Accepted with a reason: " + accepted.size(), accepted));
        }
        return groups;
    }

    private static void wall(List<Group> groups, String wall, String title, List<Finding> findings) {
        List<Group> kinds = new ArrayList<>();
        for (Finding.Kind kind : Finding.Kind.values()) {
            List<Finding> some = findings.stream().filter(finding -> finding.kind() == kind).toList();
            if (!some.isEmpty()) {
                kinds.add(new Group(wall + " " + kind.text(), Marks.counts(some), some));
            }
        }
        if (!kinds.isEmpty()) {
            groups.add(new Group("wall " + wall, title + (kinds.size() > 1 ? ": " + Marks.counts(findings) : ""), kinds));
        }
    }

    /** Groups with those below them. */
    private static List<Group> every(List<?> groups) {
        List<Group> all = new ArrayList<>();
        for (Object line : groups) {
            if (line instanceof Group group) {
                all.add(group);
                all.addAll(every(group.below()));
            }
        }
        return all;
    }

    /** Words for the place of a finding: "Lath", "Lath, window-1", "window-1". */
    static String place(Snapshot now, Finding finding) {
        String component = now.component(finding.component()).map(Component::title).orElse("");
        return component + (component.isEmpty() || finding.meeting().isEmpty() ? "" : ", ") + finding.meeting();
    }

    @Override
    protected void focusPage() {
        tree.getControl().setFocus();
    }

    /** The sentence, led by shape and word. */
    private static final class Words extends ColumnLabelProvider {
        @Override
        public String getText(Object line) {
            return line instanceof Finding finding ? Marks.word(finding.kind()) + ": " + finding.statement().in(Units.shown())
                : ((Group) line).title();
        }

        @Override
        public String getToolTipText(Object line) {
            return line instanceof Finding finding ? finding.statement().in(Units.shown()) + "\n"
                + finding.advice().in(Units.shown()) : null;
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
            return line instanceof Group group ? group.below().toArray() : new Object[0];
        }

        @Override
        public Object getParent(Object line) {
            return every(groups).stream().filter(group -> group.below().contains(line)).findFirst().orElse(null);
        }

        @Override
        public boolean hasChildren(Object line) {
            return line instanceof Group;
        }
    }
}
