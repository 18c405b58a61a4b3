package reglet.workbench;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

import reglet.model.Component;
import reglet.model.Option;
import reglet.workbench.alternates.AlternatesView;
import reglet.workbench.help.HelpView;
import reglet.workbench.section.SectionView;
import reglet.workbench.sheets.ComparisonView;
import reglet.workbench.sheets.SheetHandlers;
import reglet.workbench.sheets.SheetsView;
import reglet.workbench.walls.FactsView;
import reglet.workbench.walls.WallsView;

/** What a person does all day, done quickly one after the other, while the window's thread is watched. */
final class WindowFlows {
    private static final int CHOICES = 20;
    private static final long PATIENCE = 120_000;
    /** Milliseconds until all that follows a step has been worked out and painted. */
    private static final int SETTLED = 400;
    private static final List<String> VIEWS = List.of(FactsView.ID, WallsView.ID, WallView.ID, DetailsView.ID, WorksheetsView.ID,
        IssuesView.ID, AlternatesView.ID, HelpView.ID, SectionView.ID);
    private final Session session;
    private final Path folder;
    private final Component lath;
    private final String size;
    private final Display display = PlatformUI.getWorkbench().getDisplay();

    WindowFlows(Session session, Component lath, String size) {
        this.session = session;
        this.folder = session.snapshot().orElseThrow().job().folder();
        this.lath = lath;
        this.size = size;
    }

    private interface Step {
        void take() throws Exception;
    }

    static void await(BooleanSupplier condition) throws InterruptedException {
        long end = System.currentTimeMillis() + PATIENCE;
        while (!condition.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                throw new IllegalStateException("waited in vain");
            }
            Thread.sleep(5);
        }
    }

    void run() throws Exception {
        Waits waits = new Waits(display);
        watch(waits, "a choice", this::choices);
        watch(waits, "undo and redo", this::undo);
        watch(waits, "another component", this::components);
        watch(waits, "another view", this::views);
        watch(waits, "the section in the width of a page", this::page);
        watch(waits, "typing in the section", this::typing);
        watch(waits, "a data sheet and its pages", this::sheet);
        watch(waits, "opening the job", this::open);
    }

    /** What is done for the first time in a session loads code and makes views; then it is done once more. */
    private void watch(Waits waits, String name, Step step) throws Exception {
        waits.begin(name + ", the first time");
        step.take();
        waits.end(size);
        waits.begin(name);
        step.take();
        waits.end(size);
    }

    private void onWindow(Step step) throws InterruptedException {
        display.asyncExec(() -> {
            try {
                step.take();
            } catch (Exception failed) {
                throw new IllegalStateException(failed);
            }
        });
        Thread.sleep(SETTLED);
    }

    private List<String> accepted() {
        return session.snapshot().orElseThrow().wall("W1").orElseThrow().choice(lath.id()).orElseThrow().accept();
    }

    private void choices() throws Exception {
        for (int i = 0; i < CHOICES; i++) {
            Option option = lath.options().get(Math.floorMod(i, lath.options().size()));
            onWindow(() -> {
                session.look(session.focus().onWall("W1").onComponent(lath.id()));
                session.choosing().choose("W1", lath.id(), List.of(option));
            });
            await(() -> accepted().equals(List.of(option.id())));
        }
    }

    private void undo() throws Exception {
        for (int i = 0; i < 3; i++) {
            onWindow(session::undo);
        }
        for (int i = 0; i < 3; i++) {
            onWindow(session::redo);
        }
    }

    private void components() throws Exception {
        for (Component component : session.snapshot().orElseThrow().job().pack().components()) {
            onWindow(() -> session.look(session.focus().onComponent(component.id())));
        }
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    private static void show(String view) throws PartInitException {
        window().getActivePage().showView(view, null, IWorkbenchPage.VIEW_ACTIVATE);
    }

    private void views() throws Exception {
        for (String view : VIEWS) {
            onWindow(() -> show(view));
        }
    }

    private void page() throws Exception {
        for (String perspective : List.of(WritePerspective.ID, DraftPerspective.ID)) {
            onWindow(() -> PlatformUI.getWorkbench().showPerspective(perspective, window()));
            Thread.sleep(1000);
        }
    }

    private void typing() throws Exception {
        onWindow(() -> {
            window().getShell().forceActive();
            window().getActivePage().showView(SectionView.ID).setFocus();
        });
        // a letter begins writing in the paragraph in which the keyboard stands
        for (char letter : "water and mortar".toCharArray()) {
            key(event -> event.character = letter);
        }
        for (int i = 0; i < 12; i++) {
            key(event -> event.keyCode = SWT.BS);
        }
        key(event -> event.keyCode = SWT.ESC);
        Thread.sleep(SETTLED);
    }

    private void key(java.util.function.Consumer<Event> fill) throws InterruptedException {
        for (int type : new int[] {SWT.KeyDown, SWT.KeyUp}) {
            Event event = new Event();
            event.type = type;
            fill.accept(event);
            display.syncExec(() -> display.post(event));
        }
        Thread.sleep(60);
    }

    private void sheet() throws Exception {
        for (String sheet : List.of("lath-metal", "stone-ledge")) {
            onWindow(() -> SheetHandlers.openSheet(window(), folder.resolve("sheets/" + sheet + ".pdf")));
            Thread.sleep(4000);
        }
        onWindow(() -> show(ComparisonView.ID));
        onWindow(() -> show(SheetsView.ID));
        onWindow(() -> PlatformUI.getWorkbench().showPerspective(DraftPerspective.ID, window()));
    }

    private void open() throws Exception {
        Snapshot before = session.snapshot().orElseThrow();
        onWindow(() -> session.open(folder));
        await(() -> session.snapshot().orElseThrow() != before);
        Thread.sleep(2000);
    }
}
