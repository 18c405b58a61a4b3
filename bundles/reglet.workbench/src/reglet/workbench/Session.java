package reglet.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import reglet.desk.Caches;
import reglet.desk.Cancelled;
import reglet.desk.Desk;
import reglet.desk.Faults;
import reglet.desk.InstalledPacks;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.Progress;
import reglet.desk.Saving;
import reglet.model.Change;
import reglet.model.Option;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/**
 * What the window's parts share: the job as it stands, what the person looks at, and the ways to change them. Everything that
 * takes time runs in jobs, one after the other; listeners are called on the window's thread.
 */
final class Session {
    private final Display display;
    private final Supplier<IOperationHistory> history;
    private final Supplier<IUndoContext> undoContext;
    private final Recent recent;
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private volatile Optional<Snapshot> snapshot = Optional.empty();
    private volatile Stamps stamps = Stamps.NONE;
    private Focus focus = Focus.NOTHING;
    private String message = "";
    private boolean trouble;
    private Desk desk;

    /** Changes of the job's files run one after the other. */
    private final ISchedulingRule oneByOne = new ISchedulingRule() {
        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    };

    /** Hears of changes, on the window's thread. */
    interface Listener {
        /** Another job, the same job changed, or other words about it. */
        default void jobChanged() {
        }

        /** The person looks at something else. */
        default void focusChanged() {
        }
    }

    Session(Display display, Supplier<IOperationHistory> history, Supplier<IUndoContext> undoContext, Recent recent) {
        this.display = display;
        this.history = history;
        this.undoContext = undoContext;
        this.recent = recent;
    }

    void listen(Listener listener) {
        listeners.add(listener);
    }

    void leave(Listener listener) {
        listeners.remove(listener);
    }

    Optional<Snapshot> snapshot() {
        return snapshot;
    }

    Focus focus() {
        return focus;
    }

    Recent recent() {
        return recent;
    }

    /** What was last said about the job's files; "" for nothing. */
    String message() {
        return message;
    }

    /** Whether the last message tells of something that went wrong. */
    boolean isTrouble() {
        return trouble;
    }

    void look(Focus changed) {
        if (!changed.equals(focus)) {
            focus = changed;
            listeners.forEach(Listener::focusChanged);
        }
    }

    /** Opens a job folder. */
    void open(Path folder) {
        Path whole = folder.toAbsolutePath().normalize();
        run("Opening " + whole.getFileName(), true, monitor -> {
            try {
                OpenJob opened = desk().open(whole);
                stamps = Stamps.of(whole);
                Snapshot first = Snapshot.of(opened);
                recent.put(whole);
                onWindow(() -> {
                    history.get().dispose(undoContext.get(), true, true, false);
                    publish(Optional.of(first), "", false);
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
            stamps = Stamps.NONE;
            snapshot = Optional.empty();
            onWindow(() -> {
                history.get().dispose(undoContext.get(), true, true, false);
                publish(Optional.empty(), "", false);
            });
        });
    }

    /** Reads the job's files again when they were changed outside the window. */
    void lookForChanges() {
        run("Looking for changes", false, monitor -> {
            Snapshot now = snapshot.orElse(null);
            if (now != null && !Stamps.of(now.job().folder()).equals(stamps)) {
                read(now.job().folder(), "The files were changed outside; this is how they stand now.");
            }
        });
    }

    /** Reads the job's files again. */
    void reload() {
        run("Reading the job again", true, monitor -> {
            Snapshot now = snapshot.orElse(null);
            if (now != null) {
                read(now.job().folder(), "Read again.");
            }
        });
    }

    private void read(Path folder, String words) throws IOException {
        stamps = Stamps.of(folder);
        try {
            Snapshot read = Snapshot.of(desk().open(folder));
            onWindow(() -> publish(Optional.of(read), words, false));
        } catch (UnusableInput unusable) {
            say("The files were changed outside and can't be used; the window shows how they stood before. " + words(unusable), true);
        }
    }

    /** Accepts these options for a component, in place of those accepted now. */
    void choose(String wall, String component, List<Option> accept) {
        String label = wall + " " + component + ": " + String.join(" or ", accept.stream().map(Option::title).toList());
        List<String> ids = accept.stream().map(Option::id).toList();
        change(label, List.of(Saving.wallFile(wall)), job -> Saving.choose(job, wall, component, ids), refused -> say(refused, true));
    }

    /** Takes back what is accepted for a component. */
    void undecide(String wall, String component) {
        change(wall + " " + component + ": undecided", List.of(Saving.wallFile(wall)), job -> Saving.undecide(job, wall, component),
            refused -> say(refused, true));
    }

    /**
     * Sets a value as typed.
     *
     * @param refused given the reason in words, on the window's thread, when the value can't be used; nothing is changed then
     */
    void set(String wall, String component, String property, String value, Consumer<String> refused) {
        change(wall + " " + component + "." + property + ": " + value, List.of(Saving.wallFile(wall)),
            job -> Saving.set(job, wall, component, property, value), refused);
    }

    /** Makes the changes of a remedy, of facts too, as one that can be taken back. */
    void remedy(String label, List<Change> changes) {
        snapshot.ifPresent(now -> change(label, Saving.files(now.job(), changes), job -> Saving.apply(job, changes),
            refused -> say(refused, true)));
    }

    private void change(String label, List<String> files, Edit.Change change, Consumer<String> refused) {
        run(label, false, monitor -> {
            try {
                history.get().execute(new Edit(label, files, this, change, undoContext.get()), monitor, null);
            } catch (ExecutionException failed) {
                String why = failed.getCause() instanceof UnusableInput unusable ? reasons(unusable) : failed.getMessage();
                onWindow(() -> refused.accept(why));
            }
        });
    }

    void undo() {
        step("Undo", () -> history.get().undo(undoContext.get(), null, null));
    }

    void redo() {
        step("Redo", () -> history.get().redo(undoContext.get(), null, null));
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
                List<Path> written = Outputs.of(now.job()).all().write(new MonitorProgress(monitor));
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
        Snapshot next = Snapshot.of(job);
        snapshot = Optional.of(next);
        stamps = Stamps.of(job.folder());
        onWindow(() -> publish(Optional.of(next), words, false));
    }

    /** The job to change next; there is one when a change is asked for. */
    OpenJob job() {
        return snapshot.orElseThrow().job();
    }

    void say(String words, boolean wrong) {
        onWindow(() -> {
            message = words;
            trouble = wrong;
            listeners.forEach(Listener::jobChanged);
        });
    }

    private void publish(Optional<Snapshot> next, String words, boolean wrong) {
        snapshot = next;
        message = words;
        trouble = wrong;
        focus = next.map(focus::in).orElse(Focus.NOTHING);
        listeners.forEach(Listener::jobChanged);
        listeners.forEach(Listener::focusChanged);
    }

    private synchronized Desk desk() throws UnusableInput, IOException {
        if (desk == null) {
            desk = new Desk(InstalledPacks.shelf(), Caches.folder());
        }
        return desk;
    }

    private interface Work {
        void on(IProgressMonitor monitor) throws IOException;
    }

    private void run(String name, boolean shown, Work work) {
        Job job = Job.create(name, (ICoreRunnable) monitor -> {
            try {
                work.on(monitor);
            } catch (IOException unreachable) {
                say(name + ": " + unreachable.getMessage(), true);
            } catch (RuntimeException | Error fault) {
                say("This is our own fault, not yours; a log is at " + Faults.log(fault), true);
                throw fault;
            }
        });
        job.setRule(oneByOne);
        job.setSystem(!shown);
        job.setPriority(shown ? Job.LONG : Job.INTERACTIVE);
        job.schedule();
    }

    private void onWindow(Runnable work) {
        if (!display.isDisposed()) {
            display.asyncExec(work);
        }
    }

    private static String words(UnusableInput unusable) {
        return String.join("\n", unusable.problems().stream().map(Problem::toString).toList());
    }

    /** The problems without their places: the person sees where they type. */
    private static String reasons(UnusableInput unusable) {
        List<String> reasons = new ArrayList<>();
        unusable.problems().forEach(problem -> reasons.add(Marks.sentence(problem.what())
            + (problem.expected().isEmpty() ? "" : "; " + problem.expected()) + "."));
        return String.join("\n", reasons);
    }

    /** Progress of the desk shown by the platform. */
    private static final class MonitorProgress implements Progress {
        private final IProgressMonitor monitor;
        private int done;

        MonitorProgress(IProgressMonitor monitor) {
            this.monitor = monitor;
        }

        @Override
        public void step(int now, int of, String what) {
            if (now == 0) {
                monitor.beginTask("Writing the papers", of);
            }
            monitor.worked(now - done);
            done = now;
            monitor.subTask(what);
        }

        @Override
        public boolean cancelled() {
            return monitor.isCanceled();
        }
    }

    /** How the job's own files lay on disk, to see that another program changed one. */
    private record Stamps(List<String> files) {
        static final Stamps NONE = new Stamps(List.of());

        static Stamps of(Path folder) {
            List<String> found = new ArrayList<>();
            for (String part : List.of(".", "walls", "sections", "products", "submittals")) {
                try (var entries = Files.newDirectoryStream(folder.resolve(part), "*.{yaml,md}")) {
                    for (Path file : entries) {
                        found.add(part + "/" + file.getFileName() + " " + Files.getLastModifiedTime(file).toMillis() + " "
                            + Files.size(file));
                    }
                } catch (IOException absent) {
                    // a job need not have every folder
                }
            }
            found.sort(null);
            return new Stamps(List.copyOf(found));
        }
    }
}
