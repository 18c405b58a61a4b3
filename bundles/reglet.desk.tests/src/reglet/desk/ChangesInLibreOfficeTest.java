package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.comparing.Changing;
import reglet.drafting.Docx;
import reglet.drafting.MarkedDocx;
import reglet.model.SectionChanges;
import reglet.model.SectionDocument;

/** LibreOffice takes and refuses our tracked changes with its own commands; its text, numbers included, is then that of the sections. */
class ChangesInLibreOfficeTest {
    /** Needed by a Basic library of LibreOffice; the commands are those behind its menu. */
    private static final String MODULE = """
        <?xml version="1.0" encoding="UTF-8"?>
        <!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
        <script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">
        Sub Settle(source As String, target As String, command As String)
          Dim hidden(0) As New com.sun.star.beans.PropertyValue
          hidden(0).Name = "Hidden"
          hidden(0).Value = True
          doc = StarDesktop.loadComponentFromURL(source, "_blank", 0, hidden())
          dispatcher = createUnoService("com.sun.star.frame.DispatchHelper")
          dispatcher.executeDispatch(doc.CurrentController.Frame, command, "", 0, Array())
          Dim filter(0) As New com.sun.star.beans.PropertyValue
          filter(0).Name = "FilterName"
          filter(0).Value = "MS Word 2007 XML"
          doc.storeToURL(target, filter())
          doc.close(True)
        End Sub
        </script:module>
        """;
    private static final String LIBRARY = """
        <?xml version="1.0" encoding="UTF-8"?>
        <!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
        <library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false"
            library:passwordprotected="false"><library:element library:name="Module1"/></library:library>
        """;
    private static final int MINUTES = 3;

    @TempDir
    Path temp;

    private void office(String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of("soffice", "-env:UserInstallation=" + temp.resolve("profile").toUri(),
            "--headless"));
        command.addAll(List.of(arguments));
        Path log = temp.resolve("log");
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IllegalStateException("LibreOffice (Debian package libreoffice-writer-nogui) did not end: " + Files.readString(log));
        }
    }

    private void settle(String target, String command) throws Exception {
        office("macro:///Standard.Module1.Settle(\"" + temp.resolve("marked.docx").toUri() + "\",\"" + temp.resolve(target).toUri()
            + "\",\".uno:"
            + command + "\")");
        assertTrue(Files.exists(temp.resolve(target)), () -> "LibreOffice wrote no " + target);
    }

    private String text(String name) throws Exception {
        return Files.readString(temp.resolve(name + ".txt"));
    }

    @Test
    void libreOfficeMakesTheLaterAndTheEarlierSectionFromTheMarkedOne() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        SectionDocument before = job.section("04 73 00");
        SectionDocument after = job.choosing("W1", "lath", List.of("metal-3.4")).choosing("W1", "mat", List.of("filament-3-4"))
            .choosing("W2", "unit_joint", List.of("tight")).section("04 73 00");
        SectionChanges changes = Changing.between(Optional.of(before), Optional.of(after));
        assertTrue(changes.provisions().size() > 10);
        Files.write(temp.resolve("before.docx"), Docx.of(before));
        Files.write(temp.resolve("after.docx"), Docx.of(after));
        Files.write(temp.resolve("marked.docx"), MarkedDocx.of(changes, "Marks", Optional.empty()));
        // The first start makes the profile, which the macro is then put into.
        office("--convert-to", "txt:Text", "--outdir", temp.toString(), temp.resolve("before.docx").toString());
        Path basic = Files.createDirectories(temp.resolve("profile/user/basic/Standard"));
        Files.writeString(basic.resolve("Module1.xba"), MODULE);
        Files.writeString(basic.resolve("script.xlb"), LIBRARY);
        settle("taken.docx", "AcceptAllTrackedChanges");
        settle("refused.docx", "RejectAllTrackedChanges");
        office("--convert-to", "txt:Text", "--outdir", temp.toString(), temp.resolve("after.docx").toString(),
            temp.resolve("taken.docx").toString(), temp.resolve("refused.docx").toString());
        assertFalse(text("before").equals(text("after")));
        assertEquals(text("after") + "Marks.\n", text("taken"));
        assertEquals(text("before") + "Marks.\n", text("refused"));
    }
}
