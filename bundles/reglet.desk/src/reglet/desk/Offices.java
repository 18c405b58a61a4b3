package reglet.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import reglet.model.Office;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.store.OfficeFolder;

/** Finds the office whose letterhead a job's sections bear: the folder that was asked for, the job's own, or the person's. */
public final class Offices {
    private static final String FOLDER = "office";

    private Offices() {
    }

    /**
     * @param asked a folder that somebody asked for; it must be there
     * @return no office when there is none anywhere
     */
    public static Office find(Path job, Optional<Path> asked) throws UnusableInput, IOException {
        if (asked.isPresent()) {
            if (!Files.isDirectory(asked.get())) {
                throw new UnusableInput(new Problem(Place.of(asked.get().toAbsolutePath().toString()), "there is no such folder",
                    "expected an office's folder, with an " + OfficeFolder.FILE + " in it"));
            }
            return OfficeFolder.read(asked.get(), asked.get().toAbsolutePath().toString());
        }
        Path own = job.resolve(FOLDER);
        if (Files.isDirectory(own)) {
            return OfficeFolder.read(own, FOLDER);
        }
        Path persons = folder();
        return Files.isDirectory(persons) ? OfficeFolder.read(persons, persons.toAbsolutePath().toString()) : Office.none();
    }

    /** The person's own: {@code $XDG_CONFIG_HOME/reglet/office}, or {@code .config/reglet/office} at home. */
    static Path folder() {
        String base = System.getenv("XDG_CONFIG_HOME");
        Path settings = base == null || base.isBlank() ? Path.of(System.getProperty("user.home"), ".config") : Path.of(base);
        return settings.resolve("reglet").resolve(FOLDER);
    }
}
