package reglet.workbench;

import java.util.List;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** Draft a wall and its section: the wall in the middle, the paper beside it, and below each the findings and their reasons. */
public final class DraftPerspective implements IPerspectiveFactory {
    static final String ID = "reglet.workbench.draft";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        layout.addView(JobView.ID, IPageLayout.LEFT, 0.17f, IPageLayout.ID_EDITOR_AREA);
        layout.addView(WallView.ID, IPageLayout.TOP, 0.95f, IPageLayout.ID_EDITOR_AREA);
        layout.addView(SectionView.ID, IPageLayout.RIGHT, 0.66f, WallView.ID);
        layout.addView(FindingsView.ID, IPageLayout.BOTTOM, 0.76f, WallView.ID);
        layout.addView(WhyView.ID, IPageLayout.BOTTOM, 0.6f, SectionView.ID);
        for (String view : List.of(JobView.ID, WallView.ID, FindingsView.ID, SectionView.ID, WhyView.ID)) {
            layout.getViewLayout(view).setCloseable(false);
        }
    }
}
