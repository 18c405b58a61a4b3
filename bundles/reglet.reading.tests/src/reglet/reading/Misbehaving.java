package reglet.reading;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import com.google.gson.Gson;

import reglet.reading.process.Frame;
import reglet.reading.process.Request;

/** Processes that behave as a broken one would. Each first says that it opens the first sheet, as the real one does. */
public final class Misbehaving {
    private Misbehaving() {
    }

    private static DataOutputStream opened() throws IOException {
        DataInputStream in = new DataInputStream(System.in);
        String request = new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
        DataOutputStream out = new DataOutputStream(System.out);
        boolean bad = request.contains("bad.pdf");
        Frame.of(Frame.Kind.OPENS, bad ? "bad.pdf" : "good.pdf").write(out);
        if (!bad) {
            Frame.of(Frame.Kind.MEASURE, "{\"pages\":7,\"problem\":\"\"}").write(out);
            new Frame(Frame.Kind.END, new byte[0]).write(out);
            System.exit(0);
        }
        return out;
    }

    static final class Hangs {
        public static void main(String[] none) throws Exception {
            opened();
            Thread.sleep(600_000);
        }
    }

    static final class EatsMemory {
        public static void main(String[] none) throws Exception {
            opened();
            List<byte[]> eaten = new ArrayList<>();
            while (true) {
                eaten.add(new byte[1 << 20]);
            }
        }
    }

    static final class TalksNonsense {
        public static void main(String[] none) throws Exception {
            opened();
            System.out.print("Hello, this is no frame at all");
            System.out.flush();
            Thread.sleep(600_000);
        }
    }

    static final class BreaksOff {
        public static void main(String[] none) throws Exception {
            DataOutputStream out = opened();
            out.writeByte(Frame.Kind.PACKAGE.ordinal());
            out.writeInt(1_000);
            out.write(new byte[10]);
            out.flush();
            System.exit(1);
        }
    }

    static final class Floods {
        public static void main(String[] none) throws Exception {
            DataOutputStream out = opened();
            while (true) {
                new Frame(Frame.Kind.PACKAGE, new byte[Frame.LONGEST]).write(out);
            }
        }
    }

    /** Stops at a bad sheet unless it is told to do without. */
    public static final class StopsOnce {
        public static void main(String[] none) throws Exception {
            DataInputStream in = new DataInputStream(System.in);
            byte[] asked = in.readNBytes(in.readInt());
            if (!new String(asked, StandardCharsets.UTF_8).contains("\"without\":{\"")) {
                String bad = new Gson().fromJson(new String(asked, StandardCharsets.UTF_8), Request.class).parts().get(1).sheet();
                Frame.of(Frame.Kind.OPENS, bad).write(new DataOutputStream(System.out));
                System.exit(1);
            }
            byte[] pages = in.readNBytes(in.readInt());
            ByteArrayOutputStream again = new ByteArrayOutputStream();
            DataOutputStream out = new DataOutputStream(again);
            out.writeInt(asked.length);
            out.write(asked);
            out.writeInt(pages.length);
            out.write(pages);
            System.setIn(new SequenceInputStream(new ByteArrayInputStream(again.toByteArray()), System.in));
            ChildMain.main(none);
        }
    }

    static final class Fails {
        public static void main(String[] none) throws Exception {
            opened();
            throw new IllegalStateException("the reason");
        }
    }
}
