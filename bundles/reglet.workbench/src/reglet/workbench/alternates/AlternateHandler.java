package reglet.workbench.alternates;

import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

import reglet.desk.Bid;
import reglet.workbench.Session;
import reglet.workbench.WallView;

/** The commands on alternates; plugin.xml names the one behind the class: "…AlternateHandler:ACCEPT". */
public final class AlternateHandler extends AbstractHandler implements IExecutableExtension {
    /** The command that offers the selected option as an alternate. */
    public static final String OFFER = "reglet.workbench.alternate.offer";
    private Command command;

    /** What can be done about alternates. */
    enum Command {
        /** Offer the option that is selected in the wall. */
        OFFER,
        /** Show the wall as the next bid. */
        NEXT_BID,
        /** Show the wall with the alternate selected in the list. */
        SHOW,
        /** The owner's word on it. */
        ACCEPT, DECLINE, OFFER_AGAIN,
        /** Give it another title. */
        NAME,
        REMOVE
    }

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object data) {
        command = Command.valueOf((String) data);
    }

    @Override
    public boolean isEnabled() {
        return session() != null && session().snapshot().isPresent();
    }

    private static Session session() {
        return PlatformUI.getWorkbench().getService(Session.class);
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        if (command == Command.NEXT_BID) {
            next();
            return null;
        }
        try {
            AlternatesView view = (AlternatesView) window.getActivePage().showView(AlternatesView.ID);
            if (command != Command.OFFER) {
                view.onceFilled(() -> view.run(command));
            } else if (window.getActivePage().findView(WallView.ID) instanceof WallView wall) {
                view.onceFilled(() -> view.offer(wall.selectedOption()));
            }
            return null;
        } catch (PartInitException unavailable) {
            throw new ExecutionException("the alternates can't be shown", unavailable);
        }
    }

    private static void next() {
        Session session = session();
        session.snapshot().ifPresent(now -> {
            List<Bid> all = Bid.all(now.job().job());
            if (all.size() == 1) {
                session.say("This job has no alternates: there is the base bid alone.", false);
            } else {
                session.showAs(all.get((all.indexOf(session.bid()) + 1) % all.size()));
            }
        });
    }
}
