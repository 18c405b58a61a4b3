package reglet.reading.process;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;

import com.google.gson.Gson;

/**
 * One run of the process: started with a request, heard frame by frame, killed when closed. It writes nothing that anybody
 * keeps: the PDF library alone puts large decrypted streams into the system's folder for temporary files, and takes them away.
 */
public final class Running implements AutoCloseable {
    private static final Gson GSON = new Gson();
    private static final int COMPLAINT = 4_000;
    private static final int AHEAD = 16;
    private static final int OUT_OF_MEMORY = 3;
    private static final int SECONDS_TO_END = 2;

    private final int memory;
    private final Process process;
    /** Few, so that a process that floods us waits; empty for the end of the stream. */
    private final BlockingQueue<Optional<Frame>> frames = new ArrayBlockingQueue<>(AHEAD);
    private final StringBuffer complaint = new StringBuffer();
    private final List<Thread> threads = new ArrayList<>();
    private String opened = "";

    /** The process ended, was killed or said nothing that can be understood. */
    public static final class Stopped extends IOException {
        private static final long serialVersionUID = 1L;
        private final String opened;

        private Stopped(String reason, String opened) {
            super(reason);
            this.opened = opened;
        }

        /** The sheet that it was at; "" for none. */
        public String opened() {
            return opened;
        }
    }

    private Running(Class<?> main, int memory, Request request, byte[] attached) throws IOException {
        this.memory = memory;
        ProcessBuilder builder = new ProcessBuilder(command(main, memory)).directory(new File(System.getProperty("java.io.tmpdir")));
        Map<String, String> environment = builder.environment();
        String windows = environment.get("SystemRoot");
        environment.clear();
        if (windows != null) {
            // Windows starts no Java without it
            environment.put("SystemRoot", windows);
        }
        this.process = builder.start();
        ask(request, attached);
        thread("hears", this::hear);
        thread("hears complaints", this::hearComplaints);
    }

    public static Running start(Class<?> main, int memory, Request request, byte[] attached) throws IOException {
        return new Running(main, memory, request, attached);
    }

    private static List<String> command(Class<?> main, int memory) {
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx" + memory + "m", "-Xss1m",
            "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-XX:+ExitOnOutOfMemoryError", "-XX:+DisplayVMOutputToStderr",
            "-XX:-UsePerfData", "-XX:+ErrorFileToStderr", "-Xshare:auto", "-Djava.awt.headless=true",
            "-Dorg.apache.commons.logging.Log=org.apache.commons.logging.impl.NoOpLog", "-cp", ClassPath.of(main), main.getName());
    }

    private void thread(String does, Runnable work) {
        Thread thread = new Thread(work, "reading process: " + does);
        thread.setDaemon(true);
        thread.start();
        threads.add(thread);
    }

    /** The moment so much later than now, for {@link #next}. */
    public long in(Duration time) {
        return System.nanoTime() + time.toNanos();
    }

    /** The sheet that the process was at last; "" for none. */
    public String opened() {
        return opened;
    }

    /** The next frame of a kind; frames of other kinds are passed over. */
    public Frame next(Frame.Kind kind, long deadline) throws IOException {
        Frame frame = next(deadline);
        while (frame.kind() != kind) {
            if (frame.kind() == Frame.Kind.END) {
                throw new Stopped("reading it gave no answer", opened);
            }
            frame = next(deadline);
        }
        return frame;
    }

    public Frame next(long deadline) throws IOException {
        long started = System.nanoTime();
        try {
            Optional<Frame> frame = frames.poll(Math.max(0, deadline - started), TimeUnit.NANOSECONDS);
            if (frame == null) {
                throw new Stopped("reading it took too long and was stopped", opened);
            }
            if (frame.isEmpty()) {
                throw new Stopped(whyEnded(), opened);
            }
            if (frame.get().kind() == Frame.Kind.OPENS) {
                opened = frame.get().text();
            }
            return frame.get();
        } catch (InterruptedException cancelled) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("reading was cancelled");
        }
    }

    private String whyEnded() throws InterruptedException {
        boolean ended = process.waitFor(SECONDS_TO_END, TimeUnit.SECONDS);
        for (Thread thread : threads) {
            thread.join(TimeUnit.SECONDS.toMillis(1));
        }
        if (ended && process.exitValue() == OUT_OF_MEMORY || complaint.indexOf("OutOfMemoryError") >= 0) {
            return "reading it needed more than " + memory + " MB of memory and was stopped";
        }
        String said = complaint.toString().strip();
        return said.isEmpty() ? "reading it broke off without an answer"
            : "reading it failed (" + said.lines().findFirst().orElse("") + ")";
    }

    /** Asks something more, once all that was asked before is answered. */
    public Running ask(Request request, byte[] attached) {
        thread("asks", () -> say(request, attached));
        return this;
    }

    private void say(Request request, byte[] attached) {
        try {
            // stays open: its end tells the process that nobody waits any more
            DataOutputStream out = new DataOutputStream(process.getOutputStream());
            byte[] json = GSON.toJson(request).getBytes(StandardCharsets.UTF_8);
            out.writeInt(json.length);
            out.write(json);
            out.writeInt(attached.length);
            out.write(attached);
            out.flush();
        } catch (IOException gone) {
            // the process ended; what it answered says why
        }
    }

    private void hear() {
        try {
            Optional<Frame> frame;
            DataInputStream in = new DataInputStream(process.getInputStream());
            do {
                frame = read(in);
                frames.put(frame);
            } while (frame.isPresent() && frame.get().kind() != Frame.Kind.END);
        } catch (InterruptedException closed) {
            // nobody listens any more
        }
    }

    private static Optional<Frame> read(DataInputStream in) {
        try {
            return Frame.read(in);
        } catch (IOException brokenOff) {
            return Optional.empty();
        }
    }

    private void hearComplaints() {
        byte[] buffer = new byte[COMPLAINT];
        try (InputStream in = process.getErrorStream()) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                if (complaint.length() < COMPLAINT) {
                    complaint.append(new String(buffer, 0, read, StandardCharsets.UTF_8));
                }
            }
        } catch (IOException gone) {
            // as good as silence
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
        threads.forEach(Thread::interrupt);
        boolean interrupted = Thread.interrupted();
        try {
            process.waitFor(SECONDS_TO_END, TimeUnit.SECONDS);
        } catch (InterruptedException again) {
            interrupted = true;
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
