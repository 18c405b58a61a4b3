package reglet.workbench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.swt.widgets.Display;

import reglet.desk.Bid;
import reglet.desk.Caches;
import reglet.desk.Cancelled;
import reglet.desk.Desk;
import reglet.desk.Drafts;
import reglet.desk.InstalledPacks;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.model.Change;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.workbench.section.Kept;

/**
 * What the window's parts share: the job as it stands, what the person looks at, and the ways to change them. Everything that
 * takes time runs in jobs, one after the other; listeners are called on the window's thread.
 */
public final class Session {
    /** Kind of the texts typed into the fields of a wall type's values: "value W1.lath.weight". */
    static final String VALUE = "value";
    private final Turns turns;
    private final History history;
    private final Rereading rereading;
    private final Recent recent;
    private final OneByOne work = new OneByOne(this::say);
    private final Asks asks = new Asks();
    private final ShownBid shown = new ShownBid();
    private final Choosing choosing = new Choosing(this);
    private final Typing typing;
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private volatile Optional<Snapshot> snapshot = Optional.empty();
    private Focus focus = Focus.NOTHING;
    private String message = "";
    private boolean trouble;
    private Desk desk;

    /** Hears of changes, on the window's thread. */
    public interface Listener {
        /** Another job, or the same job changed. */
        default void jobChanged() {
        }

        /** Other words about the job, which stands as it did. */
        default void said() {
        }

        /** The person looks at something else. */
        default void focusChanged() {
        }
    }

    Session(Display display, Supplier<IOperationHistory> history, Supplier<IUndoContext> undoContext, Recent recent, Drafts drafts) {
        this.turns = Turns.of(display);
        this.history = new History(history, undoContext);
        this.rereading = new Rereading(this, this.history);
        this.recent = recent;
        this.typing = new Typing(drafts);
        typing.taking(VALUE, (where, text) -> {
            Change change = new Change(where, text);
            choosing.remedy(change.text(), List.of(change));
        });
        Kept.takeBack(this);
    }

    public void listen(Listener listener) {
        listeners.add(listener);
    }

    public void leave(Listener listener) {
        listeners.remove(listener);
    }

    public Optional<Snapshot> snapshot() {
        return snapshot;
    }

    public Focus focus() {
        return focus;
    }

    /** As which bid the wall, its drawing, worksheets and section are shown, and which version of a choice is changed there. */
    public Bid bid() {
        return shown.bid();
    }

    /** The job as that bid. */
    public Optional<Snapshot> seen() {
        return snapshot.map(shown::of);
    }

    /** Shows the wall, its drawing, worksheets and section as a bid. */
    public void showAs(Bid bid) {
        run("Showing another bid", false, monitor -> snapshot.ifPresent(now -> {
            shown.show(bid, now);
            onWindow(() -> publish(snapshot, message, trouble));
        }));
    }

    public Recent recent() {
        return recent;
    }

    /** What the window asks the person. */
    Asks asks() {
        return asks;
    }

    /** Whether another program changed the files and the person has not said yet whose texts hold. */
    public boolean isAskedAboutFiles() {
        return asks.asks(Outside.ABOUT);
    }

    /** What is being typed and not taken over yet. */
    public Typing typing() {
        return typing;
    }

    /** What was last said about the job's files; "" for nothing. */
    public String message() {
        return message;
    }

    /** Whether the last message tells of something that went wrong. */
    public boolean isTrouble() {
        return trouble;
    }

    public void look(Focus changed) {
        if (!changed.equals(focus)) {
            focus = changed;
            listeners.forEach(Listener::focusChanged);
        }
    }

    /** Opens a job folder. */
    public void open(Path folder) {
        Path whole = folder.toAbsolutePath().normalize();
        run("Opening " + whole.getFileName(), true, monitor -> {
            try {
                OpenJob opened = desk().open(whole);
                rereading.know(whole);
                Snapshot first = Snapshot.of(opened);
                shown.show(Bid.AGREED, first);
                recent.put(whole);
                onWindow(() -> {
                    history.clear();
                    asks.clear();
                    typing.in(whole);
                    publish(Optional.of(first), "", false);
                    typing.offer(asks);
                    look(Focus.NOTHING.in(first));
                });
            } catch (UnusableInput unusable) {
                say(words(unusable.below(whole.toString())), true);
            } catch (IOException unreachable) {
                say(whole + " can't be opened: " + unreachable.getMessage(), true);
            }
        });
    }

    /** Closes the job; everything is on disk already. */
    void close() {
        run("Closing the job", false, monitor -> {
            rereading.forget();
            snapshot = Optional.empty();
            onWindow(() -> {
                typing.in(null);
                asks.clear();
                history.clear();
                publish(Optional.empty(), "", false);
            });
        });
    }

    /** The window is going: nothing is looked at or waits to be kept any more. */
    void end() {
        rereading.forget();
        typing.keepNow();
    }

    /** Reads the job's files again when they were changed outside the window; asks when that would lose what was done in it. */
    void lookForChanges() {
        rereading.lookForChanges();
    }

    /** Reads the job's files again. */
    void reload() {
        rereading.reload();
    }

    /** Changes of choices, in the version that the bid shown has. */
    Choosing choosing() {
        return choosing;
    }

    /**
     * Makes a change of some files that can be taken back.
     *
     * @param label   what it does, in words
     * @param files   the files that it may change, in the job's folder
     * @param refused given the reason in words, on the window's thread, when it can't be made; nothing is changed then
     */
    public void change(String label, List<String> files, Edit.Change change, Consumer<String> refused) {
        change(label, files, List.of(), change, refused);
    }

    /**
     * The same for a change that also copies files into the job's folder.
     *
     * @param copies where they may be copied to, in the job's folder
     */
    public void change(String label, List<String> files, List<String> copies, Edit.Change change, Consumer<String> refused) {
        run(label, false, monitor -> {
            try {
                history.make(this, label, files, copies, change, monitor);
            } catch (ExecutionException failed) {
                String why = failed.getCause() instanceof UnusableInput unusable ? reasons(unusable) : failed.getMessage();
                onWindow(() -> refused.accept(why));
            }
        });
    }

    void undo() {
        step("Undo", history::undo);
    }

    void redo() {
        step("Redo", history::redo);
    }

    private interface Step {
        IStatus take() throws ExecutionException;
    }

    private void step(String name, Step step) {
        run(name, false, monitor -> {
            try {
                IStatus status = step.take();
                if (!status.isOK() && !status.getMessage().isEmpty()) {
                    say(status.getMessage(), true);
                }
            } catch (ExecutionException failed) {
                say(failed.getMessage(), true);
            }
        });
    }

    /** Writes the papers of the job into its folder; may take seconds, and can be cancelled. */
    void writePapers() {
        run("Writing the papers", true, monitor -> {
            Snapshot now = snapshot.orElse(null);
            if (now == null) {
                return;
            }
            try {
                List<Path> written = Outputs.of(now.job()).all().write(new OneByOne.MonitorProgress(monitor));
                say(written.size() + " papers written to " + now.job().folder().resolve("out"), false);
            } catch (UnusableInput unusable) {
                say(words(unusable), true);
            } catch (Cancelled cancelled) {
                say("Cancelled; the papers written so far are whole.", false);
            }
        });
    }

    /** Takes over a changed job; called beside the window's thread by what changed it. */
    void changed(OpenJob job, String words) {
        changed(job, words, said -> false);
    }

    /** The same; a trouble that was told and is still of use stays in sight before the words. */
    void changed(OpenJob job, String words, Predicate<String> stays) {
        // first of all: what another program writes from now on is to be noticed
        rereading.know(job.folder());
        Snapshot next = Snapshot.of(job);
        shown.show(shown.bid(), next);
        snapshot = Optional.of(next);
        onWindow(() -> {
            asks.drop(Outside.ABOUT);
            boolean keeps = trouble && stays.test(message);
            publish(Optional.of(next), keeps ? message + " " + words : words, keeps);
        });
    }

    /** The job to change next; there is one when a change is asked for. */
    OpenJob job() {
        return snapshot.orElseThrow().job();
    }

    public void say(String words, boolean wrong) {
        onWindow(() -> {
            message = words;
            trouble = wrong;
            listeners.forEach(Listener::said);
        });
    }

    private void publish(Optional<Snapshot> next, String words, boolean wrong) {
        snapshot = next;
        message = words;
        trouble = wrong;
        Focus before = focus;
        focus = next.map(focus::in).orElse(Focus.NOTHING);
        listeners.forEach(Listener::jobChanged);
        if (!focus.equals(before)) {
            listeners.forEach(Listener::focusChanged);
        }
    }

    /** The desk; made when first asked for, which takes time: beside the window's thread. */
    public synchronized Desk desk() throws UnusableInput, IOException {
        if (desk == null) {
            desk = new Desk(InstalledPacks.shelf(), Caches.folder());
        }
        return desk;
    }

    private void run(String name, boolean shown, OneByOne.Work work) {
        work().run(name, shown, work);
    }

    /** The same job, to be shown with other fonts, colours or units. */
    void showAnew() {
        publish(snapshot.map(now -> new Snapshot(now.job(), now.checked())), message, trouble);
    }

    /** What runs beside the window's thread. */
    public OneByOne work() {
        return work;
    }

    /** Runs on the window's thread, unless the window is gone. */
    public void onWindow(Runnable work) {
        turns.take(work);
    }

    /** Whether the window stands, with all its views. */
    boolean isStarted() {
        return turns.areStarted();
    }

    /** The window stands, with all its views. */
    void started() {
        turns.started();
    }

    /** Shows what has come while the window starts; for a view that is being made. */
    void catchUp() {
        turns.catchUp();
    }

    /** All problems with their places, a line each. */
    static String words(UnusableInput unusable) {
        return String.join("\n", unusable.problems().stream().map(Problem::toString).toList());
    }

    /** The problems without their places: the person sees where they type. */
    public static String reasons(UnusableInput unusable) {
        List<String> reasons = new ArrayList<>();
        unusable.problems().forEach(problem -> reasons.add(Marks.sentence(problem.what())
            + (problem.expected().isEmpty() ? "" : "; " + problem.expected()) + (problem.toString().endsWith("?") ? "" : ".")));
        return String.join("\n", reasons);
    }
}
