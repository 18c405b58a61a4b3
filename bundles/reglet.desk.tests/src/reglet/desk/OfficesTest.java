package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.UnusableInput;

class OfficesTest {

    private static Path office(Path folder, String name, String header) throws Exception {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("office.yaml"), "format: 1\nname: " + name + "\n");
        Files.writeString(folder.resolve("header.ftl"), header);
        return folder;
    }

    private static String html(Outputs outputs) throws Exception {
        return outputs.make().stream().filter(output -> output.name().endsWith(".html"))
            .map(output -> new String(output.bytes(), StandardCharsets.UTF_8)).findFirst().orElseThrow();
    }

    @Test
    void theFolderAskedForComesBeforeTheJobsOwn(@TempDir Path temp) throws Exception {
        OpenJob job = Samples.desk().open(Samples.copy("mesa-library", temp.resolve("job")));
        String number = job.job().sections().get(1);
        office(temp.resolve("job/office"), "Quay", "${office.name} of the job");
        assertTrue(html(Outputs.of(job).section(number)).contains("<p>Quay of the job</p>"));
        Path other = office(temp.resolve("other"), "Field", "${office.name} asked for");
        assertTrue(html(Outputs.of(job).office(other).section(number)).contains("<p>Field asked for</p>"));
    }

    @Test
    void aWrongTemplateIsSaidWithItsFileAndNothingIsWritten(@TempDir Path temp) throws Exception {
        OpenJob job = Samples.desk().open(Samples.copy("mesa-library", temp.resolve("job")));
        office(temp.resolve("job/office"), "Quay", "\n${job.titel}");
        Outputs outputs = Outputs.of(job).section(job.job().sections().get(1));
        String message = assertThrows(UnusableInput.class, () -> outputs.write(Progress.NONE)).getMessage();
        assertTrue(message.startsWith("office/header.ftl:2:3: \"job.titel\" is not known"), message);
        assertTrue(Files.notExists(temp.resolve("job/out")));
    }

    @Test
    void aFolderAskedForHasToBeThere(@TempDir Path temp) {
        String message = assertThrows(UnusableInput.class, () -> Offices.find(temp, Optional.of(temp.resolve("none")))).getMessage();
        assertEquals(temp.resolve("none").toAbsolutePath()
            + ": there is no such folder; expected an office's folder, with an office.yaml in it", message);
    }
}
