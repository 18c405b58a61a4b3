package reglet.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import reglet.desk.Shelf;

/** What a command line printed and ended with. */
record Run(int code, String out, String err) {
    static final Path ROOT = Path.of(System.getProperty("reglet.root", "../..")).toAbsolutePath().normalize();
    static final Path PACK = ROOT.resolve("bundles/reglet.pack.adheredveneer/pack");

    /** Runs a command line with the pack of this checkout. */
    static Run run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineRun.run(() -> new Shelf(Shelf.folders(List.of(PACK))), arguments, new PrintWriter(out, true),
            new PrintWriter(err, true));
        return new Run(code, out.toString(), err.toString());
    }

    /** Copies a sample job, without what was written for it, into a folder. */
    static Path copy(String sample, Path folder) throws IOException {
        Path from = ROOT.resolve("sample-specs").resolve(sample);
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(file -> Files.isRegularFile(file) && !from.relativize(file).startsWith("out")).toList();
        }
        for (Path file : files) {
            Path target = folder.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
        return folder;
    }
}
