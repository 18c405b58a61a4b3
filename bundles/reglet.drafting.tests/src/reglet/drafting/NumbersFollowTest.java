package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody does to a drafted section in a word processor; LibreOffice is the one that counts again. */
class NumbersFollowTest {

    @Test
    void whenAParagraphIsTakenOutMarksAndReferencesMove(@TempDir Path temp) throws Exception {
        Sample sample = Sample.small();
        for (String id : List.of("first", "second", "third")) {
            sample.uses(id, "lath-installation", "The " + id
                + ", see ${see.lath} and ${see.third}.\n\n1. One:\n   1. two, see ${see.third}.\n",
                "W1");
        }
        byte[] made = Docx.of(Drafter.draft(sample.assembly(), Sample.SECTION, ""));
        Path edited = temp.resolve("edited.docx");
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(made)); OutputStream out = Files.newOutputStream(edited)) {
            for (String gone : List.of("The first", "One", "two")) {
                XWPFParagraph paragraph = docx.getParagraphs().stream().filter(one ->
                    one.getText().startsWith(gone)).findFirst().orElseThrow();
                docx.removeBodyElement(docx.getPosOfParagraph(paragraph));
            }
            docx.write(out);
        }
        run(List.of("soffice", "-env:UserInstallation=" + temp.resolve("profile").toUri(), "--headless", "--convert-to", "pdf", "--outdir",
            temp.toString(), edited.toString()), "libreoffice-writer-nogui");
        run(List.of("pdftotext", "-layout", temp.resolve("edited.pdf").toString(), temp.resolve("edited.txt").toString()), "poppler-utils");
        String text = Files.readString(temp.resolve("edited.txt")).replaceAll("\\s+", " ");
        // Written as D; C since what stood at B is gone.
        assertTrue(text.contains("B. The second, see Article 2.1 and Paragraph 3.1.C. 1. One: a. two, see Paragraph 3.1.C."), text);
        assertTrue(text.contains("C. The third, see Article 2.1 and Paragraph 3.1.C."), text);
    }

    private static void run(List<String> command, String from) throws Exception {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(command.get(0) + " did not end");
            }
            assertEquals(0, process.exitValue(), command.get(0));
        } catch (IOException missing) {
            throw new AssertionError(command.get(0) + " is missing: install " + from + ", or run releng/setup tests", missing);
        }
    }
}
