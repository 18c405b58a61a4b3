package reglet.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import reglet.reading.Habits.Sheet;

/** Invented data sheets as an office program saves them: LibreOffice, from Debian, in one run for all. */
final class OfficeSheets {
    private static final List<String> ALL = List.of("office, upright", "office, lying", "office, table");
    private static final String START = """
        <?xml version="1.0" encoding="UTF-8"?>
        <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" office:version="1.3"
          xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
          xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" office:mimetype="application/vnd.oasis.opendocument.text"
          xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0">
        <office:styles><style:default-style style:family="paragraph"><style:text-properties fo:font-size="%1$s"/></style:default-style>
        <style:style style:name="New" style:family="paragraph"><style:paragraph-properties fo:break-before="page"/></style:style>
        </office:styles><office:automatic-styles><style:page-layout style:name="paper"><style:page-layout-properties
          fo:page-width="%2$s" fo:page-height="%3$s" fo:margin="0.9in"/></style:page-layout></office:automatic-styles>
        <office:master-styles><style:master-page style:name="Standard" style:page-layout-name="paper"/></office:master-styles>
        <office:body><office:text>
        """;

    private OfficeSheets() {
    }

    /**
     * Upright, lying and in a table by turns.
     *
     * @param number of the first sheet, which the words bear
     */
    static List<Sheet> make(Path folder, int number, int count) throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        List<String> command = new ArrayList<>(List.of("soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(),
            "--headless",
            "--convert-to", "pdf:writer_pdf_Export", "--outdir", folder.toString()));
        for (int at = number; at < number + count; at++) {
            String habit = ALL.get((at - number) % ALL.size());
            List<String> words = List.of("V" + at + "X1Q", "V" + at + "X2Q");
            Path source = Files.writeString(folder.resolve(at + " " + habit + ".fodt"), text(habit, words));
            command.add(source.toString());
            sheets.add(new Sheet(folder.resolve(at + " " + habit + ".pdf"), habit, words.size(), words));
        }
        run(command);
        return sheets;
    }

    private static String text(String habit, List<String> words) {
        boolean lies = habit.endsWith("lying");
        StringBuilder text = new StringBuilder(String.format(START, lies ? "14pt" : "10pt", lies ? "11in" : "8.5in", lies ? "8.5in"
            : "11in"));
        for (String word : words) {
            text.append(word.equals(words.get(0)) ? "" : "<text:p text:style-name=\"New\"/>").append("<text:p/><text:p/>");
            text.append(habit.endsWith("table") ? "<table:table><table:table-column table:number-columns-repeated=\"3\"/><table:table-row>"
                + cell("Weight") + cell(word) + cell("lb") + "</table:table-row></table:table><text:p/>"
                : "<text:p>Weight " + word + " lb</text:p>");
        }
        return text + "</office:text></office:body></office:document>\n";
    }

    private static String cell(String text) {
        return "<table:table-cell><text:p>" + text + "</text:p></table:table-cell>";
    }

    private static void run(List<String> command) throws IOException {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            if (!process.waitFor(2, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                throw new AssertionError("soffice did not end");
            }
        } catch (IOException missing) {
            throw new AssertionError("soffice is missing: install libreoffice-writer-nogui, or run releng/setup tests", missing);
        } catch (InterruptedException cancelled) {
            Thread.currentThread().interrupt();
            throw new IOException("cancelled", cancelled);
        }
    }
}
