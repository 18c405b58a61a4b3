package reglet.workbench;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Sees that another program changed the job's files. A file that only the other program changed is read in at once; where the
 * other program's text has lost what was changed in this window, or something is being typed, the person is asked. All but the
 * looking itself happens in the session's own order of work.
 */
final class Outside {
    static final String ABOUT = "outside";
    private static final long EVERY_MILLISECONDS = 1500;
    private final Runnable changed;
    private volatile Path folder;
    private volatile Stamps known = Stamps.NONE;
    /** The texts as the window knows them. */
    private volatile Map<String, String> texts = Map.of();

    private final Job looking = new Job("Looking at the job's files") {
        @Override
        protected IStatus run(IProgressMonitor monitor) {
            if (folder == null) {
                return Status.OK_STATUS;
            }
            if (isChanged()) {
                changed.run();
            }
            schedule(EVERY_MILLISECONDS);
            return Status.OK_STATUS;
        }
    };

    /** @param changed told, beside the window's thread, that the files lie otherwise than known */
    Outside(Runnable changed) {
        this.changed = changed;
        looking.setSystem(true);
        looking.setPriority(Job.DECORATE);
    }

    /** How the files lie now is known. */
    void know(Path job) {
        Stamps now = Stamps.of(job);
        texts = now.texts(job);
        known = now;
        folder = job;
        looking.schedule(EVERY_MILLISECONDS);
    }

    void forget() {
        folder = null;
        looking.cancel();
        known = Stamps.NONE;
        texts = Map.of();
    }

    /** Whether the files lie otherwise than known, or than when the person was asked. */
    boolean isChanged() {
        Path job = folder;
        return job != null && !Stamps.of(job).equals(known);
    }

    /** The files that the other program changed; from now on they are known to be as they are, while their texts aren't. */
    Set<String> differing() {
        Stamps now = Stamps.of(folder);
        Map<String, String> there = now.texts(folder);
        Map<String, String> all = new TreeMap<>(texts);
        all.putAll(there);
        Set<String> differing = all.keySet().stream().filter(file ->
            !String.valueOf(there.get(file)).equals(String.valueOf(texts.get(file))))
            .collect(Collectors.toCollection(TreeSet::new));
        known = now;
        return differing;
    }

    /** The texts of files as the window knows them; "" for one that wasn't there. */
    Map<String, String> known(Set<String> files) {
        Map<String, String> known = new TreeMap<>();
        files.forEach(file -> known.put(file, texts.getOrDefault(file, "")));
        return known;
    }

    /**
     * The files among these in which the other program's text has lost something that this window's changes wrote, or holds again
     * what they took away.
     *
     * @param there the texts on disk
     * @param edits the changes that could be taken back, the oldest first
     */
    static Set<String> lost(Set<String> files, Map<String, String> there, List<Edit> edits) {
        Set<String> lost = new TreeSet<>();
        for (String file : files) {
            List<Edit> of = edits.stream().filter(edit -> edit.files().contains(file)).toList();
            if (!of.isEmpty() && isLost(of.get(0).before(file), of.get(of.size() - 1).after(file), there.getOrDefault(file, ""))) {
                lost.add(file);
            }
        }
        return lost;
    }

    private static boolean isLost(String before, String after, String there) {
        Set<String> old = before.lines().collect(Collectors.toSet());
        Set<String> ours = after.lines().collect(Collectors.toSet());
        Set<String> theirs = there.lines().collect(Collectors.toSet());
        return ours.stream().anyMatch(line -> !old.contains(line) && !theirs.contains(line))
            || old.stream().anyMatch(line -> !ours.contains(line) && theirs.contains(line));
    }
}
