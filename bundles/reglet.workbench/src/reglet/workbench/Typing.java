package reglet.workbench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;

import reglet.desk.Drafts;
import reglet.desk.Drafts.Draft;

/**
 * What is being typed and not taken over yet. It is kept a moment after the last key, and offered when the job is opened again
 * after the program ended before its time. A place is "KIND WHERE", such as "value W1.lath.weight"; whoever takes texts of a kind
 * back says how. Used on the window's thread; files are written beside it.
 */
public final class Typing {
    private static final long PAUSE_MILLISECONDS = 300;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);
    private final Drafts drafts;
    private final Map<String, Taker> takers = new LinkedHashMap<>();
    /** The newest texts by place; an empty one is to be forgotten. Guarded by itself. */
    private final Map<String, String> pending = new LinkedHashMap<>();
    private final Set<String> open = new ConcurrentSkipListSet<>();
    private volatile Path job;
    private final Job keeping = Job.create("Keeping what is typed", (ICoreRunnable) monitor -> keep());

    /** Takes a kept text back. */
    public interface Taker {
        void take(String where, String text);
    }

    Typing(Drafts drafts) {
        this.drafts = drafts;
        keeping.setSystem(true);
    }

    /** Says how texts of a kind are taken back. */
    public void taking(String kind, Taker taker) {
        takers.put(kind, taker);
    }

    /** The folder that typed texts belong to from now on; null for none. */
    void in(Path folder) {
        keepNow();
        job = folder;
        open.clear();
    }

    /** The newest text of a place, after each key. */
    public void typed(String place, String text) {
        open.add(place);
        note(place, text);
    }

    /** What was kept at a place and never taken over; "" for nothing. Reads a file: to be asked beside the window's thread. */
    public String kept(String place) {
        Path folder = job;
        synchronized (pending) {
            String newest = pending.get(place);
            if (newest != null) {
                return newest;
            }
        }
        return folder == null ? "" : drafts.of(folder).stream().filter(draft -> draft.place().equals(place)).map(Draft::text).findFirst()
            .orElse("");
    }

    /** The text of a place was taken over, or the person thought better of it. */
    public void done(String place) {
        if (open.remove(place)) {
            note(place, "");
        }
    }

    /** Whether something is typed at a place that begins so. */
    boolean isOpen(String start) {
        return open.stream().anyMatch(place -> place.startsWith(start));
    }

    private void note(String place, String text) {
        synchronized (pending) {
            pending.put(place, text);
        }
        keeping.schedule(PAUSE_MILLISECONDS);
    }

    /** Keeps what waits to be kept without a pause. */
    void keepNow() {
        keeping.cancel();
        keep();
    }

    private void keep() {
        Path folder = job;
        Map<String, String> now;
        synchronized (pending) {
            now = new LinkedHashMap<>(pending);
            pending.clear();
        }
        if (folder == null) {
            return;
        }
        now.forEach((place, text) -> {
            try {
                if (text.isEmpty()) {
                    drafts.drop(folder, place);
                } else {
                    drafts.keep(folder, new Draft(place, text, Instant.now()));
                }
            } catch (IOException unwritable) {
                // the text still stands in its field; only the net below it is missing
            }
        });
    }

    /** Asks about what was kept of the job and never taken over. */
    void offer(Asks asks) {
        if (job == null) {
            return;
        }
        Path folder = job;
        for (Draft draft : drafts.of(folder)) {
            int blank = draft.place().indexOf(' ');
            String kind = blank < 0 ? draft.place() : draft.place().substring(0, blank);
            String where = draft.place().substring(blank + 1);
            Taker taker = takers.get(kind);
            if (taker == null) {
                continue;
            }
            Runnable forget = () -> {
                open.add(draft.place());
                done(draft.place());
            };
            asks.put(new Asks.Ask("draft " + draft.place(), "Kept from " + TIME.format(draft.kept().atZone(ZoneId.systemDefault()))
                + ", typed at " + where + " and not taken over: \"" + shortened(draft.text()) + "\"", List.of(
                    new Asks.Answer("Take it back", () -> {
                        taker.take(where, draft.text());
                        forget.run();
                    }), new Asks.Answer("Throw it away", forget))));
        }
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() <= 80 ? line : line.substring(0, 79) + "…";
    }
}
