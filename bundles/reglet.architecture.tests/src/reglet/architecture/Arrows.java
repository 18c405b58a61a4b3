package reglet.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The page {@code releng/arrows.txt}.
 *
 * @param arrows   bundle to the bundles that it may use
 * @param packages package to the bundles that may name it or one below it
 * @param acts     act to the classes that may do it
 */
record Arrows(Map<String, Set<String>> arrows, Map<String, Set<String>> packages, Map<String, Set<String>> acts) {

    static Arrows read(Path file) throws IOException {
        Arrows page = new Arrows(new TreeMap<>(), new TreeMap<>(), new TreeMap<>());
        for (String line : Files.readAllLines(file)) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (line.contains("<-")) {
                put(page.packages, line, "<-");
            } else if (line.contains("=")) {
                put(page.acts, line, "=");
            } else {
                put(page.arrows, line, ":");
            }
        }
        return page;
    }

    private static void put(Map<String, Set<String>> map, String line, String mark) {
        int at = line.indexOf(mark);
        if (at < 0) {
            throw new IllegalArgumentException("no mark in the line: " + line);
        }
        Set<String> named = new TreeSet<>(Arrays.asList(line.substring(at + mark.length()).strip().split(" +")));
        named.remove("");
        if (map.put(line.substring(0, at).strip(), named) != null) {
            throw new IllegalArgumentException("said twice: " + line);
        }
    }
}
