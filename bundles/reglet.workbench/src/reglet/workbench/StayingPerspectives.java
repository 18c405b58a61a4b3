package reglet.workbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.model.application.ui.MElementContainer;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.model.application.ui.advanced.MPerspective;
import org.eclipse.e4.ui.model.application.ui.advanced.MPerspectiveStack;
import org.eclipse.e4.ui.model.application.ui.basic.MPartStack;
import org.eclipse.e4.ui.workbench.IPresentationEngine;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.e4.ui.workbench.renderers.swt.LazyStackRenderer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * Perspectives one over the other, of which one is seen. Those that are not seen stay where they are: the platform's own renderer moves
 * them into a window that nobody sees and back, and for each control in them the toolkit then works out its style and size anew, which
 * keeps the person waiting.
 */
final class StayingPerspectives extends LazyStackRenderer {

    @Override
    public void init(IEclipseContext context) {
        super.init(context);
        init(context.get(IEventBroker.class));
    }

    @Override
    public Object createWidget(MUIElement element, Object parent) {
        if (!(element instanceof MPerspectiveStack) || !(parent instanceof Composite window)) {
            return null;
        }
        Composite stack = new Composite(window, SWT.NONE);
        stack.setLayout(new StackLayout());
        return stack;
    }

    @Override
    public void postProcess(MUIElement element) {
        super.postProcess(element);
        MPerspective seen = ((MPerspectiveStack) element).getSelectedElement();
        if (seen != null && seen.getWidget() instanceof Control control) {
            bring(control);
        }
    }

    @Override
    protected void showTab(MUIElement element) {
        MPerspective perspective = (MPerspective) element;
        if (!(perspective.getWidget() instanceof Control)) {
            if (perspective.getParent().getWidget() instanceof Composite stack) {
                laidOutInItsTurn(stack);
                besideInTurns(perspective, stack);
            }
            getContext(perspective.getParent()).get(IPresentationEngine.class).createGui(perspective);
        }
        super.showTab(perspective);
        Control control = (Control) perspective.getWidget();
        bring(control);
        EPartService parts = perspective.getContext().get(EPartService.class);
        parts.switchPerspective(perspective);
        if (control.getDisplay().getFocusControl() == null && parts.getActivePart() != null) {
            // a view that both perspectives have was moved from the one to the other and lost the keyboard on the way
            getContext(perspective).get(IPresentationEngine.class).focusGui(parts.getActivePart());
        }
    }

    /** A perspective that has just been made has cost its turn; it is laid out in the next one, and those behind it in turns after that. */
    private static void laidOutInItsTurn(Composite stack) {
        stack.setLayoutDeferred(true);
        Ui.later(stack, () -> {
            List<Composite> perspectives = Stream.of(stack.getChildren()).filter(Composite.class::isInstance).map(Composite.class::cast)
                .sorted(Comparator.comparing(perspective -> !perspective.getVisible())).toList();
            perspectives.forEach(perspective -> perspective.setLayoutDeferred(true));
            stack.setLayoutDeferred(false);
            perspectives.forEach(perspective -> Ui.later(perspective, () -> perspective.setLayoutDeferred(false)));
        });
    }

    /** Of a new perspective only the folder that comes first is made at once, and what stands beside it in turns of its own. */
    private static void besideInTurns(MPerspective perspective, Composite stack) {
        List<MUIElement> later = new ArrayList<>();
        for (MUIElement at = perspective; at instanceof MElementContainer<?> container && !(at instanceof MPartStack);) {
            List<MUIElement> made = container.getChildren().stream().filter(MUIElement::isToBeRendered).map(MUIElement.class::cast).toList();
            if (made.isEmpty()) {
                break;
            }
            MUIElement first = container.getSelectedElement() == null ? made.get(0) : container.getSelectedElement();
            made.stream().filter(other -> other != first).forEach(later::add);
            at = first;
        }
        later.forEach(beside -> beside.setToBeRendered(false));
        inTurns(later.iterator(), stack);
    }

    private static void inTurns(Iterator<MUIElement> elements, Composite stack) {
        if (elements.hasNext()) {
            Ui.later(stack, () -> {
                elements.next().setToBeRendered(true);
                inTurns(elements, stack);
            });
        }
    }

    /** Shows it at once, not when it is laid out: the view that is activated next takes the keyboard, which nothing unseen can. */
    private static void bring(Control perspective) {
        Composite stack = perspective.getParent();
        ((StackLayout) stack.getLayout()).topControl = perspective;
        perspective.setVisible(true);
        for (Control other : stack.getChildren()) {
            if (other != perspective) {
                other.setVisible(false);
            }
        }
        stack.requestLayout();
    }
}
