package reglet.reading.process;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import com.google.gson.Gson;

import reglet.reading.page.Finder.Sighting;
import reglet.reading.process.Running.Stopped;

/** A search for words on sheets that goes on in a process of its own while others work; heard by {@link #found}. */
public final class Search implements AutoCloseable {
    private static final Gson GSON = new Gson();

    private final Class<?> main;
    private final int memory;
    private final Duration time;
    private final List<String> sheets;
    private final List<List<String>> words;
    private final List<List<Sighting>> found = new ArrayList<>();
    private Optional<Running> running;

    /**
     * Begins; does nothing when there are no sheets.
     *
     * @param memory megabytes of heap
     * @param time   for one sheet
     * @param sheets their paths
     * @param words  what is looked for on each of them
     */
    public Search(Class<?> main, int memory, Duration time, List<String> sheets, List<List<String>> words) throws IOException {
        this.main = main;
        this.memory = memory;
        this.time = time;
        this.sheets = sheets;
        this.words = words;
        this.running = begin();
    }

    /** A process for the sheets that are left. */
    private Optional<Running> begin() throws IOException {
        int done = found.size();
        return done == sheets.size() ? Optional.empty() : Optional.of(Running.start(main, memory,
            Request.find(sheets.subList(done, sheets.size()), words.subList(done, words.size())), new byte[0]));
    }

    /** Waits for what is found on each sheet; a sheet that stops the process is one on which nothing is found. */
    public List<List<Sighting>> found() throws IOException {
        while (running.isPresent()) {
            try (Running process = running.get()) {
                while (found.size() < sheets.size()) {
                    found.add(List.of(GSON.fromJson(process.next(Frame.Kind.FOUND, process.in(time)).text(), Sighting[].class)));
                }
            } catch (Stopped stopped) {
                if (stopped.opened().isEmpty()) {
                    throw stopped;
                }
                found.add(List.of());
            }
            running = begin();
        }
        return List.copyOf(found);
    }

    @Override
    public void close() {
        running.ifPresent(Running::close);
    }
}
