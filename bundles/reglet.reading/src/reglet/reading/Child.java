package reglet.reading;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import com.google.gson.Gson;
import com.google.gson.JsonParseException;

import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.SheetReading;
import reglet.model.UnusableInput;
import reglet.reading.binding.Received;
import reglet.reading.page.SheetPage;
import reglet.reading.process.Frame;
import reglet.reading.process.Frame.Found;
import reglet.reading.process.Request;
import reglet.reading.process.Running;
import reglet.reading.process.Running.Stopped;
import reglet.reading.process.Search;
import reglet.reading.sheet.SheetReader;

/**
 * The process that opens foreign files. Each call starts one, and it is gone when the call returns, fails or is cancelled.
 * Interrupting the calling thread cancels; the call then throws {@link java.io.InterruptedIOException}.
 */
public final class Child {
    private static final Gson GSON = new Gson();
    private static final int MOST_LEFT_OUT = 5;
    /** Processes that search at the same time, beside the one that opens the sheets: words take longest to find. */
    private static final int SEARCHERS = Math.min(2, Runtime.getRuntime().availableProcessors());
    private static final int MANY = 16;
    private static final int LARGEST_PICTURE = 32 << 20;

    private final Class<?> main;
    private final Limits limits;

    /**
     * What the process may use.
     *
     * @param memory megabytes of heap
     * @param sheet  time for a look at one sheet
     * @param whole  time for putting a package together
     * @param output bytes of a package
     */
    public record Limits(int memory, Duration sheet, Duration whole, long output) {
        /** Enough for packages of some thousand pages, for sheets are mapped and not read into memory. */
        public static final Limits USUAL = new Limits(256, Duration.ofSeconds(60), Duration.ofMinutes(5), 4L << 30);
    }

    private Child(Class<?> main, Limits limits) {
        this.main = main;
        this.limits = limits;
    }

    public static Child usual() {
        return new Child(ChildMain.class, Limits.USUAL);
    }

    /** For tests: other limits, and another end of the conversation. */
    static Child of(Class<?> main, Limits limits) {
        return new Child(main, limits);
    }

    /**
     * Looks how many pages each sheet has, and whether it can be bound into a package. A sheet that stops the process is a sheet
     * that can't be bound in; the others are looked at all the same.
     *
     * @return one for each sheet, in the same order
     * @throws IOException when the process doesn't start, or the call is cancelled
     */
    public List<Measure> measure(List<Path> sheets) throws IOException {
        List<Measure> measures = new ArrayList<>();
        while (measures.size() < sheets.size()) {
            List<Path> left = sheets.subList(measures.size(), sheets.size());
            try (Running running = Running.start(main, limits.memory(), Request.measure(names(left)), new byte[0])) {
                measure(running, left, measures);
            }
        }
        return List.copyOf(measures);
    }

    private void measure(Running running, List<Path> left, List<Measure> measures) throws IOException {
        for (Path sheet : left) {
            try {
                measures.add(measured(running, sheet));
            } catch (Stopped stopped) {
                if (running.opened().isEmpty()) {
                    // it stopped before it came to a sheet, so no sheet is to blame
                    throw stopped;
                }
                measures.add(new Measure(sheet, 0, stopped.getMessage()));
                return;
            }
        }
    }

    /**
     * Looks for words on sheets. A sheet that can't be read, or stops the process, is one on which nothing is found.
     *
     * @param words what is looked for on each of the sheets, without regard to capitals and blanks
     * @return the places found on each of the sheets, in the order of the pages and at most {@value reglet.reading.page.Finder#MOST}
     * @throws IOException when the process doesn't start, or the call is cancelled
     */
    public List<List<Spotted>> find(List<Path> sheets, List<List<String>> words) throws IOException {
        try (Search search = search(sheets, words)) {
            return spotted(search);
        }
    }

    /**
     * Looks at the sheets of a package as {@link #measure} does and for words on them as {@link #find} does, at the same time and each in
     * a process of its own, and keeps the sheets open so that they are bound sooner. The caller closes them.
     *
     * @param words for each of the sheets; empty for a sheet on which nothing is looked for
     * @throws IOException when a process doesn't start, or the call is cancelled
     */
    public OpenedSheets open(List<Path> sheets, List<List<String>> words) throws IOException {
        List<Integer> searched = IntStream.range(0, sheets.size()).filter(i -> !words.get(i).isEmpty()).boxed().toList();
        // few sheets are searched sooner than a second process starts
        int half = SEARCHERS > 1 && searched.size() >= MANY ? searched.size() / 2 : searched.size();
        List<Integer> first = searched.subList(0, half);
        List<Integer> second = searched.subList(half, searched.size());
        Running process = sheets.isEmpty() ? null : Running.start(main, limits.memory(), Request.open(names(sheets)), new byte[0]);
        try (Search one = search(of(sheets, first), of(words, first)); Search other = search(of(sheets, second), of(words, second))) {
            List<Measure> measures = new ArrayList<>();
            if (process != null && !looked(process, sheets, measures)) {
                process.close();
                process = null;
                // a sheet may have stopped it that does no harm alone
                measures.addAll(measure(sheets.subList(measures.size(), sheets.size())));
            }
            List<List<Spotted>> spotted = new ArrayList<>(spotted(one));
            spotted.addAll(spotted(other));
            List<List<Spotted>> found = new ArrayList<>(Collections.nCopies(sheets.size(), List.of()));
            searched.forEach(sheet -> found.set(sheet, spotted.get(searched.indexOf(sheet))));
            OpenedSheets opened = new OpenedSheets(this, measures, found, process);
            process = null;
            return opened;
        } finally {
            if (process != null) {
                process.close();
            }
        }
    }

    private Search search(List<Path> sheets, List<List<String>> words) throws IOException {
        return new Search(main, limits.memory(), limits.sheet(), names(sheets), words);
    }

    private static List<List<Spotted>> spotted(Search search) throws IOException {
        return search.found().stream().map(sheet -> sheet.stream().map(seen -> new Spotted(seen.words(), seen.page(), seen.box())).toList())
            .toList();
    }

    private static <T> List<T> of(List<T> all, List<Integer> which) {
        return which.stream().map(all::get).toList();
    }

    private static List<String> names(List<Path> sheets) {
        return sheets.stream().map(sheet -> sheet.toAbsolutePath().toString()).toList();
    }

    /** Whether the process told of all sheets and is still there. */
    private boolean looked(Running process, List<Path> sheets, List<Measure> measures) throws IOException {
        try {
            for (Path sheet : sheets) {
                measures.add(measured(process, sheet));
            }
            return true;
        } catch (Stopped stopped) {
            return false;
        }
    }

    private Measure measured(Running running, Path sheet) throws IOException {
        Found found = GSON.fromJson(running.next(Frame.Kind.MEASURE, running.in(limits.sheet())).text(), Found.class);
        return new Measure(sheet, found.pages(), found.problem());
    }

    /**
     * Takes words and lines off a sheet's pages.
     *
     * @return its pages in their order; pages beyond the first {@value reglet.reading.page.Pages#MOST} are empty and have no size
     * @throws UnusableInput when it can't be opened, or stops the process
     * @throws IOException   when the process doesn't start, or the call is cancelled
     */
    List<SheetPage> pages(Path sheet) throws UnusableInput, IOException {
        Map<Integer, SheetPage> pages = new TreeMap<>();
        try (Running running = Running.start(main, limits.memory(), Request.read(sheet.toAbsolutePath().toString()), new byte[0])) {
            long deadline = running.in(limits.sheet());
            for (Frame frame = running.next(deadline); frame.kind() != Frame.Kind.END; frame = running.next(deadline)) {
                if (frame.kind() == Frame.Kind.UNREADABLE) {
                    throw unreadable(sheet, frame.text());
                }
                if (frame.kind() == Frame.Kind.PAGE) {
                    SheetPage part = GSON.fromJson(frame.text(), SheetPage.class);
                    pages.merge(part.number(), part, SheetPage::with);
                }
            }
        } catch (Stopped stopped) {
            if (stopped.opened().isEmpty()) {
                throw stopped;
            }
            throw unreadable(sheet, stopped.getMessage());
        } catch (JsonParseException nonsense) {
            throw unreadable(sheet, "reading it gave no answer that can be understood");
        }
        return List.copyOf(pages.values());
    }

    private static UnusableInput unreadable(Path sheet, String why) {
        return new UnusableInput(new Problem(Place.of(sheet.toString()), why, "expected a PDF data sheet that can be opened"));
    }

    /**
     * Reads a data sheet. Foreign bytes are taken apart in the process; what it hands over are words with their places, and
     * finding properties and values among them is a pure function of these and the pack.
     *
     * @param component what the product is, as a component's id; "" to find it out from the sheet
     * @throws UnusableInput when the sheet can't be opened, stops the process, or reaches a limit
     * @throws IOException   when the process doesn't start, or the call is cancelled
     */
    public SheetReading read(Path sheet, Pack pack, String component) throws UnusableInput, IOException {
        return SheetReader.read(pages(sheet), pack, component);
    }

    /**
     * Draws a page of a sheet.
     *
     * @param page from 1
     * @param dpi  dots per inch, from {@value reglet.reading.page.Pictures#LEAST_DPI} to
     *             {@value reglet.reading.page.Pictures#MOST_DPI}; very large pages are drawn more coarsely
     * @return a PNG
     * @throws UnusableInput when the sheet can't be opened, has no such page, stops the process, or reaches a limit
     * @throws IOException   when the process doesn't start, or the call is cancelled
     */
    public byte[] picture(Path sheet, int page, int dpi) throws UnusableInput, IOException {
        ByteArrayOutputStream picture = new ByteArrayOutputStream();
        try (Running running = Running.start(main, limits.memory(), Request.picture(sheet.toAbsolutePath().toString(), page, dpi),
            new byte[0])) {
            long deadline = running.in(limits.sheet());
            for (Frame frame = running.next(deadline); frame.kind() != Frame.Kind.END; frame = running.next(deadline)) {
                if (frame.kind() == Frame.Kind.UNREADABLE) {
                    throw unreadable(sheet, frame.text());
                }
                if (frame.kind() == Frame.Kind.PACKAGE) {
                    picture.write(frame.bytes());
                }
                if (picture.size() > LARGEST_PICTURE) {
                    throw unreadable(sheet, "its picture is too large");
                }
            }
        } catch (Stopped stopped) {
            if (stopped.opened().isEmpty()) {
                throw stopped;
            }
            throw unreadable(sheet, stopped.getMessage());
        }
        return picture.toByteArray();
    }

    /**
     * Binds a package. The same plan and files give the same bytes. A sheet that can't be bound in, has other pages than the plan
     * says, or stops the process, is replaced by as many pages that say so, so that page numbers stay.
     *
     * @param out gets the package piece by piece; what it got is worth nothing when the call fails
     * @throws IOException when the process doesn't start, reaches a limit or fails (the message names the sheet it was at), or the
     *                     call is cancelled
     */
    public void assemble(PackagePlan plan, OutputStream out) throws IOException {
        assemble(plan, out, null);
    }

    /** @param first a process that has the sheets open; null for none */
    void assemble(PackagePlan plan, OutputStream out, Running first) throws IOException {
        Running opened = first;
        Map<String, String> without = new TreeMap<>();
        while (true) {
            Request request = plan.request(without);
            Received received = new Received(request, out, limits.output());
            boolean again = opened != null;
            try (received; Running running = again ? opened.ask(request, plan.ownPages())
                : Running.start(main, limits.memory(), request, plan.ownPages())) {
                long deadline = running.in(limits.whole());
                for (Frame frame = running.next(deadline); frame.kind() != Frame.Kind.END; frame = running.next(deadline)) {
                    received.take(frame);
                }
                return;
            } catch (Stopped stopped) {
                opened = null;
                if (again && !received.begun()) {
                    continue;
                }
                // nothing of a package is handed over while sheets are opened, so that it can be begun again without this one
                if (received.begun() || stopped.opened().isEmpty() || without.size() == MOST_LEFT_OUT
                    || without.put(stopped.opened(), stopped.getMessage()) != null) {
                    throw new IOException("the package was not put together" + (stopped.opened().isEmpty() ? ""
                        : " because of " + stopped.opened()) + ": " + stopped.getMessage(), stopped);
                }
            }
        }
    }

    /** As {@link #assemble(PackagePlan, OutputStream)}, for what is small enough to be held as a whole. */
    public byte[] assemble(PackagePlan plan) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assemble(plan, out);
        return out.toByteArray();
    }
}
