package reglet.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import com.google.gson.Gson;

import reglet.reading.Running.Stopped;

/** A search for words on sheets that goes on in a process of its own while others work; heard by {@link #found}. */
final class Search implements AutoCloseable {
    private static final Gson GSON = new Gson();

    private final Class<?> main;
    private final Child.Limits limits;
    private final List<String> sheets;
    private final List<List<String>> words;
    private final List<List<Spotted>> found = new ArrayList<>();
    private Optional<Running> running;

    /** Begins; does nothing when there are no sheets. */
    Search(Class<?> main, Child.Limits limits, List<Path> sheets, List<List<String>> words) throws IOException {
        this.main = main;
        this.limits = limits;
        this.sheets = sheets.stream().map(sheet -> sheet.toAbsolutePath().toString()).toList();
        this.words = words;
        this.running = begin();
    }

    /** A process for the sheets that are left. */
    private Optional<Running> begin() throws IOException {
        int done = found.size();
        return done == sheets.size() ? Optional.empty() : Optional.of(Running.start(main, limits.memory(),
            Request.find(sheets.subList(done, sheets.size()), words.subList(done, words.size())), new byte[0]));
    }

    /** Waits for what is found on each sheet; a sheet that stops the process is one on which nothing is found. */
    List<List<Spotted>> found() throws IOException {
        while (running.isPresent()) {
            try (Running process = running.get()) {
                while (found.size() < sheets.size()) {
                    found.add(List.of(GSON.fromJson(process.next(Frame.Kind.FOUND, process.in(limits.sheet())).text(), Spotted[].class)));
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
