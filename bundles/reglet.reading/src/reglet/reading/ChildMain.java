package reglet.reading;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import com.google.gson.Gson;

/** The process's own end: one request on standard input, one answer on standard output, complaints on standard error. */
public final class ChildMain {
    private static final Gson GSON = new Gson();
    private static final int LARGEST_REQUEST = 1 << 28;

    private ChildMain() {
    }

    public static void main(String[] none) throws IOException {
        PrintStream answers = System.out;
        // whatever a library prints must not fall into the answer
        System.setOut(System.err);
        DataInputStream in = new DataInputStream(System.in);
        Request request = GSON.fromJson(new String(bytes(in), StandardCharsets.UTF_8), Request.class);
        byte[] attached = bytes(in);
        DataOutputStream out = new DataOutputStream(answers);
        switch (request.verb()) {
            case "measure" -> answer(out, GSON.toJson(request.sheets().stream().map(Path::of).map(Sheets::measure).toList()), new byte[0]);
            case "assemble" -> answer(out, "{}", Binder.bind(request, attached));
            default -> throw new IOException("unknown request " + request.verb());
        }
        out.flush();
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > LARGEST_REQUEST) {
            throw new IOException("the request is too large");
        }
        return in.readNBytes(length);
    }

    private static void answer(DataOutputStream out, String text, byte[] bytes) throws IOException {
        byte[] json = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(json.length);
        out.write(json);
        out.writeInt(bytes.length);
        out.write(bytes);
    }
}
