package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Accepted;
import reglet.model.Change;
import reglet.model.Choice;
import reglet.model.Finding;
import reglet.model.Meeting;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.store.Edits;
import reglet.store.Jobs;
import reglet.store.SafeFile;
import reglet.store.WallEdits;

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
        return change(job, wallFile(wall), text -> Edits.set(text, component, property, written(job, component + "." + property, value)));
    }

    /** Accepts a finding with a reason and a name. */
    public static OpenJob accept(OpenJob job, Accepted accepted) throws UnusableInput, IOException {
        return change(job, Accepted.FILE, text -> Edits.accept(text, accepted));
    }

    /** Takes back what accepts a finding: an entry for its wall type, and one for every wall type. */
    public static OpenJob takeBack(OpenJob job, Finding finding) throws UnusableInput, IOException {
        return change(job, Accepted.FILE, text -> WallEdits.takeBack(WallEdits.takeBack(text, finding.rule(), finding.wall()),
            finding.rule(), ""));
    }

    /**
     * Makes changes, of facts too: all of them or, when one is refused, none.
     *
     * @throws UnusableInput when a change can't be written, or the job couldn't be read afterwards
     */
    public static OpenJob apply(OpenJob job, List<Change> changes) throws UnusableInput, IOException {
        return restore(job, texts(job, changes));
    }

    /** The texts of files after changes, by name, not yet written. */
    static Map<String, String> texts(OpenJob job, List<Change> changes) throws UnusableInput, IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Change change : changes) {
            String file = file(job, change);
            String text = texts.containsKey(file) ? texts.get(file) : text(job, file);
            texts.put(file, spliced(job, change, text));
        }
        return texts;
    }

    /** The files that changes are written to, each once. */
    public static List<String> files(OpenJob job, List<Change> changes) {
        return changes.stream().map(change -> file(job, change)).distinct().toList();
    }

    private static String file(OpenJob job, Change change) {
        String first = change.set().split("\\.", 2)[0];
        return job.job().wall(first).isPresent() ? wallFile(first) : "job.yaml";
    }

    static String spliced(OpenJob job, Change change, String text) throws UnusableInput {
        String[] parts = change.set().split("\\.", 3);
        Optional<WallType> wall = job.job().wall(parts[0]);
        if (wall.isEmpty()) {
            return stated(text, List.of(parts), written(job, parts[0], parts, 1, change.to()));
        }
        if (parts.length == 2) {
            return change.to().isEmpty() ? Edits.remove(text, parts[1])
                : Edits.choose(text, parts[1], List.of(change.to().split("\\s*,\\s*")));
        }
        if (parts[2].startsWith(Choice.VERSIONS + ".")) {
            return version(job, text, parts[1], parts[2].split("\\.", 3), change.to());
        }
        Optional<Meeting> meeting = wall.get().meetings().stream().filter(met -> met.id().equals(parts[1])).findFirst();
        return stated(text, meeting.isPresent() ? List.of("meets", parts[1], parts[2]) : List.of(parts[1], parts[2]),
            written(job, meeting.map(Meeting::subject).orElse(parts[1]), parts, 2, change.to()));
    }

    /** What a person typed for a fact or a value as files have it; the property's name is one of the parts of an address. */
    private static String written(OpenJob job, String owner, String[] parts, int at, String to) {
        return parts.length <= at ? to : written(job, owner + "." + parts[at], to);
    }

    private static String written(OpenJob job, String property, String to) {
        return job.pack().property(property).map(found -> found.type().written(to)).orElse(to);
    }

    /** A change of an alternate's version: {@code [alternates, 1]} for its options, {@code [alternates, 1, weight]} for a value. */
    private static String version(OpenJob job, String text, String component, String[] parts, String to) throws UnusableInput {
        return parts.length == 2 ? Edits.choose(text, component, parts[1], List.of(to.split("\\s*,\\s*")))
            : stated(text, List.of(component, parts[0], parts[1], parts[2]), written(job, component, parts, 2, to));
    }

    private static String stated(String text, List<String> path, String to) throws UnusableInput {
        return to.isEmpty() ? Edits.unstate(text, path) : Edits.state(text, path, to);
    }

    /** Puts texts of files in place, by name; where one is "", there is no such file afterwards. */
    public static OpenJob restore(OpenJob job, Map<String, String> texts) throws UnusableInput, IOException {
        Map<String, String> before = new LinkedHashMap<>();
        for (String file : texts.keySet()) {
            before.put(file, text(job, file));
        }
        write(job, texts);
        try {
            return job.with(Jobs.read(job.folder(), job.pack()));
        } catch (UnusableInput unusable) {
            write(job, before);
            throw unusable;
        }
    }

    private static void write(OpenJob job, Map<String, String> texts) throws IOException {
        for (Map.Entry<String, String> file : texts.entrySet()) {
            Path path = job.folder().resolve(file.getKey());
            if (file.getValue().isEmpty()) {
                SafeFile.remove(path);
            } else {
                SafeFile.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
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
        return restore(job, Map.of(file, splice.of(text(job, file))));
    }
}
