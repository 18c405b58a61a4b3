package reglet.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.store.SafeFile;

/**
 * Files other than texts, such as data sheets, that one change brought into a job's folder: what is needed to take them back with it,
 * and to bring them again. What was there before, or was changed since, is nobody's to take.
 */
public final class Brought {
    private final Map<String, byte[]> files;

    private Brought(Map<String, byte[]> files) {
        this.files = files;
    }

    /** The files, by path in the job's folder, that are not there. */
    public static List<String> absent(OpenJob job, List<String> files) {
        return files.stream().filter(file -> !Files.exists(job.folder().resolve(file))).toList();
    }

    /** Those of the files that are there now. */
    public static Brought of(OpenJob job, List<String> absentBefore) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String file : absentBefore) {
            Path path = job.folder().resolve(file);
            if (Files.isRegularFile(path)) {
                files.put(file, Files.readAllBytes(path));
            }
        }
        return new Brought(files);
    }

    /** Takes away those that are as they were brought and that no product of the job names. */
    public void takeBack(OpenJob job) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = job.folder().resolve(file.getKey());
            boolean named = job.job().products().stream().anyMatch(product -> product.sheet().equals(file.getKey()));
            if (!named && Files.isRegularFile(path) && Arrays.equals(Files.readAllBytes(path), file.getValue())) {
                SafeFile.remove(path);
            }
        }
    }

    /**
     * Brings them again.
     *
     * @throws UnusableInput when another file has one's name by now; nothing is brought then
     */
    public void again(OpenJob job) throws UnusableInput, IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = job.folder().resolve(file.getKey());
            if (Files.exists(path) && !Arrays.equals(Files.readAllBytes(path), file.getValue())) {
                throw new UnusableInput(new Problem(Place.of(file.getKey()), "is another file of that name by now", "rename it"));
            }
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = job.folder().resolve(file.getKey());
            if (!Files.exists(path)) {
                SafeFile.write(path, file.getValue());
            }
        }
    }
}
