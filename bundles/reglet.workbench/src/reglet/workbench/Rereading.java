package reglet.workbench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

import reglet.desk.Saving;
import reglet.model.UnusableInput;
import reglet.workbench.section.Kept;

/**
 * Keeps the open job as its files stand on disk: what other programs write is read in by itself, and where that would lose what was
 * done in the window, the person is asked.
 */
final class Rereading {
    private static final String UNUSABLE = "The files were changed outside and can't be used; the window shows how they stood before.";
    private final Session session;
    private final History history;
    private final Outside outside = new Outside(this::lookForChanges);

    Rereading(Session session, History history) {
        this.session = session;
        this.history = history;
    }

    /** The files as they lie now are those that the window shows. */
    void know(Path folder) {
        outside.know(folder);
    }

    /** No job is open any more. */
    void forget() {
        outside.forget();
    }

    /** Reads the files again when they were changed outside the window; asks when that would lose what was done in it. */
    void lookForChanges() {
        session.work().run("Looking for changes", false, monitor -> {
            Snapshot now = session.snapshot().orElse(null);
            if (now == null || !outside.isChanged()) {
                return;
            }
            Path folder = now.job().folder();
            Set<String> files = outside.differing();
            Set<String> lost = lost(now, files);
            if (!lost.isEmpty()) {
                session.onWindow(() -> session.asks().put(ask(folder, files, lost)));
            } else if (!files.isEmpty()) {
                // what undo refused a moment ago is to be read still
                read(folder, "The files were changed outside; this is how they stand now.",
                    told -> !told.startsWith(UNUSABLE));
            }
        });
    }

    /** The files in which something would be lost that was done or is being typed in the window. */
    private Set<String> lost(Snapshot now, Set<String> files) {
        Path folder = now.job().folder();
        Set<String> lost = new TreeSet<>(Outside.lost(files, Stamps.of(folder).texts(folder), history.edits()));
        now.job().job().walls().stream().filter(wall -> session.typing().isOpen(Session.VALUE + " " + wall.id() + "."))
            .map(wall -> Saving.wallFile(wall.id())).filter(files::contains).forEach(lost::add);
        now.job().job().sections().stream().filter(section ->
            Kept.places(section).stream().anyMatch(session.typing()::isOpen)).map(Kept::file)
            .filter(files::contains).forEach(lost::add);
        return lost;
    }

    private Asks.Ask ask(Path folder, Set<String> files, Set<String> lost) {
        return new Asks.Ask(Outside.ABOUT, String.join(", ", lost) + (lost.size() == 1 ? " was" : " were")
            + " changed by another program, and in this window too.", List.of(
                new Asks.Answer("Read the other one in", () -> readOver(folder, files)),
                new Asks.Answer("Put this window's back", () -> putBack(files))));
    }

    private void readOver(Path folder, Set<String> files) {
        session.work().run("Reading the job again", true, monitor -> {
            history.forget(files);
            read(folder, "Read in; what this window had changed in " + String.join(", ", files) + " can't be taken back any more.", told ->
                false);
        });
    }

    /** A change like any other: undo gives the other program's text back. */
    private void putBack(Set<String> files) {
        Map<String, String> texts = outside.known(files);
        session.change("this window's " + String.join(", ", files), List.copyOf(files), job -> Saving.restore(job, texts),
            refused -> session.say(refused, true));
    }

    /** Reads the files again whether or not they were changed. */
    void reload() {
        session.work().run("Reading the job again", true, monitor -> {
            Snapshot now = session.snapshot().orElse(null);
            if (now != null) {
                read(now.job().folder(), "Read again.", told -> false);
            }
        });
    }

    /** Reads the job; {@code stays} says which trouble that was told before is still of use. */
    private void read(Path folder, String words, Predicate<String> stays) throws IOException {
        try {
            session.changed(session.desk().open(folder), words, stays);
        } catch (UnusableInput unusable) {
            outside.differing();
            session.say(UNUSABLE + " " + Session.words(unusable), true);
        }
    }
}
