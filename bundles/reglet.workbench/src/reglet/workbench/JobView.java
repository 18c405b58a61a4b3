package reglet.workbench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import reglet.model.Job;
import reglet.workbench.sheets.SheetHandlers;

/** What the job holds: wall types, sections, products, submittals. */
public final class JobView extends Part {
    static final String ID = "reglet.workbench.job";
    private TreeViewer tree;

    /** What a line of the tree stands for. */
    enum Kind { GROUP, WALL, SECTION, PRODUCT, SUBMITTAL }

    /**
     * A line of the tree; equal by what it stands for, so that what is open and selected stays so when its words change.
     *
     * @param target wall type id, section number, or the component or section that the thing belongs to
     */
    record Node(Kind kind, String id, String target, String text, List<Node> children) {
        Node {
            children = List.copyOf(children);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Node node && kind == node.kind && id.equals(node.id);
        }

        @Override
        public int hashCode() {
            return 31 * kind.hashCode() + id.hashCode();
        }
    }

    @Override
    protected void fill(Composite page) {
        page.setLayout(new FillLayout());
        tree = new TreeViewer(page, SWT.SINGLE | SWT.H_SCROLL | SWT.V_SCROLL);
        Ui.named(tree.getTree(), "Job");
        tree.setContentProvider(new Lines());
        ColumnViewerToolTipSupport.enableFor(tree);
        tree.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return ((Node) line).text();
            }

            @Override
            public String getToolTipText(Object line) {
                return ((Node) line).text();
            }
        });
        tree.getTree().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> look((Node) event.item.getData())));
        tree.getTree().addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> open((Node) event.item.getData())));
    }

    /** Goes into a product's sheet, or into the comparison of a submittal. */
    private void open(Node node) {
        Snapshot now = session().snapshot().orElse(null);
        if (now != null && node.kind() == Kind.PRODUCT) {
            now.job().job().products().stream().filter(product -> product.id().equals(node.id()) && !product.sheet().isEmpty()).findFirst()
                .ifPresent(product -> SheetHandlers.openSheet(getSite().getWorkbenchWindow(), now.job().folder().resolve(product.sheet())));
        } else if (now != null && node.kind() == Kind.SUBMITTAL) {
            SheetHandlers.compare(getSite().getWorkbenchWindow(), node.id());
        }
    }

    private void look(Node node) {
        Focus now = session().focus();
        switch (node.kind()) {
            case WALL -> session().look(now.onWall(node.target()));
            case PRODUCT -> session().look(now.onComponent(node.target()));
            case SECTION, SUBMITTAL -> session().look(now.onSection(node.target()));
            case GROUP -> { }
        }
    }

    @Override
    public void jobChanged() {
        if (session().snapshot().isEmpty()) {
            showEmpty("The wall types, sections, products and submittals of the job stand here once one is open.");
            return;
        }
        List<Node> nodes = nodes(session().snapshot().get());
        // what a person closed stays closed; a group that wasn't there before opens
        List<?> before = tree.getInput() instanceof List<?> known ? known : List.of();
        List<Object> open = List.of(tree.getExpandedElements());
        tree.getControl().setRedraw(false);
        tree.setInput(nodes);
        tree.setExpandedElements(nodes.stream().filter(node -> !before.contains(node) || open.contains(node)).toArray());
        tree.getControl().setRedraw(true);
        show();
        select();
    }

    @Override
    public void focusChanged() {
        select();
    }

    private void select() {
        if (tree.getInput() != null && tree.getStructuredSelection().getFirstElement() == null && !session().focus().wall().isEmpty()) {
            tree.setSelection(new StructuredSelection(new Node(Kind.WALL, session().focus().wall(), "", "", List.of())), true);
        } else if (tree.getStructuredSelection().getFirstElement() instanceof Node node && node.kind() == Kind.WALL
            && !node.target().equals(session().focus().wall())) {
            tree.setSelection(new StructuredSelection(new Node(Kind.WALL, session().focus().wall(), "", "", List.of())), true);
        }
    }

    static List<Node> nodes(Snapshot now) {
        Job job = now.job().job();
        List<Node> walls = new ArrayList<>();
        job.walls().forEach(wall -> {
            String counts = Marks.shapes(now.findings(wall.id()));
            walls.add(new Node(Kind.WALL, wall.id(), wall.id(), wall.id() + " " + wall.title()
                + (counts.isEmpty() ? "" : "  " + counts), List.of()));
        });
        List<Node> sections = job.sections().stream().map(number -> new Node(Kind.SECTION, number, number,
            number + now.job().pack().plan(number).map(plan -> " " + plan.title()).orElse(""), List.of())).toList();
        List<Node> products = job.products().stream()
            .map(product -> new Node(Kind.PRODUCT, product.id(), product.component(), product.name(), List.of())).toList();
        List<Node> submittals = job.submittals().stream()
            .map(submittal -> new Node(Kind.SUBMITTAL, submittal.id(), submittal.section(), submittal.id(), List.of())).toList();
        List<Node> groups = new ArrayList<>();
        group(groups, "Wall types", walls);
        group(groups, "Sections", sections);
        group(groups, "Products", products);
        group(groups, "Submittals", submittals);
        return groups;
    }

    private static void group(List<Node> groups, String title, List<Node> children) {
        if (!children.isEmpty()) {
            groups.add(new Node(Kind.GROUP, title, "", title, children));
        }
    }

    @Override
    protected void focusPage() {
        tree.getControl().setFocus();
    }

    /** The nodes as the tree asks for them. */
    private static final class Lines implements ITreeContentProvider {
        @Override
        public Object[] getElements(Object input) {
            return ((List<?>) input).toArray();
        }

        @Override
        public Object[] getChildren(Object node) {
            return ((Node) node).children().toArray();
        }

        @Override
        public Object getParent(Object node) {
            return null;
        }

        @Override
        public boolean hasChildren(Object node) {
            return !((Node) node).children().isEmpty();
        }
    }
}
