package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import reglet.model.Accepted;
import reglet.model.UnusableInput;
import reglet.store.Edits;
import reglet.store.Jobs;
import reglet.store.SafeFile;

/**
 * Changes to the files of a job. Each splices what changes into the text on disk, so that comments and order stay, and gives the
 * job as it is read afterwards. A change that would leave a file unreadable is refused and writes nothing.
 */
public final class Saving {

    private Saving() {
    }

    /** A change of a file's text. */
    private interface Splice {
        String of(String text) throws UnusableInput;
    }

    /** Accepts these options for a component of a wall type. */
    public static OpenJob choose(OpenJob job, String wall, String component, List<String> accept) throws UnusableInput, IOException {
        return change(job, wallFile(wall), text -> Edits.choose(text, component, accept));
    }

    /** Takes back the choice of a component: it is undecided again. */
    public static OpenJob undecide(OpenJob job, String wall, String component) throws UnusableInput, IOException {
        return change(job, wallFile(wall), text -> Edits.remove(text, component));
    }

    /** Sets a value over those of the options, as a person types it. */
    public static OpenJob set(OpenJob job, String wall, String component, String property, String value)
            throws UnusableInput, IOException {
        return change(job, wallFile(wall), text -> Edits.set(text, component, property, value));
    }

    /** Accepts a finding with a reason and a name. */
    public static OpenJob accept(OpenJob job, Accepted accepted) throws UnusableInput, IOException {
        return change(job, "accepted.yaml", text -> Edits.accept(text, accepted));
    }

    /** Puts an earlier text of a file back. */
    public static OpenJob restore(OpenJob job, String file, String text) throws UnusableInput, IOException {
        return change(job, file, now -> text);
    }

    /** The text of a file of the job; "" when there is none. */
    public static String text(OpenJob job, String file) throws IOException {
        Path path = job.folder().resolve(file);
        return Files.exists(path) ? Files.readString(path, StandardCharsets.UTF_8) : "";
    }

    public static String wallFile(String wall) {
        return "walls/" + wall + ".yaml";
    }

    private static OpenJob change(OpenJob job, String file, Splice splice) throws UnusableInput, IOException {
        Path path = job.folder().resolve(file);
        String before = text(job, file);
        String after = splice.of(before);
        SafeFile.write(path, after.getBytes(StandardCharsets.UTF_8));
        try {
            return job.with(Jobs.read(job.folder(), job.pack()));
        } catch (UnusableInput unusable) {
            SafeFile.write(path, before.getBytes(StandardCharsets.UTF_8));
            throw unusable;
        }
    }
}
