package reglet.reading;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** Takes the pages off each sheet of a folder, each in its own process, and starts a bare Java as often. Prints medians in milliseconds. */
public final class ReadingSpeed {
    private static final int ROUNDS = 3;

    private ReadingSpeed() {
    }

    public static void main(String[] folders) throws Exception {
        List<Long> sheets = new ArrayList<>();
        List<Long> bare = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            for (String folder : folders) {
                try (Stream<Path> files = Files.list(Path.of(folder))) {
                    for (Path sheet : files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList()) {
                        long start = System.nanoTime();
                        Child.usual().pages(sheet);
                        sheets.add(System.nanoTime() - start);
                        start = System.nanoTime();
                        new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xshare:auto",
                            "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-version").redirectErrorStream(true)
                                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
                        bare.add(System.nanoTime() - start);
                    }
                }
            }
        }
        System.out.println("sheet " + median(sheets));
        System.out.println("bare " + median(bare));
    }

    private static long median(List<Long> times) {
        Collections.sort(times);
        return times.get(times.size() / 2) / 1_000_000;
    }
}
