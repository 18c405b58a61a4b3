package reglet.workbench;

import java.util.List;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import reglet.workbench.alternates.AlternatesView;
import reglet.workbench.walls.FactsView;
import reglet.workbench.walls.WallsView;

import reglet.workbench.help.HelpView;
import reglet.workbench.section.SectionView;

/** Draft a wall and its section: the wall in the middle, the paper beside it, below both the findings. */
public final class DraftPerspective implements IPerspectiveFactory {
    static final String ID = "reglet.workbench.draft";
    /** What is decided: the wall, what it meets, all walls, what is priced apart. */
    private static final List<String> WALL = List.of(WallView.ID, FactsView.ID, WallsView.ID, AlternatesView.ID);
    /** What grows from the wall, beside it, one over the other. */
    private static final List<String> PAPER = List.of(SectionView.ID, DetailsView.ID, WorksheetsView.ID);

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        layout.addView(JobView.ID, IPageLayout.LEFT, 0.17f, IPageLayout.ID_EDITOR_AREA);
        IFolderLayout wall = layout.createFolder("reglet.workbench.middle", IPageLayout.TOP, 0.95f, IPageLayout.ID_EDITOR_AREA);
        WALL.forEach(wall::addView);
        wall.addPlaceholder(IssuesView.ID);
        // across wall and paper: a finding is one whole sentence
        layout.addView(FindingsView.ID, IPageLayout.BOTTOM, 0.77f, "reglet.workbench.middle");
        IFolderLayout paper = layout.createFolder("reglet.workbench.paper", IPageLayout.RIGHT, 0.62f, "reglet.workbench.middle");
        PAPER.forEach(paper::addView);
        paper.addPlaceholder(HelpView.ID);
        layout.addView(WhyView.ID, IPageLayout.BOTTOM, 0.6f, "reglet.workbench.paper");
        PAPER.forEach(view -> layout.getViewLayout(view).setCloseable(false));
        WALL.forEach(view -> layout.getViewLayout(view).setCloseable(false));
        List.of(JobView.ID, FindingsView.ID, WhyView.ID).forEach(view -> layout.getViewLayout(view).setCloseable(false));
    }
}
