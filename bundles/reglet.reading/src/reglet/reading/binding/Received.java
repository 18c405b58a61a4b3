package reglet.reading.binding;

import java.io.Closeable;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;

import com.google.gson.Gson;
import com.google.gson.JsonParseException;

import reglet.reading.page.Lent;
import reglet.reading.page.Lent.Stretch;
import reglet.reading.process.Frame;
import reglet.reading.process.Request;

/** A package as it comes from the process: pieces of it, and places of the plan's sheets that are copied here. */
public final class Received implements Closeable {
    private static final Gson GSON = new Gson();

    private final Set<String> sheets;
    private final OutputStream out;
    private final long most;
    private final Identity identity = new Identity();
    private final byte[] buffer = new byte[Frame.LONGEST];
    private String named = "";
    private long bytes;
    private String open = "";
    private FileInputStream sheet;

    /** @param most bytes that the package may have */
    public Received(Request asked, OutputStream out, long most) {
        this.sheets = asked.parts().stream().map(Request.Part::sheet).filter(sheet -> !sheet.isEmpty()).collect(Collectors.toSet());
        this.out = out;
        this.most = most;
    }

    /** Whether anything was handed over. */
    public boolean begun() {
        return bytes > 0;
    }

    public void take(Frame frame) throws IOException {
        switch (frame.kind()) {
            case PACKAGE -> write(frame.bytes(), frame.bytes().length);
            case COPY -> copy(frame);
            case IDENTITY -> {
                // it stands there twice and is the same both times
                named = named.isEmpty() ? identity.text() : named;
                write(named.getBytes(StandardCharsets.US_ASCII), Identity.LENGTH);
            }
            default -> {
                // tells which sheet is opened
            }
        }
    }

    private void copy(Frame frame) throws IOException {
        Stretch stretch = stretch(frame);
        if (!open.equals(stretch.sheet())) {
            close();
            sheet = new FileInputStream(stretch.sheet());
            open = stretch.sheet();
            if (!Lent.state(Path.of(open)).equals(stretch.state())) {
                throw changed();
            }
        }
        sheet.getChannel().position(stretch.from());
        for (long left = stretch.length(); left > 0;) {
            int read = sheet.read(buffer, 0, (int) Math.min(left, buffer.length));
            if (read < 0) {
                throw changed();
            }
            write(buffer, read);
            left -= read;
        }
    }

    private IOException changed() {
        return new IOException("the sheet " + open + " was written while the package was put together; put it together again");
    }

    /** The process has opened foreign files, so that it is not trusted: it may have sheets of the plan copied, and no other file. */
    private Stretch stretch(Frame frame) throws IOException {
        try {
            Stretch stretch = GSON.fromJson(frame.text(), Stretch.class);
            if (stretch != null && sheets.contains(stretch.sheet()) && stretch.from() >= 0 && stretch.length() > 0) {
                return stretch;
            }
        } catch (JsonParseException nonsense) {
            // as below
        }
        throw new IOException("putting the package together gave an answer that can't be understood");
    }

    private void write(byte[] from, int length) throws IOException {
        bytes += length;
        if (bytes > most) {
            throw new IOException("the package would be larger than " + (most >> 20) + " MB; send fewer sheets");
        }
        identity.add(from, 0, length);
        out.write(from, 0, length);
    }

    @Override
    public void close() throws IOException {
        if (sheet != null) {
            sheet.close();
        }
    }
}
