package reglet.workbench;

import java.util.List;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.IPlaceholderFolderLayout;

import reglet.workbench.help.HelpView;
import reglet.workbench.section.SectionView;
import reglet.workbench.sheets.ComparisonView;
import reglet.workbench.sheets.SheetsView;
import reglet.workbench.walls.FactsView;
import reglet.workbench.walls.WallsView;

/** Go through data sheets and compare products with what is required: pages need room, and the wall and its paper come when asked for. */
public final class ReviewPerspective implements IPerspectiveFactory {
    public static final String ID = "reglet.workbench.review";
    private static final List<String> REVIEW = List.of(SheetsView.ID, ComparisonView.ID);

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        layout.addView(JobView.ID, IPageLayout.LEFT, 0.17f, IPageLayout.ID_EDITOR_AREA);
        IFolderLayout review = layout.createFolder("reglet.workbench.review.middle", IPageLayout.TOP, 0.95f, IPageLayout.ID_EDITOR_AREA);
        REVIEW.forEach(review::addView);
        List.of(WallView.ID, FactsView.ID, WallsView.ID).forEach(review::addPlaceholder);
        IPlaceholderFolderLayout paper = layout.createPlaceholderFolder("reglet.workbench.review.paper", IPageLayout.RIGHT, 0.62f,
            "reglet.workbench.review.middle");
        List.of(SectionView.ID, DetailsView.ID, WorksheetsView.ID, WhyView.ID, HelpView.ID).forEach(paper::addPlaceholder);
        layout.addPlaceholder(FindingsView.ID, IPageLayout.BOTTOM, 0.77f, "reglet.workbench.review.middle");
        REVIEW.forEach(view -> layout.getViewLayout(view).setCloseable(false));
        layout.getViewLayout(JobView.ID).setCloseable(false);
    }
}
