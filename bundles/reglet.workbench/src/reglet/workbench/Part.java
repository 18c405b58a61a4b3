package reglet.workbench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

/** A view of the session. Either its page shows, or a sentence that says what belongs there and how to get it. */
public abstract class Part extends ViewPart implements Session.Listener {
    private Session session;
    private Composite stack;
    private Composite emptyPage;
    private Label emptyWords;
    private Composite page;
    private boolean filled;
    /** What is to be done once the view is filled. */
    private final List<Runnable> waiting = new ArrayList<>();

    @Override
    public final void createPartControl(Composite parent) {
        session = getSite().getService(Session.class);
        Composite frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(frame);
        if (asksHere()) {
            new AskBar(frame, session.asks(), this::setFocus);
        }
        if (followsBid()) {
            new BidBanner(frame, session);
        }
        stack = new Composite(frame, SWT.NONE);
        // takes the room that there is: what all that stands in it would like to have is never measured
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(stack);
        stack.setLayout(new StackLayout());
        emptyPage = new Composite(stack, SWT.NONE);
        emptyPage.setLayout(new GridLayout());
        emptyWords = new Label(emptyPage, SWT.WRAP);
        emptyWords.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        page = new Composite(stack, SWT.NONE);
        ((StackLayout) stack.getLayout()).topControl = emptyPage;
        OwnTurn.of(getSite().getWorkbenchWindow(), stack);
        if (session.isStarted()) {
            // the platform takes its time to make room for a view: its controls are made, filled and laid out in turns of their own
            Ui.later(page, () -> {
                fill(page);
                Ui.later(page, () -> {
                    stack.setLayoutDeferred(true);
                    follow();
                    Ui.later(page, () -> {
                        stack.setLayoutDeferred(false);
                        filled();
                    });
                });
            });
        } else {
            fill(page);
            follow();
            filled();
        }
    }

    private void follow() {
        session.catchUp();
        session.listen(this);
        jobChanged();
        focusChanged();
        // it may have its size already, from before there was anything in it
        page.layout();
    }

    private void filled() {
        filled = true;
        if (getSite().getPage().getActivePart() == this) {
            setFocus();
        }
        List<Runnable> waited = List.copyOf(waiting);
        waiting.clear();
        waited.forEach(Runnable::run);
    }

    /** Does it now, or as soon as all that stands in the view is made. */
    public final void onceFilled(Runnable work) {
        if (filled) {
            work.run();
        } else {
            waiting.add(work);
        }
    }

    @Override
    public void dispose() {
        if (session != null) {
            session.leave(this);
        }
        super.dispose();
    }

    protected final Session session() {
        return session;
    }

    /** Something always takes the keyboard: keys pressed in a window without a focus would go nowhere. */
    @Override
    public final void setFocus() {
        if (filled && ((StackLayout) stack.getLayout()).topControl == page) {
            focusPage();
        } else {
            emptyPage.forceFocus();
        }
    }

    /** Whether the window's questions stand on top of this view; one view of a perspective has them. */
    protected boolean asksHere() {
        return false;
    }

    /** Whether the view shows the job as the bid that is chosen in the wall, and says so where that isn't the work as it will be built. */
    protected boolean followsBid() {
        return false;
    }

    /** Gives the keyboard to the page. */
    protected abstract void focusPage();

    /** Makes the controls of the page. */
    protected abstract void fill(Composite page);

    /** Shows the page. */
    protected final void show() {
        top(page);
    }

    /** Shows what belongs here instead of the page. */
    protected final void showEmpty(String words) {
        if (!words.equals(emptyWords.getText())) {
            emptyWords.setText(words);
            emptyPage.layout();
        }
        top(emptyPage);
    }

    private void top(Composite control) {
        StackLayout layout = (StackLayout) stack.getLayout();
        if (layout.topControl != control) {
            layout.topControl = control;
            stack.layout();
        }
    }
}
