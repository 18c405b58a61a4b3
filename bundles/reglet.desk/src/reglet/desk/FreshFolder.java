package reglet.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.store.SafeFile;

/** Fills folders that hold nothing yet; one that holds anything is left as it is. */
public final class FreshFolder {
    private static final String JOB = "job.yaml";

    private FreshFolder() {
    }

    /** Why a folder can't be filled, in words; "" when it can: it isn't there yet, or is empty. */
    public static String refusal(Path folder) {
        if (!Files.exists(folder)) {
            return "";
        }
        if (!Files.isDirectory(folder)) {
            return "is a file and no folder";
        }
        try (var entries = Files.newDirectoryStream(folder)) {
            return entries.iterator().hasNext() ? "holds files already" : "";
        } catch (IOException unreadable) {
            return "can't be looked into: " + unreadable.getMessage();
        }
    }

    /** The folder itself when it can be filled, else the first of "NAME-2", "NAME-3" … beside it that can. */
    public static Path free(Path wanted) {
        Path folder = wanted;
        for (int number = 2; !refusal(folder).isEmpty(); number++) {
            folder = wanted.resolveSibling(wanted.getFileName() + "-" + number);
        }
        return folder;
    }

    /**
     * Writes the files of a job; its job.yaml last, so that a folder left half filled is never taken for a job.
     *
     * @param files contents by path below the folder, parts separated by "/"
     * @return what was written, in order
     * @throws UnusableInput when the folder holds anything, or a path leads out of it
     */
    public static List<Path> fill(Path folder, Map<String, byte[]> files) throws UnusableInput, IOException {
        Path root = folder.toAbsolutePath().normalize();
        String refusal = refusal(root);
        if (!refusal.isEmpty()) {
            throw new UnusableInput(new Problem(Place.of(folder.toString()), refusal, "choose a new or an empty folder"));
        }
        for (String name : files.keySet()) {
            if (!root.resolve(name).normalize().startsWith(root) || root.resolve(name).normalize().equals(root)) {
                throw new UnusableInput(new Problem(Place.of(name), "leads out of the folder", "expected a path below it"));
            }
        }
        List<String> order = new ArrayList<>(files.keySet().stream().filter(name -> !name.equals(JOB)).toList());
        if (files.containsKey(JOB)) {
            order.add(JOB);
        }
        List<Path> written = new ArrayList<>();
        for (String name : order) {
            Path file = root.resolve(name).normalize();
            SafeFile.write(file, files.get(name));
            written.add(file);
        }
        return List.copyOf(written);
    }
}
