package reglet.workbench;

import java.util.List;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import reglet.workbench.alternates.AlternatesView;
import reglet.workbench.help.HelpView;
import reglet.workbench.section.SectionView;
import reglet.workbench.walls.FactsView;
import reglet.workbench.walls.WallsView;

/** Write in a section: it has the width of a page, its findings stand below it, and the wall comes over it when asked for. */
public final class WritePerspective implements IPerspectiveFactory {
    static final String ID = "reglet.workbench.page";
    /** What is decided and what is drawn; each is one key away, and the section another. */
    private static final List<String> OVER = List.of(WallView.ID, FactsView.ID, WallsView.ID, AlternatesView.ID, DetailsView.ID,
        WorksheetsView.ID, IssuesView.ID);

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        IFolderLayout section = layout.createFolder("reglet.workbench.page.middle", IPageLayout.LEFT, 0.66f, IPageLayout.ID_EDITOR_AREA);
        section.addView(SectionView.ID);
        OVER.forEach(section::addPlaceholder);
        layout.addView(FindingsView.ID, IPageLayout.BOTTOM, 0.78f, "reglet.workbench.page.middle");
        layout.addView(JobView.ID, IPageLayout.TOP, 0.95f, IPageLayout.ID_EDITOR_AREA);
        IFolderLayout beside = layout.createFolder("reglet.workbench.page.beside", IPageLayout.BOTTOM, 0.5f, JobView.ID);
        beside.addView(WhyView.ID);
        beside.addPlaceholder(HelpView.ID);
        List.of(SectionView.ID, FindingsView.ID, JobView.ID, WhyView.ID).forEach(view -> layout.getViewLayout(view).setCloseable(false));
    }
}
