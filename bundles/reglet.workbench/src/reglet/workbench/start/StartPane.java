package reglet.workbench.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

import reglet.workbench.Session;
import reglet.workbench.Ui;

/** What stands in the window without a job: what is wrong, if anything is, and the ways to a job. */
public final class StartPane {
    private final ScrolledComposite scroll;
    private final Session session;
    private final Runnable newJob;
    private final Runnable openJob;
    private final List<SampleJobs.Sample> samples = SampleJobs.all();
    private Composite page;
    private Path below = Path.of(System.getProperty("user.home"));

    /**
     * @param newJob  begins a new job
     * @param openJob asks for a job folder
     */
    public StartPane(Composite parent, Session session, Runnable newJob, Runnable openJob) {
        this.session = session;
        this.newJob = newJob;
        this.openJob = openJob;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setLayout(new FillLayout());
        scroll.addListener(SWT.Resize, event -> size());
    }

    public Control control() {
        return scroll;
    }

    /** Shows it as things stand. */
    public void show() {
        boolean focused = hasFocus(scroll.getDisplay().getFocusControl());
        if (page != null) {
            page.dispose();
        }
        page = new Composite(scroll, SWT.NONE);
        int step = Ui.characters(page, 1);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(3 * step, 2 * step).spacing(2 * step, step / 2).applyTo(page);
        Label head = line("Choose a wall and put it on paper");
        head.setFont(Ui.heading(head));
        if (!session.message().isEmpty()) {
            line((session.isTrouble() ? "≠ " : "") + session.message());
        }
        row("New job…", "New job", "asks for what the rules need, and writes a folder", newJob);
        row("Open a job folder…", "Open a job folder", "a folder with a job.yaml in it", openJob);
        List<Path> folders = session.recent().folders();
        if (!folders.isEmpty()) {
            title("Opened before");
            folders.forEach(folder -> row(folder.getFileName().toString(), "Open " + folder.getFileName(), folder.getParent().toString(),
                () -> session.open(folder)));
        }
        if (!samples.isEmpty()) {
            title("Invented samples");
            samples.forEach(sample -> row(sample.title(), "Sample " + sample.title(), "copied to " + below + " first",
                () -> SampleJobs.open(session, sample, below)));
            row("Another place…", "Choose where samples are copied", "choose where the samples are copied to", this::elsewhere);
        }
        scroll.setContent(page);
        size();
        if (focused) {
            setFocus();
        }
    }

    private boolean hasFocus(Control control) {
        return control != null && (control == scroll || hasFocus(control.getParent()));
    }

    private void elsewhere() {
        DirectoryDialog dialog = new DirectoryDialog(scroll.getShell(), SWT.OPEN);
        dialog.setText("Copy samples to");
        dialog.setMessage("Each sample gets a new folder there");
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::copyTo);
    }

    /** Samples are copied to a folder from now on. */
    public void copyTo(Path folder) {
        below = folder;
        show();
    }

    private void title(String words) {
        Label title = line(words);
        title.setFont(Ui.strong(title));
        GridDataFactory.fillDefaults().span(2, 1).indent(0, Ui.characters(title, 1)).applyTo(title);
    }

    private Label line(String words) {
        Label line = new Label(page, SWT.WRAP);
        line.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(line, 50), SWT.DEFAULT).applyTo(line);
        return line;
    }

    private void row(String words, String name, String about, Runnable action) {
        Link link = Ui.named(new Link(page, SWT.NONE), name);
        link.setText("<a>" + words.replace("&", "&&") + "</a>");
        link.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        Label label = Ui.named(new Label(page, SWT.NONE), name + ", what it does");
        label.setText(about.replace("&", "&&"));
        label.setToolTipText(about);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(Ui.characters(label, 20), SWT.DEFAULT)
            .applyTo(label);
    }

    private void size() {
        if (page != null && !page.isDisposed()) {
            scroll.setMinHeight(page.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
        }
    }

    /** Gives the keyboard to the first way. */
    public void setFocus() {
        if (page == null || !page.setFocus()) {
            scroll.forceFocus();
        }
    }
}
