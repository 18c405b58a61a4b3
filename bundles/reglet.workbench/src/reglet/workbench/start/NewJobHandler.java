package reglet.workbench.start;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

import reglet.model.Pack;
import reglet.model.UnitSystem;
import reglet.workbench.Session;

/** Begins a new job: asks for what it needs, writes its folder and opens it. */
public final class NewJobHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Session session = PlatformUI.getWorkbench().getService(Session.class);
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        session.work().run("Looking for the questions", true, monitor -> {
            Pack pack = session.desk().pack("");
            session.onWindow(() -> ask(session, shell, pack));
        });
        return null;
    }

    private static void ask(Session session, Shell shell, Pack pack) {
        Path below = session.snapshot().map(now -> now.job().folder().getParent()).orElse(Path.of(System.getProperty("user.home")));
        NewJobWizard wizard = new NewJobWizard(new Answers(pack, below, UnitSystem.INCH_POUND));
        new WizardDialog(shell, wizard).open();
        if (wizard.written() != null) {
            session.open(wizard.written());
        }
    }
}
