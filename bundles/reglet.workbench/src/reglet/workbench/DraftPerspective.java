package reglet.workbench;

import java.util.List;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** Draft a wall and its section: the wall in the middle, the paper beside it, and below each the findings and their reasons. */
public final class DraftPerspective implements IPerspectiveFactory {
    static final String ID = "reglet.workbench.draft";
    /** What grows from the wall, beside it, one over the other. */
    private static final List<String> PAPER = List.of(SectionView.ID, DetailsView.ID, WorksheetsView.ID);

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        layout.addView(JobView.ID, IPageLayout.LEFT, 0.17f, IPageLayout.ID_EDITOR_AREA);
        layout.addView(WallView.ID, IPageLayout.TOP, 0.95f, IPageLayout.ID_EDITOR_AREA);
        IFolderLayout paper = layout.createFolder("reglet.workbench.paper", IPageLayout.RIGHT, 0.62f, WallView.ID);
        PAPER.forEach(paper::addView);
        layout.addView(FindingsView.ID, IPageLayout.BOTTOM, 0.76f, WallView.ID);
        layout.addView(WhyView.ID, IPageLayout.BOTTOM, 0.6f, "reglet.workbench.paper");
        PAPER.forEach(view -> layout.getViewLayout(view).setCloseable(false));
        List.of(JobView.ID, WallView.ID, FindingsView.ID, WhyView.ID).forEach(view -> layout.getViewLayout(view).setCloseable(false));
    }
}
