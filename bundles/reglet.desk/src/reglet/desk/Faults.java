package reglet.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;

import reglet.store.SafeFile;

/** Logs of our own faults, so that a person can hand one in. */
public final class Faults {

    private Faults() {
    }

    /** Writes a log and gives its path; the path says so when it could not be written. */
    public static Path log(Throwable thrown) {
        StringWriter trace = new StringWriter();
        thrown.printStackTrace(new PrintWriter(trace));
        String now = LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS"));
        Path file = Caches.folder().resolve("faults").resolve(now + ".log");
        String text = "Java " + Runtime.version() + ", " + System.getProperty("os.name") + " " + System.getProperty("os.arch") + "\n"
            + trace;
        try {
            SafeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
            return file;
        } catch (IOException unwritable) {
            return file.resolveSibling("could not be written: " + unwritable.getMessage());
        }
    }
}
