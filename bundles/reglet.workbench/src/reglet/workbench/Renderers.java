package reglet.workbench;

import org.eclipse.e4.ui.internal.workbench.swt.AbstractPartRenderer;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.model.application.ui.advanced.MPerspectiveStack;
import org.eclipse.e4.ui.workbench.renderers.swt.WorkbenchRendererFactory;

/** What makes the controls of the window's parts: the platform's, and {@link StayingPerspectives} for perspectives. */
public final class Renderers extends WorkbenchRendererFactory {
    /** The platform's name of the setting that says which factory makes the controls of the window's parts, and what it is set to. */
    static final String SETTING = "rendererFactoryUri";
    static final String PLACE = "bundleclass://" + Application.BUNDLE + "/" + Renderers.class.getName();

    private StayingPerspectives perspectives;

    @Override
    public AbstractPartRenderer getRenderer(MUIElement element, Object parent) {
        if (!(element instanceof MPerspectiveStack)) {
            return super.getRenderer(element, parent);
        }
        if (perspectives == null) {
            perspectives = new StayingPerspectives();
            initRenderer(perspectives);
        }
        return perspectives;
    }
}
