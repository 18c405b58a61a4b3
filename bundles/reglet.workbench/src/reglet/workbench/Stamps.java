package reglet.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How the job's own files lay on disk, to see that another program changed one.
 *
 * @param files path below the job's folder, with time and size
 */
record Stamps(Map<String, String> files) {
    static final Stamps NONE = new Stamps(Map.of());
    private static final List<String> FOLDERS = List.of("", "walls", "sections", "products", "submittals");

    static Stamps of(Path folder) {
        Map<String, String> found = new TreeMap<>();
        for (String part : FOLDERS) {
            try (var entries = Files.newDirectoryStream(folder.resolve(part), "*.{yaml,md}")) {
                for (Path file : entries) {
                    found.put((part.isEmpty() ? "" : part + "/") + file.getFileName(), Files.getLastModifiedTime(file).toMillis() + " "
                        + Files.size(file));
                }
            } catch (IOException absent) {
                // a job need not have every folder
            }
        }
        // a submittal has a folder of its own
        try (var entries = Files.newDirectoryStream(folder.resolve("submittals"), Files::isDirectory)) {
            for (Path submittal : entries) {
                Path file = submittal.resolve("submittal.yaml");
                if (Files.exists(file)) {
                    found.put("submittals/" + submittal.getFileName() + "/submittal.yaml", Files.getLastModifiedTime(file).toMillis() + " "
                        + Files.size(file));
                }
            }
        } catch (IOException absent) {
            // no submittals yet
        }
        return new Stamps(found);
    }

    /** The files that are there in one only or lie otherwise in the other. */
    Set<String> differing(Stamps other) {
        Set<String> differing = new TreeSet<>();
        files.forEach((file, stamp) -> {
            if (!stamp.equals(other.files.get(file))) {
                differing.add(file);
            }
        });
        other.files.keySet().stream().filter(file -> !files.containsKey(file)).forEach(differing::add);
        return differing;
    }

    /** The texts of the files that are there; one that can't be read is left out. */
    Map<String, String> texts(Path folder) {
        Map<String, String> texts = new TreeMap<>();
        for (String file : files.keySet()) {
            try {
                texts.put(file, Files.readString(folder.resolve(file), StandardCharsets.UTF_8));
            } catch (IOException unreadable) {
                // reading the job says what is wrong with it
            }
        }
        return texts;
    }
}
