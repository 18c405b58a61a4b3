package reglet.reading;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import com.google.gson.Gson;

/** The process that opens foreign files. Each call starts one, and it is gone when the call returns. */
public final class Child {
    private static final Gson GSON = new Gson();
    private static final int COMPLAINT = 4_000;

    private final List<String> command;
    private final Limits limits;

    /**
     * What the process may use.
     *
     * @param memory megabytes of heap
     * @param time   from start to end
     * @param output bytes that it may answer with
     */
    public record Limits(int memory, Duration time, long output) {
        /** Enough for packages of some thousand pages, for sheets are mapped and not read into memory. */
        public static final Limits USUAL = new Limits(256, Duration.ofMinutes(3), 1L << 30);
    }

    private Child(String main, Limits limits) {
        this.limits = limits;
        this.command = List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx" + limits.memory() + "m",
            "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-XX:+ExitOnOutOfMemoryError", "-Xshare:auto", "-Djava.awt.headless=true",
            "-Djdk.attach.allowAttachSelf=false", "-Dorg.apache.commons.logging.Log=org.apache.commons.logging.impl.NoOpLog", "-cp",
            ClassPath.ofChild(), main);
    }

    public static Child usual() {
        return new Child(ChildMain.class.getName(), Limits.USUAL);
    }

    /** For tests: another main class and other limits. */
    static Child of(String main, Limits limits) {
        return new Child(main, limits);
    }

    /** Looks how many pages each sheet has, and whether it can be bound into a package. */
    public List<Measure> measure(List<Path> sheets) throws IOException {
        if (sheets.isEmpty()) {
            return List.of();
        }
        Request request = new Request("measure", sheets.stream().map(sheet -> sheet.toAbsolutePath().toString()).toList(), null, null, null);
        Measure[] measures = GSON.fromJson(run(request, new byte[0]).text(), Measure[].class);
        return List.of(measures);
    }

    /** Binds a package. The same plan and files give the same bytes. */
    public byte[] assemble(PackagePlan plan) throws IOException {
        List<Request.Part> parts = plan.parts().stream().map(part -> new Request.Part(part.title(), part.level(), part.firstPage(),
            part.pages(), part.sheet().map(sheet -> sheet.toAbsolutePath().toString()).orElse(""), part.mark())).toList();
        List<Request.Link> links = plan.links().stream().map(link -> new Request.Link(link.page(), link.box().x(), link.box().y(),
            link.box().width(), link.box().height(), link.target())).toList();
        return run(new Request("assemble", List.of(), plan.title(), parts, links), plan.ownPages()).bytes();
    }

    /** What the process answered: JSON, then bytes. */
    private record Answer(String text, byte[] bytes) {
    }

    private Answer run(Request request, byte[] attached) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().clear();
        builder.directory(new File(System.getProperty("java.io.tmpdir")));
        Process process = builder.start();
        try {
            CompletableFuture<Void> asked = CompletableFuture.runAsync(() -> ask(process.getOutputStream(), request, attached));
            CompletableFuture<String> complaint = CompletableFuture.supplyAsync(() -> complaint(process.getErrorStream()));
            CompletableFuture<Answer> answer = CompletableFuture.supplyAsync(() -> answer(process.getInputStream()));
            return wait(process, answer, asked, complaint);
        } finally {
            process.destroyForcibly();
        }
    }

    private Answer wait(Process process, CompletableFuture<Answer> answer, CompletableFuture<Void> asked, CompletableFuture<String> complaint)
            throws IOException {
        try {
            Answer given = answer.get(limits.time().toMillis(), TimeUnit.MILLISECONDS);
            asked.get(1, TimeUnit.SECONDS);
            return given;
        } catch (TimeoutException late) {
            throw new IOException("reading took more than " + limits.time().toSeconds() + " s and was stopped");
        } catch (InterruptedException cancelled) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("reading was cancelled");
        } catch (ExecutionException failed) {
            throw new IOException(reason(process, complaint, failed), failed);
        }
    }

    private String reason(Process process, CompletableFuture<String> complaint, ExecutionException failed) {
        try {
            process.waitFor(2, TimeUnit.SECONDS);
            String said = complaint.get(2, TimeUnit.SECONDS).strip();
            if (said.contains("OutOfMemoryError")) {
                return "reading needed more than " + limits.memory() + " MB of memory and was stopped";
            }
            return said.isEmpty() ? "reading failed: " + failed.getCause().getMessage() : "reading failed: " + lastLine(said);
        } catch (InterruptedException | ExecutionException | TimeoutException silent) {
            return "reading failed without saying why";
        }
    }

    private static String lastLine(String text) {
        return text.substring(text.lastIndexOf('\n') + 1);
    }

    private static void ask(OutputStream stream, Request request, byte[] attached) {
        try (DataOutputStream out = new DataOutputStream(stream)) {
            byte[] json = GSON.toJson(request).getBytes(StandardCharsets.UTF_8);
            out.writeInt(json.length);
            out.write(json);
            out.writeInt(attached.length);
            out.write(attached);
        } catch (IOException gone) {
            // the process ended; its answer says why
        }
    }

    private Answer answer(InputStream stream) {
        try (DataInputStream in = new DataInputStream(stream)) {
            byte[] text = bytes(in);
            return new Answer(new String(text, StandardCharsets.UTF_8), bytes(in));
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException("the process ended without an answer", broken);
        }
    }

    private byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > limits.output()) {
            throw new IOException("the answer is larger than " + limits.output() + " bytes");
        }
        byte[] bytes = in.readNBytes(length);
        if (bytes.length < length) {
            throw new IOException("the answer broke off");
        }
        return bytes;
    }

    private static String complaint(InputStream stream) {
        try (InputStream in = stream) {
            byte[] buffer = new byte[COMPLAINT];
            int filled = 0;
            int read;
            while ((read = in.read(buffer, filled, buffer.length - filled)) > 0) {
                filled += read;
                if (filled == buffer.length) {
                    in.skip(Long.MAX_VALUE);
                    break;
                }
            }
            return new String(buffer, 0, filled, StandardCharsets.UTF_8);
        } catch (IOException gone) {
            return "";
        }
    }
}
