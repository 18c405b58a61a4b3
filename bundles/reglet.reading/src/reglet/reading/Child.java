package reglet.reading;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import com.google.gson.Gson;

import reglet.reading.Frame.Found;
import reglet.reading.Running.Stopped;

/**
 * The process that opens foreign files. Each call starts one, and it is gone when the call returns, fails or is cancelled.
 * Interrupting the calling thread cancels; the call then throws {@link java.io.InterruptedIOException}.
 */
public final class Child {
    private static final Gson GSON = new Gson();

    private final Class<?> main;
    private final Limits limits;

    /**
     * What the process may use.
     *
     * @param memory megabytes of heap
     * @param sheet  time for a look at one sheet
     * @param whole  time for putting a package together
     * @param output bytes of a package, which is handed over as a whole
     */
    public record Limits(int memory, Duration sheet, Duration whole, int output) {
        /** Enough for packages of some thousand pages, for sheets are mapped and not read into memory. */
        public static final Limits USUAL = new Limits(256, Duration.ofSeconds(60), Duration.ofMinutes(5), 512 << 20);
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
            Request request = Request.measure(left.stream().map(sheet -> sheet.toAbsolutePath().toString()).toList());
            try (Running running = Running.start(main, limits.memory(), request, new byte[0])) {
                measure(running, left, measures);
            }
        }
        return List.copyOf(measures);
    }

    private void measure(Running running, List<Path> left, List<Measure> measures) throws IOException {
        for (Path sheet : left) {
            try {
                Found found = GSON.fromJson(running.next(Frame.Kind.MEASURE, running.in(limits.sheet())).text(), Found.class);
                measures.add(new Measure(sheet, found.pages(), found.problem()));
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
     * Binds a package. The same plan and files give the same bytes. A sheet that can't be bound in, or has other pages than the
     * plan says, is replaced by as many pages that say so, so that page numbers stay.
     *
     * @throws IOException when the process doesn't start, reaches a limit or fails (the message names the sheet it was at), or the
     *                     call is cancelled
     */
    public byte[] assemble(PackagePlan plan) throws IOException {
        try (Running running = Running.start(main, limits.memory(), Request.assemble(plan), plan.ownPages())) {
            List<byte[]> pieces = new ArrayList<>();
            long size = 0;
            long deadline = running.in(limits.whole());
            for (Frame frame = running.next(deadline); frame.kind() != Frame.Kind.END; frame = running.next(deadline)) {
                if (frame.kind() == Frame.Kind.PACKAGE) {
                    pieces.add(frame.bytes());
                    size += frame.bytes().length;
                }
                if (size > limits.output()) {
                    throw new IOException("the package would be larger than " + (limits.output() >> 20) + " MB; send fewer sheets");
                }
            }
            ByteBuffer whole = ByteBuffer.allocate((int) size);
            pieces.forEach(whole::put);
            return whole.array();
        } catch (Stopped stopped) {
            throw new IOException("the package was not put together" + (stopped.opened().isEmpty() ? ""
                : " because of " + stopped.opened()) + ": " + stopped.getMessage(), stopped);
        }
    }
}
