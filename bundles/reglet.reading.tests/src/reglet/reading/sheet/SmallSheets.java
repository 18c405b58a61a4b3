package reglet.reading.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.io.TempDir;

import reglet.model.SheetReading;
import reglet.reading.Made;

/** Reads small drawn sheets of invented products, for tests that look at one habit of makers at a time. */
abstract class SmallSheets {
    @TempDir
    Path folder;

    /** Reads a sheet of which these lines describe what stands on it, as {@link DrawnSheet} takes them. */
    SheetReading reading(String... lines) throws Exception {
        return readingOf("", lines);
    }

    /** As {@link #reading}, for a component that is asked for; "" for none. */
    SheetReading readingOf(String component, String... lines) throws Exception {
        List<String> all = new ArrayList<>(List.of("page letter", "font Liberation 9"));
        all.addAll(List.of(lines));
        Path sheet = Made.file(folder, "one.pdf", DrawnSheet.draw(all).pdf());
        return SheetReader.read(SheetFixtures.pages(sheet), SheetFixtures.pack(), component);
    }

    /** What is read of a page, but for the kind of the product and how it is shown, in one line. */
    String read(List<String> lines) throws Exception {
        return reading(lines.toArray(String[]::new)).values().stream()
            .filter(found -> !found.value().property().matches(".*\\.(?:kind|material)"))
            .map(found -> found.value().property() + " " + found.value().value().text() + (found.model().isEmpty() ? "" : " of "
                + found.model())).sorted().collect(Collectors.joining("; "));
    }

    /** The values of a property, each in its sense, with its model and the standard that shows it. */
    static String said(SheetReading reading, String property) {
        return reading.values().stream().filter(found -> found.value().property().equals(property)).map(found -> found.value().compare()
            .map(sense -> sense.text() + " ").orElse("") + found.value().value().text() + (found.model().isEmpty() ? "" : " of " + found
                .model()) + (found.value().method().isEmpty() ? "" : " by " + found.value().method())).sorted()
            .collect(Collectors.joining("; "));
    }

    /** A line of cells, each "x text". */
    static void row(List<String> page, double y, String... cells) {
        for (String cell : cells) {
            String[] parts = cell.split(" ", 2);
            page.add("at " + parts[0] + " " + y);
            page.add("text 9 " + parts[1]);
        }
    }
}
