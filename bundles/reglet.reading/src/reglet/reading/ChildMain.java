package reglet.reading;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

import com.google.gson.Gson;

import reglet.reading.binding.Binder;
import reglet.reading.binding.Kept;
import reglet.reading.page.Finder;
import reglet.reading.page.Pages;
import reglet.reading.page.Pictures;
import reglet.reading.page.Sheets;
import reglet.reading.process.Frame;
import reglet.reading.process.Request;

/**
 * The process's own end. Standard input brings requests: a length and so much JSON ({@link Request}), a length and so many
 * bytes (our own pages); it stays open, and its end means that nobody waits any more. Standard output carries {@link Frame}s,
 * standard error whatever there is to complain about.
 */
public final class ChildMain {
    private static final Gson GSON = new Gson();
    private static final int LARGEST_REQUEST = 1 << 28;

    private ChildMain() {
    }

    public static void main(String[] none) throws IOException {
        // whatever a library prints must not fall into the answer
        OutputStream answers = System.out;
        System.setOut(System.err);
        DataInputStream in = new DataInputStream(System.in);
        BlockingQueue<Errand> errands = errands(in);
        Errand errand = next(errands);
        Request request = errand.request;
        DataOutputStream out = new DataOutputStream(new BufferedOutputStream(answers, Frame.LONGEST));
        switch (request.verb()) {
            case "measure" -> measure(request, out);
            case "read" -> read(request.sheets().get(0), out);
            case "find" -> find(request, out);
            case "picture" -> picture(request, out);
            case "open" -> open(request, errands, out);
            case "assemble" -> errand.bind(new Kept(), out);
            default -> throw new IOException("unknown request " + request.verb());
        }
        new Frame(Frame.Kind.END, new byte[0]).write(out);
        System.exit(0);
    }

    /** Something asked, and the pages of our own that came with it. */
    private record Errand(Request request, byte[] ownPages) {

        void bind(Kept kept, DataOutputStream out) throws IOException {
            try (kept) {
                Binder.bind(request, ownPages, kept, sheet -> opens(out, sheet), out);
            }
        }
    }

    private static Errand next(BlockingQueue<Errand> errands) throws InterruptedIOException {
        try {
            return errands.take();
        } catch (InterruptedException never) {
            throw new InterruptedIOException();
        }
    }

    private static void open(Request request, BlockingQueue<Errand> errands, DataOutputStream out) throws IOException {
        Kept kept = new Kept();
        for (String sheet : request.sheets()) {
            opens(out, sheet);
            Frame.of(Frame.Kind.MEASURE, GSON.toJson(kept.look(sheet))).write(out);
        }
        next(errands).bind(kept, out);
    }

    private static void measure(Request request, DataOutputStream out) throws IOException {
        for (String sheet : request.sheets()) {
            opens(out, sheet);
            Frame.of(Frame.Kind.MEASURE, GSON.toJson(Kept.measure(Path.of(sheet)))).write(out);
        }
    }

    private static void read(String sheet, DataOutputStream out) throws IOException {
        opens(out, sheet);
        try {
            Pages.read(Path.of(sheet), part -> Frame.of(Frame.Kind.PAGE, GSON.toJson(part)).write(out));
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            Frame.of(Frame.Kind.UNREADABLE, Sheets.why(broken)).write(out);
        }
    }

    private static void picture(Request request, DataOutputStream out) throws IOException {
        String sheet = request.sheets().get(0);
        opens(out, sheet);
        List<String> asked = request.words().get(0);
        try (OutputStream picture = Frame.packageTo(out)) {
            Pictures.draw(Path.of(sheet), Integer.parseInt(asked.get(0)), Integer.parseInt(asked.get(1)), picture);
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            Frame.of(Frame.Kind.UNREADABLE, Sheets.why(broken)).write(out);
        }
    }

    private static void find(Request request, DataOutputStream out) throws IOException {
        for (int i = 0; i < request.sheets().size(); i++) {
            opens(out, request.sheets().get(i));
            List<Finder.Sighting> found;
            try {
                found = Finder.find(Path.of(request.sheets().get(i)), request.words().get(i));
            } catch (IOException | RuntimeException | StackOverflowError broken) {
                found = List.of();
            }
            Frame.of(Frame.Kind.FOUND, GSON.toJson(found)).write(out);
        }
    }

    private static void opens(DataOutputStream out, String sheet) throws IOException {
        Frame.of(Frame.Kind.OPENS, sheet).write(out);
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > LARGEST_REQUEST) {
            throw new IOException("the request is too large");
        }
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return bytes;
    }

    /** What is asked, as it comes; the process stops at once when nobody waits any more, whatever it is at. */
    private static BlockingQueue<Errand> errands(DataInputStream in) {
        BlockingQueue<Errand> errands = new LinkedBlockingQueue<>();
        Thread hears = new Thread(() -> {
            try {
                while (true) {
                    errands.add(new Errand(GSON.fromJson(new String(bytes(in), StandardCharsets.UTF_8), Request.class), bytes(in)));
                }
            } catch (IOException | RuntimeException end) {
                // nobody waits, or nobody makes sense
            }
            Runtime.getRuntime().halt(1);
        }, "hears what is asked");
        hears.setDaemon(true);
        hears.start();
        return errands;
    }
}
